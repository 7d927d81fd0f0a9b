using Kernel.Catalogues;
using Records;
using Visits;

namespace Rules.Duties;

/// <summary>Of which members, and of which visits, a row of reasons.json is.</summary>
internal static class ReasonRows
{
    // SI 2018/139 put 26(9)(ca) in force: until then combustion stood in for nothing.
    private static readonly DateOnly FirstDayOfStandIn = new(2018, 4, 6);

    /// <summary>Does the row speak of the member at <paramref name="pointer"/>? A star stands for any element; a member that holds others stands for them.</summary>
    public static bool Covers(this ReasonRow row, string pointer, Visit visit) =>
        row.What.Any(what => Matches(what.Split('/'), pointer.Split('/'))) && (row.Where is null || IsWhere(row, row.Where, pointer, visit));

    /// <summary>Is it for this visit?</summary>
    public static bool IsFor(this ReasonRow row, Visit visit)
    {
        var job = Wire.WireNames.Of(visit.Record.JobType);
        var isInUse = visit.Appliance.StateOnLeaving == StateOnLeaving.InUse;
        return row.Jobs?.Contains(job, StringComparer.Ordinal) != false && row.NotJobs?.Contains(job, StringComparer.Ordinal) != true
            && !(row.Source.Contains("(ca)", StringComparison.Ordinal) && visit.AsOf < FirstDayOfStandIn)
            && (row.LeftInUse == "either" || (row.LeftInUse == "only") == isInUse);
    }

    private static bool Matches(string[] what, string[] pointer) =>
        what.Length <= pointer.Length && what.Zip(pointer).All(pair => pair.First == "*" || pair.First == pair.Second);

    // Of an element that is not there nobody can say which it would be, so an element is told by what is recorded of it.
    private static bool IsWhere(ReasonRow row, IReadOnlyDictionary<string, string> where, string pointer, Visit visit)
    {
        var end = 0;
        for (var parts = row.What[0].Split('/').ToList().IndexOf("*"); parts > 0 && end >= 0; parts--)
            end = pointer.IndexOf('/', end + 1);
        var element = end > 0 ? pointer[..end] : pointer;
        return where.All(wanted => ReasonNeeds.TextAt(visit, $"{element}/{wanted.Key}") is { } found && found == wanted.Value);
    }
}
