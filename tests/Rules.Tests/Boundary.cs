using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Findings;
using Kernel;
using Records;
using Records.Members;
using Records.Reading;

namespace Rules.Tests;

/// <summary>
/// A bound of a limit that decides a case, with the member of the record that carries the limited number: the margin moves with it, one
/// for one. Found by trying, from the cases and limits.json; nobody lists them.
/// </summary>
internal sealed class Boundary
{
    private readonly JsonNode _record;
    private readonly string _subject;
    private readonly string _pointer;
    private readonly int _outward;

    private Boundary(JsonNode record, Finding finding, string pointer, LimitDefinition limit, decimal on, int outward)
    {
        (_record, _subject, RuleId, _pointer, Limit, On, _outward) = (record, finding.Subject, finding.RuleId, pointer, limit, on, outward);
        Member = RecordMembers.At(pointer);
    }

    /// <summary>Every boundary that the cases reach; of several cases for one, the first in which it alone settles the outcome.</summary>
    public static IReadOnlyList<Boundary> All { get; } =
    [
        .. RuleSet.Cases.AsParallel().AsOrdered().SelectMany(Of)
            .GroupBy(boundary => boundary.Name, StringComparer.Ordinal)
            .Select(same => same.FirstOrDefault(boundary => boundary.Settles) ?? same.First())
            .OrderBy(boundary => boundary.Name, StringComparer.Ordinal),
    ];

    public string RuleId { get; }

    public LimitDefinition Limit { get; }

    public RecordMember Member { get; }

    /// <summary>The member's value that lies on the bound.</summary>
    public decimal On { get; }

    /// <summary>The next value that conforms, by the limit's resolution.</summary>
    public decimal Inside => On - (_outward * Limit.Resolution);

    /// <summary>The next value that does not.</summary>
    public decimal Outside => On + (_outward * Limit.Resolution);

    /// <summary>True where the value on the bound does not conform itself.</summary>
    public bool IsExcluded => Limit.MaxExcluded == true;

    public string Name => $"{RuleId}: {Limit.Id}, {Member.Pattern} {(_outward > 0 ? "at most" : "at least")} {On.ToString("0.####", CultureInfo.InvariantCulture)}";

    private bool Settles => Answer(Outside) is { } outside && Answer(Inside) is { } inside && outside.Outcome != inside.Outcome;

    /// <summary>What the rule says with the member at <paramref name="value"/>, or without it for null; null when the record is refused.</summary>
    public Finding? Answer(decimal? value) => Answer(_record, RuleId, _subject, _pointer, value);

    /// <summary>The boundaries of another limit on the same number, by which the rule gave <paramref name="answer"/>.</summary>
    public IEnumerable<Boundary> MoreStrict(Finding? answer) => All.Where(other =>
        other.RuleId == RuleId && other.Member.Pattern == Member.Pattern && other.Limit.Id != Limit.Id && ReferenceEquals(other.Limit.AsLimit, answer?.Limit));

    private static IEnumerable<Boundary> Of((IComplianceRule Rule, Kernel.Catalogues.RuleCase Case) pair)
    {
        var record = JsonNode.Parse(pair.Case.RecordFrom(RuleSet.Catalogue.ExampleRecord))!;
        return
            from finding in RuleSet.AnswersOf(pair.Rule.Info.Id, RuleSet.EngineOf(pair.Rule).AnswersTo(Read(record)!))
            let limit = RuleSet.EngineOf(pair.Rule).Catalogue.Limits.Definitions.FirstOrDefault(line => ReferenceEquals(line.AsLimit, finding.Limit))
            where limit is not null && finding.Margin is not null
            from member in finding.Evidence ?? []
            where member.Number is not null
            from distance in Distances(finding.Margin!.Value, limit)
            from outward in new[] { 1, -1 }
            let boundary = new Boundary(record, finding, member.Pointer, limit, member.Number!.Value + (outward * distance), outward)
            where boundary.Carries(1) || boundary.Carries(-1)
            select boundary;
    }

    /// <summary>How far the number may lie from the nearer bound and, of a band, from the other.</summary>
    private static IEnumerable<decimal> Distances(decimal margin, LimitDefinition limit) =>
        limit.Max - limit.Min is { } width ? [margin, width - margin] : [margin];

    /// <summary>Does the margin follow the member, one step and two steps away from the bound on this side?</summary>
    private bool Carries(int side) => new[] { 1, 2 }.All(steps =>
        Answer(On + (side * _outward * steps * Limit.Resolution)) is { } answer
        && ReferenceEquals(answer.Limit, Limit.AsLimit) && answer.Margin == -side * steps * Limit.Resolution);

    private static ServiceRecord? Read(JsonNode record) => RecordReader.Read(JsonSerializer.SerializeToUtf8Bytes(record)).Record;

    private static Finding? Answer(JsonNode record, string ruleId, string subject, string pointer, decimal? value)
    {
        var changed = record.DeepClone();
        var segments = pointer.Split('/')[1..];
        var parent = segments[..^1].Aggregate(changed, (node, segment) =>
            node is JsonArray list ? list[int.Parse(segment, CultureInfo.InvariantCulture)]! : node[segment]!);
        if (value is { } number)
            parent[segments[^1]] = number;
        else
            parent.AsObject().Remove(segments[^1]);

        return Read(changed) is { } read
            ? RuleSet.AnswersOf(ruleId, RuleSet.EngineOf(ruleId).AnswersTo(read)).OrderBy(answer => answer.Subject != subject).ThenBy(answer => answer.Outcome).First()
            : null;
    }
}
