using System.CommandLine;
using Wire;

namespace ComplianceApi.Commands;

/// <summary>What several commands say alike.</summary>
internal static class Common
{
    /// <summary>Nothing is in the way.</summary>
    public const int Good = 0;

    /// <summary>Something is unsafe or incomplete.</summary>
    public const int Bad = 1;

    /// <summary>The command or its input cannot be used.</summary>
    public const int Unusable = 2;

    /// <summary>Ended by its user, as shells number it: 128 and the signal.</summary>
    public const int Ended = 130;

    public static Option<FileInfo?> Overrides() => new("--overrides") { Description = "Your own limits, as the service reads them from Rules:Overrides.", HelpName = "file" };

    /// <summary>One value of an enumeration by its name in JSON.</summary>
    public static Option<string> OneOf<T>(string name, string description, T absent) where T : struct, Enum =>
        OneOf(name, description, WireNames.Of(absent), WireNames.OfValues(typeof(T)));

    /// <summary>An option that takes one of some words.</summary>
    public static Option<string> OneOf(string name, string description, string absent, IEnumerable<string> words)
    {
        var option = new Option<string>(name) { Description = description, DefaultValueFactory = _ => absent };
        option.AcceptOnlyFromAmong([.. words]);
        return option;
    }

    /// <summary>The value that was given, or the one in its place.</summary>
    public static T Value<T>(this ParseResult parsed, Option<string> option) where T : struct, Enum =>
        Enum.GetValues<T>().First(value => WireNames.Of(value) == parsed.GetRequiredValue(option));
}
