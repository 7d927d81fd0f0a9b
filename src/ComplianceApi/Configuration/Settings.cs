using System.Globalization;

namespace ComplianceApi.Configuration;

/// <summary>Reads settings so that a mistyped one is told at start, and an empty one is as if it were absent.</summary>
internal static class Settings
{
    /// <summary>The settings of this service by their sections. What stands beside these sections belongs to the framework.</summary>
    private static readonly ILookup<string, string> Known = new[]
    {
        SettingNames.StorePath, SettingNames.StoreConnectionString, SettingNames.StoreCreate, SettingNames.Overrides, SettingNames.AuditWorkers, SettingNames.AuditLeaseSeconds,
        SettingNames.RequestsPerMinute, SettingNames.AuditsAtOnce, SettingNames.DearAtOnce, SettingNames.DearAtOnceForTenant, SettingNames.RequestSeconds,
        SettingNames.TrustedProxies, SettingNames.KeysRequired, SettingNames.DocsEnabled,
    }.ToLookup(setting => setting.Split(':')[0], StringComparer.OrdinalIgnoreCase);

    /// <summary>Refuses a setting of this service that it does not know: one letter astray, and limits that were meant to hold would not.</summary>
    /// <exception cref="StartRefusedException">There is one.</exception>
    public static void DemandKnown(IConfiguration configuration)
    {
        foreach (var section in Known)
        {
            foreach (var given in configuration.GetSection(section.Key).GetChildren())
            {
                if (!section.Contains(given.Path, StringComparer.OrdinalIgnoreCase))
                    throw new StartRefusedException($"{given.Path}: there is no such setting. Those of {section.Key}: {string.Join(", ", section)}.");
            }
        }
    }

    /// <summary>A whole number from <paramref name="least"/> up.</summary>
    /// <exception cref="StartRefusedException">It is something else.</exception>
    public static int Whole(IConfiguration configuration, string name, int absent, int least = 1)
    {
        if (configuration[name] is not { Length: > 0 } text)
            return absent;

        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least
            ? number
            : throw new StartRefusedException(string.Create(CultureInfo.InvariantCulture, $"{name}: '{text}' is no whole number from {least} up."));
    }

    /// <summary>Whether something holds; absent, it does not.</summary>
    /// <exception cref="StartRefusedException">It is neither true nor false.</exception>
    public static bool Flag(IConfiguration configuration, string name)
    {
        if (configuration[name] is not { Length: > 0 } text)
            return false;

        return bool.TryParse(text, out var holds) ? holds : throw new StartRefusedException($"{name}: '{text}' is neither true nor false.");
    }

    /// <summary>A number of seconds above zero.</summary>
    /// <exception cref="StartRefusedException">It is something else.</exception>
    public static TimeSpan Seconds(IConfiguration configuration, string name, double absent)
    {
        if (configuration[name] is not { Length: > 0 } text)
            return TimeSpan.FromSeconds(absent);

        return double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds) && seconds is > 0 and < 1e6
            ? TimeSpan.FromSeconds(seconds)
            : throw new StartRefusedException($"{name}: '{text}' is no number of seconds.");
    }
}
