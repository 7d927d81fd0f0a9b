using System.Text.Json.Nodes;
using Findings;
using MadeVisits;
using Records.Members;
using Records.Metadata;
using Wire;

namespace WholeRecords.Tests.Properties;

/// <summary>2. What a record leaves out betters nothing.</summary>
/// <param name="length">How much of it.</param>
internal sealed class RemovalProperty(RunLength length) : IProperty
{
    public static readonly Claim Answer = new("2a", "Removing an answer (evidence, a deciding fact, identity, time) never betters.");
    public static readonly Claim Trace = new("2b", "Removing one trace of work never betters while another remains.");
    public static readonly Claim Volunteered = new("2c", "Removing what was volunteered betters only for members marked so; their number is published and falls.");

    public static readonly Claim Row = new("2d", "Removing a value turns no row from unsafe, missing or advisory to pass or not applicable, though others may hold the record.");

    public IReadOnlyList<Claim> Claims { get; } = [Answer, Trace, Volunteered, Row];

    public IEnumerable<Counterexample> Ask(Base one, Action<Claim> asked)
    {
        var traces = WorkTraces.Of(one.Json);
        foreach (var pointer in JsonPlaces.Pointers(one.Json).Where(pointer => length.Takes(one, pointer) && RecordMembers.Find(pointer) is not null))
        {
            var member = RecordMembers.At(pointer);
            if (ClaimOf(one.Json, member, pointer, traces) is not { } claim)
                continue;
            var variant = new Variant($"{member.Pattern} removed", new Change(pointer, null));
            if (one.With(variant) is not { } said)
                continue;
            asked(claim);
            if (Order.BettersMoreThanAsking(one.Said, said) is { } better)
                yield return Counterexample.Of(claim, better, one, variant, said);
            if (claim == Volunteered || one.Json.At(pointer) is not JsonValue)
                continue;
            asked(Row);
            if (BetterRow(one.Said, said, pointer) is { } row)
                yield return Counterexample.Of(Row, row, one, variant, said);
        }
    }

    private static string? BetterRow(Answer before, Answer after, string removed)
    {
        var now = after.Rows.ToLookup(row => (row.RuleId, row.Subject), row => row.Outcome);
        return before.Rows.Where(row => row.Outcome is not (Outcome.Pass or Outcome.NotApplicable) && row.Subject.TrimStart('#') != removed)
            .Where(row => now[(row.RuleId, row.Subject)].Any() && now[(row.RuleId, row.Subject)].All(said => said is Outcome.Pass or Outcome.NotApplicable))
            .Select(row => $"{row.RuleId} {WireNames.Of(row.Outcome)} becomes {WireNames.Of(now[(row.RuleId, row.Subject)].First())}").Order(StringComparer.Ordinal).FirstOrDefault();
    }

    /// <summary>Null where the property says nothing: the last trace of a piece of work.</summary>
    private static Claim? ClaimOf(JsonObject record, RecordMember member, string pointer, IReadOnlyList<(string Pointer, string Work)> traces)
    {
        if (HoldsVolunteered(record, member, pointer))
            return Volunteered;
        var mine = traces.Where(trace => IsIn(trace.Pointer, pointer)).Select(trace => trace.Work).ToHashSet(StringComparer.Ordinal);
        if (mine.Count == 0 && member.Class != MemberClass.WorkDone)
            return Answer;
        return mine.All(work => traces.Any(trace => trace.Work == work && !IsIn(trace.Pointer, pointer))) ? Trace : null;
    }

    /// <summary>A section goes with what was volunteered in it.</summary>
    private static bool HoldsVolunteered(JsonObject record, RecordMember member, string pointer) =>
        member.Class == MemberClass.Volunteered || JsonPlaces.Pointers(record.At(pointer), pointer).Any(inside => RecordMembers.Find(inside)?.Class == MemberClass.Volunteered);

    private static bool IsIn(string pointer, string place) => pointer == place || pointer.StartsWith(place + "/", StringComparison.Ordinal);
}
