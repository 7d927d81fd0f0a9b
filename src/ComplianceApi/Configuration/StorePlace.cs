using Storage;

namespace ComplianceApi.Configuration;

/// <summary>Where the store is, and when one is made: in the usual place, and elsewhere only by an explicit word, so that no mistyped path gives an empty store.</summary>
internal static class StorePlace
{
    /// <summary>The file where no setting and no option names one.</summary>
    public const string Usual = "data/compliance.db";

    /// <summary>Where `dotnet run` put it, in the root of the repository, before relative paths meant the folder of whoever types it.</summary>
    private const string UsualBefore = "src/ComplianceApi/data/compliance.db";

    /// <summary>Opens the store that the settings name.</summary>
    /// <exception cref="StoreException">It cannot be opened.</exception>
    /// <exception cref="StartRefusedException">It does not exist and is not to be made, or a setting cannot be read.</exception>
    public static Database Open(IConfiguration configuration)
    {
        var isToBeMade = Settings.Flag(configuration, SettingNames.StoreCreate);
        try
        {
            return configuration[SettingNames.StoreConnectionString] is { Length: > 0 } connectionString
                ? Database.OpenPostgreSql(connectionString, isToBeMade ? StoreOpening.OrMake : StoreOpening.ToUse)
                : Database.Open(configuration[SettingNames.StorePath] is { Length: > 0 } path ? path : Usual, OpeningOf(configuration[SettingNames.StorePath], isToBeMade));
        }
        catch (NoStoreException none)
        {
            throw new StartRefusedException($"{none.Message} Is its place mistyped? A first start makes it with --{SettingNames.StoreCreate}=true.");
        }
    }

    /// <summary>How a file is opened to be written to.</summary>
    /// <exception cref="StartRefusedException">An earlier version's store is near, and an empty one would be made in its place.</exception>
    public static StoreOpening OpeningOf(string? path, bool isToBeMade)
    {
        if (isToBeMade)
            return StoreOpening.OrMake;
        if (!string.IsNullOrEmpty(path) && path != Usual)
            return StoreOpening.ToUse;
        if (!File.Exists(Usual) && File.Exists(UsualBefore))
        {
            throw new StartRefusedException(
                $"An earlier version kept its store in {UsualBefore}; now it is kept in {Usual}. Move it there with the files beside it, or name it with --{SettingNames.StorePath}={UsualBefore}; --{SettingNames.StoreCreate}=true makes an empty one.");
        }

        return StoreOpening.OrMake;
    }

    /// <summary>Tells, once the service listens, which store it has.</summary>
    public static void TellOfStore(this WebApplication app) => app.Lifetime.ApplicationStarted.Register(() =>
    {
        var store = app.Services.GetRequiredService<Database>();
        app.Logger.LogInformation("Store: {Place}, {Id}, generation {Generation}{Made}", store.Name, store.Identity.Id, store.Identity.Generation, store.IsNew ? ", made just now" : "");
        if (!store.IsNew && Settings.Flag(app.Configuration, SettingNames.StoreCreate))
            app.Logger.LogWarning("{Setting} is set though the store exists: were it lost, the next start would make an empty one. Leave the setting out.", SettingNames.StoreCreate);
    });
}
