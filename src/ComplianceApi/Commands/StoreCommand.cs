using System.CommandLine;
using Audits;

namespace ComplianceApi;

/// <summary>Looks after the store: all that is held of one appliance, what may go, a copy of everything.</summary>
internal static class StoreCommand
{
    private const int MostYears = 100;

    public static Command Make() => new("store", "Looks after the store.") { StoreOptions.Path, StoreOptions.Connection, Export(), Purge(), Backup() };

    private static Command Export()
    {
        var serialNumber = new Argument<string>("serial-number") { Description = "Serial number of the appliance." };
        var maker = new Option<string?>("--maker") { Description = "Its maker, where several have this number." };
        var command = new Command("export", "Prints all that is held of one appliance, a line of JSON each.") { serialNumber, maker };
        command.SetAction((parsed, stop) => WithStoreAsync(parsed, async database =>
        {
            await using var output = Console.OpenStandardOutput();
            await new ApplianceExport(database).ExportAsync(Tenant.Local, parsed.GetRequiredValue(serialNumber), parsed.GetValue(maker), output, stop);
        }));
        return command;
    }

    private static Command Purge()
    {
        var years = new Option<int>("--years") { Description = $"Keep what is younger; {Retention.FewestYears} to {MostYears}.", DefaultValueFactory = _ => 6 };
        years.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < Retention.FewestYears or > MostYears)
                result.AddError($"--years: {Retention.FewestYears} to {MostYears}.");
        });
        var command = new Command("purge", "Removes old records, says which and how many; a landlord's only when two later checks of the appliance are there.") { years };
        command.SetAction((parsed, stop) => WithStoreAsync(parsed, async database =>
        {
            var before = TimeProvider.System.GetUtcNow().AddYears(-parsed.GetValue(years));
            var output = parsed.InvocationConfiguration.Output;
            var counts = await new Retention(database).PurgeAsync(Tenant.Local, before, removed => output.WriteLine(LineOf(removed)), stop);
            output.WriteLine($"Removed what was finished before {before:yyyy-MM-dd}: {counts.Evaluations} evaluations, {counts.AuditLines} records of audits and {counts.Audits} audits of which nothing was left. "
                + $"{counts.Held} records of that age stay: a landlord's, or not known whose, without two later checks of the appliance (GSIUR 1998, regulation 36(3)(c)).");
        }));
        return command;
    }

    private static string LineOf(RemovedRecord removed) =>
        $"{(removed.Line == 0 ? $"evaluation {removed.Id}" : $"audit {removed.Id} line {removed.Line}")}: record {removed.RecordId}, {removed.Maker ?? "(maker not recorded)"} {removed.SerialNumber ?? "(no serial number)"}, finished {removed.FinishedAt[..10]}";

    private static Command Backup()
    {
        var file = new Argument<FileInfo>("file") { Description = "A file that is not there yet." };
        var command = new Command("backup", "Copies the whole store into one file while the service goes on.") { file };
        command.SetAction((parsed, stop) => WithStoreAsync(parsed, database => database.BackupAsync(parsed.GetRequiredValue(file).FullName, stop)));
        return command;
    }

    private static Task<int> WithStoreAsync(ParseResult parsed, Func<Database, Task> use) => StoreOptions.WithStoreAsync(parsed, async database =>
    {
        await use(database);
        return 0;
    });
}
