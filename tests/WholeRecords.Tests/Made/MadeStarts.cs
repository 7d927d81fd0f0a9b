using System.Text.Json;
using MadeVisits;
using WholeRecords.Tests.Properties;

namespace WholeRecords.Tests.Made;

/// <summary>Made visits to ask about: the last of some years of a boiler, with what is known of those before, by its truthful record and by one of the others.</summary>
internal static class MadeStarts
{
    public const int Years = 4;

    public static IEnumerable<Start> Of(int boilers) => Enumerable.Range(0, boilers).SelectMany(seed =>
    {
        var visit = ApplianceHistory.Make(seed, Years)[^1];
        var other = visit.Untruthful.Skip(seed % Math.Max(1, visit.Untruthful.Count)).Take(1);
        return other.Prepend(visit.Truthful).Select(written => new Start(
            $"made visit {visit.Seed}{(written.Truth.Lie is { } lie ? $", {lie}" : "")}", JsonSerializer.SerializeToUtf8Bytes(written.Record), MadeHistory.Beside(visit, written.Record)));
    });
}
