using System.Text.Json.Serialization;
using Findings;
using Records;
using Visits;

namespace Rules.Duties;

/// <summary>A row of reasons.json: a reason, the duty and the members that it excuses, and under which conditions.</summary>
internal sealed class ReasonRow
{
    // SI 2018/139 put 26(9)(ca) in force: until then combustion stood in for nothing.
    private static readonly DateOnly FirstDayOfStandIn = new(2018, 4, 6);

    [JsonConverter(typeof(Wire.WireEnumConverter<NotDoneReason>))]
    public required NotDoneReason Because { get; init; }

    public required string Duty { get; init; }

    public required IReadOnlyList<string> What { get; init; }

    [JsonConverter(typeof(Wire.WireEnumConverter<Weight>))]
    public required Weight Weight { get; init; }

    /// <summary>only: of a boiler left in use; not: of one left off; either.</summary>
    public required string LeftInUse { get; init; }

    public IReadOnlyDictionary<string, string>? Where { get; init; }

    public IReadOnlyList<string>? Jobs { get; init; }

    public IReadOnlyList<string>? NotJobs { get; init; }

    public IReadOnlyList<string>? Needs { get; init; }

    public IReadOnlyList<string>? ContradictedBy { get; init; }

    public required string Source { get; init; }

    /// <summary>Does the row speak of the member at <paramref name="pointer"/>? A star stands for any element; a member that holds others stands for them.</summary>
    public bool Covers(string pointer, Visit visit) => What.Any(what => Matches(what.Split('/'), pointer.Split('/'))) && (Where is null || IsWhere(pointer, visit));

    /// <summary>Is it for this visit?</summary>
    public bool IsFor(Visit visit)
    {
        var job = Wire.WireNames.Of(visit.Record.JobType);
        var isInUse = visit.Appliance.StateOnLeaving == StateOnLeaving.InUse;
        return Jobs?.Contains(job, StringComparer.Ordinal) != false && NotJobs?.Contains(job, StringComparer.Ordinal) != true
            && !(Source.Contains("(ca)", StringComparison.Ordinal) && visit.AsOf < FirstDayOfStandIn)
            && (LeftInUse == "either" || (LeftInUse == "only") == isInUse);
    }

    private static bool Matches(string[] what, string[] pointer) =>
        what.Length <= pointer.Length && what.Zip(pointer).All(pair => pair.First == "*" || pair.First == pair.Second);

    // Of an element that is not there nobody can say which it would be, so an element is told by what is recorded of it.
    private bool IsWhere(string pointer, Visit visit)
    {
        var end = 0;
        for (var parts = What[0].Split('/').ToList().IndexOf("*"); parts > 0 && end >= 0; parts--)
            end = pointer.IndexOf('/', end + 1);
        var element = end > 0 ? pointer[..end] : pointer;
        return Where!.All(wanted => ReasonNeeds.TextAt(visit, $"{element}/{wanted.Key}") is { } found && found == wanted.Value);
    }
}
