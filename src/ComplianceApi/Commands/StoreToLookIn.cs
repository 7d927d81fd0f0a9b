using System.CommandLine;
using Storage;

namespace ComplianceApi.Commands;

/// <summary>
/// The store in which a command looks for what records refer to. It makes none: where there is none it looks in an empty one that is
/// thrown away, so that nothing is found and what refers to something is refused.
/// </summary>
internal sealed class StoreToLookIn : IDisposable
{
    private readonly TemporaryFolder? _instead;

    private StoreToLookIn(Tenant tenant, Database database, string words, TemporaryFolder? instead = null) =>
        (Tenant, Database, Words, _instead) = (tenant, database, words, instead);

    /// <summary>Whose profiles and evaluations count.</summary>
    public static Option<string> OfTenant { get; } = new("--tenant") { Description = "Whose profiles and evaluations in the store count.", DefaultValueFactory = _ => Tenant.Local.Name };

    /// <summary>Whose profiles and evaluations count.</summary>
    public Tenant Tenant { get; }

    /// <summary>The store.</summary>
    public Database Database { get; }

    /// <summary>Which it is, for the sentence of a refusal: begins with a blank.</summary>
    public string Words { get; }

    /// <summary>Opens the store that is asked for, for as long as it is used; gives the exit code.</summary>
    public static async Task<int> WithAsync(ParseResult parsed, Func<StoreToLookIn, Task<int>> use)
    {
        try
        {
            using var store = Open(parsed);
            return await use(store);
        }
        catch (Exception fault) when (fault is StoreException or NotSupportedException or System.Data.Common.DbException)
        {
            await parsed.InvocationConfiguration.Error.WriteLineAsync(fault.Message);
            return Common.Unusable;
        }
    }

    private static StoreToLookIn Open(ParseResult parsed)
    {
        var tenant = new Tenant(parsed.GetRequiredValue(OfTenant));
        if (parsed.GetValue(StoreOptions.Connection) is { } connection)
            return new StoreToLookIn(tenant, Database.OpenPostgreSql(connection, StoreOpening.ToRead), " in the store of --connection");

        var path = Path.GetFullPath(parsed.GetRequiredValue(StoreOptions.Path));
        if (File.Exists(path))
            return new StoreToLookIn(tenant, Database.Open(path, StoreOpening.ToRead), $" in the store {path}");

        var folder = new TemporaryFolder("look-");
        return new StoreToLookIn(tenant, Database.Open(folder.File("empty.db"), StoreOpening.OrMake), $": there is no store {path} to look in", folder);
    }

    public void Dispose()
    {
        Database.Dispose();
        _instead?.Dispose();
    }
}
