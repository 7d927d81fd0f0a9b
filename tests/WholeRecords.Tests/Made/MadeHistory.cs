using System.Text.Json;
using System.Text.Json.Nodes;
using Findings;
using MadeVisits;
using Visits;
using Visits.Facts;

namespace WholeRecords.Tests.Made;

/// <summary>What the visits before left, as a store would keep it: by what is true of them, not by what any engine said.</summary>
internal static class MadeHistory
{
    /// <summary>What is looked up beside a record of a visit. Without a serial number nothing can be.</summary>
    public static Lookup Beside(MadeVisit visit, JsonObject record) =>
        IsOfAKnownBoiler(record) && Reached(visit) is { Count: > 0 } before ? new Lookup { History = [.. before.Reverse().Select(FactsOf)] } : Lookup.None;

    /// <summary>The dangers that the visits before found and that none of them put right.</summary>
    public static IReadOnlyList<TrueDanger> LeftBefore(MadeVisit visit) =>
    [
        .. Reached(visit).SelectMany(earlier => earlier.Truthful.Truth.Dangers).Where(danger => danger.IsSeen)
            .GroupBy(danger => danger.Kind).Select(found => found.Last()).Where(danger => danger.State != MadeVisits.DangerState.PutRight),
    ];

    /// <summary>
    /// Whether a record of somebody who got to the boiler says nothing of a danger: no defect of this boiler, of its topic or at its place, that is grave or that was put right.
    /// </summary>
    public static bool IsSilentOn(JsonObject record, TrueDanger danger) => !(record.At("/defects") as JsonArray ?? []).OfType<JsonObject>().Any(defect =>
        !defect.Is("/concerns", "otherAppliance") && !defect.Is("/concerns", "supply")
        && (!defect.Is("/class", "other") || (defect.Is("/action", "rectified") && defect.At("/reexaminedAt") is not null))
        && (defect.Is("/topic", danger.Topic) || (defect.At("/subject") is { } place && IsNear((string)place!, danger.Subject))));

    /// <summary>A danger as it is kept.</summary>
    public static PastDanger Left(TrueDanger danger, Findings.DangerState state) => new() { RuleId = "made-visit", Topic = danger.Topic, Subject = danger.Subject, State = state };

    private static PastVisit FactsOf(MadeVisit visit)
    {
        var record = WholeRecords.Tests.Held.Read(JsonSerializer.SerializeToUtf8Bytes(visit.Truthful.Record)).Record!;
        var left = visit.Truthful.Truth.Dangers.Where(danger => danger.IsSeen && danger.State != MadeVisits.DangerState.PutRight).Select(danger => Left(danger, danger.State switch
        {
            MadeVisits.DangerState.TakenOutOfUse => Findings.DangerState.TakenOutOfUse,
            MadeVisits.DangerState.LeftByRefusal => Findings.DangerState.LeftByRefusal,
            _ => Findings.DangerState.Standing,
        })).ToList();
        return VisitFacts.Of(record) with { CheckCountedOn = visit.Job == "landlordCheck" ? record.FinishedAt.Date : null, Dangers = left.Count > 0 ? left : null };
    }

    private static IReadOnlyList<MadeVisit> Reached(MadeVisit visit) => [.. visit.Earlier.Where(earlier => IsOfAKnownBoiler(earlier.Truthful.Record))];

    private static bool IsOfAKnownBoiler(JsonObject record) => record.At("/appliance/serialNumber") is not null;

    private static bool IsNear(string one, string other) => $"{one}/".StartsWith($"{other}/", StringComparison.Ordinal) || $"{other}/".StartsWith($"{one}/", StringComparison.Ordinal);
}
