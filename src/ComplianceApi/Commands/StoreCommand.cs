using System.CommandLine;
using Rules.Law;
using Storage;
using Wording;

namespace ComplianceApi.Commands;

/// <summary>Looks after the store: all that is held of one appliance, what may go, a copy of everything and back from it.</summary>
internal static class StoreCommand
{
    private const int MostYears = 100;

    public static Command Make() => new("store", "Looks after the store.") { StoreOptions.Path, StoreOptions.Connection, Export(), Purge(), Backup(), Restore() };

    private static Command Export()
    {
        var serialNumber = new Argument<string>("serial-number") { Description = "Serial number of the appliance." };
        var maker = new Option<string?>("--maker") { Description = "Its maker, where several have this number." };
        var command = new Command("export", "Prints all that is held of one appliance, a line of JSON each.") { serialNumber, maker };
        command.SetAction((parsed, stop) => WithStoreAsync(parsed, StoreOpening.ToRead, async database =>
        {
            await using var output = Console.OpenStandardOutput();
            await new ApplianceExport(database).ExportAsync(Tenant.Local, parsed.GetRequiredValue(serialNumber), parsed.GetValue(maker), output, stop);
        }));
        return command;
    }

    private static Command Purge()
    {
        var law = new VisitLaw();
        var years = new Option<int>("--years") { Description = $"Keep what is younger; {law.FewestYearsKept} to {MostYears}.", DefaultValueFactory = _ => 6 };
        years.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is var given && (given < law.FewestYearsKept || given > MostYears))
                result.AddError($"--years: {law.FewestYearsKept} to {MostYears}.");
        });
        var command = new Command("purge", "Removes old records, says which and how many; a landlord's only when two later checks of the appliance are there.") { years };
        command.SetAction((parsed, stop) => WithStoreAsync(parsed, StoreOpening.ToUse, async database =>
        {
            var before = TimeProvider.System.GetUtcNow().AddYears(-parsed.GetValue(years));
            var output = parsed.InvocationConfiguration.Output;
            var counts = await new Retention(database, law, TimeProvider.System).PurgeAsync(Tenant.Local, before, removed => output.WriteLine(LineOf(removed)), stop);
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
        command.SetAction((parsed, stop) => WithStoreAsync(parsed, StoreOpening.ToRead, database => database.BackupAsync(parsed.GetRequiredValue(file).FullName, stop)));
        return command;
    }

    private static Command Restore()
    {
        var file = new Argument<FileInfo>("file") { Description = "A backup; it is only read." };
        var command = new Command("restore", "Checks a backup and puts it in the place of the store, whose service has ended. What was there is kept beside it.") { file };
        command.SetAction((parsed, stop) => StoreOptions.SayFaultsAsync(parsed, async () =>
        {
            if (parsed.GetValue(StoreOptions.Connection) is not null)
                throw new NotSupportedException("The store is PostgreSQL, which has its own tool for this: pg_restore.");

            var (backup, store) = (parsed.GetRequiredValue(file).FullName, parsed.GetRequiredValue(StoreOptions.Path));
            var restored = await StoreRestore.RunAsync(backup, store, TimeProvider.System.GetUtcNow(), stop);
            var output = parsed.InvocationConfiguration.Output;
            output.WriteLine($"Restored {Path.GetFullPath(store)} from {backup}, generation {restored.Identity.Generation}: {Say.Of(restored.Evaluations, "evaluation")}{(restored.LastEvaluatedAt is { } last ? $" (the last of {last})" : "")}, {Say.Of(restored.Audits, "audit")}, {Say.Of(restored.Keys, "key")} not revoked.");
            output.WriteLine(restored.Kept is { } kept ? $"What was there before is kept as {kept}." : "There was no store in its place before.");
            output.WriteLine("Keys that were revoked after the backup was made open again: see the command keys list.");
            return 0;
        }));
        return command;
    }

    private static Task<int> WithStoreAsync(ParseResult parsed, StoreOpening opening, Func<Database, Task> use) => StoreOptions.WithStoreAsync(parsed, opening, async database =>
    {
        await use(database);
        return 0;
    });
}
