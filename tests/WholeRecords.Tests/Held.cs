using Kernel.Catalogues;
using Records.Reading;
using Rules;

namespace WholeRecords.Tests;

/// <summary>What the rules of today can judge at all.</summary>
internal static class Held
{
    /// <summary>Codes of those whose law they hold.</summary>
    public static IReadOnlyList<string> Jurisdictions { get; } = [.. RuleCatalogue.JurisdictionsOf(typeof(RuleIds).Assembly).Select(place => place.Code)];

    /// <summary>Reads a record as the service does.</summary>
    public static ReadResult Read(ReadOnlyMemory<byte> utf8) => RecordReader.Read(utf8, Jurisdictions);
}
