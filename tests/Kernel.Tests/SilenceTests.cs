using System.Text.Json;
using System.Text.Json.Nodes;
using Findings;
using Records;
using Records.Faults;
using Records.Members;
using Records.Reading;

namespace Kernel.Tests;

/// <summary>Silence is never read as approval: what a record leaves out can only make its outcome graver.</summary>
public sealed class SilenceTests
{
    public static TheoryData<string> MembersOfTheExample
    {
        get
        {
            var pointers = new TheoryData<string>();
            foreach (var pointer in Members(JsonNode.Parse(Samples.Catalogue.ExampleRecord)!, ""))
                pointers.Add(pointer);
            return pointers;
        }
    }

    [Fact]
    public void The_example_record_passes_and_may_be_closed()
    {
        var evaluation = Samples.Engine.Evaluate(Samples.Example);
        Assert.Empty(Answers.Of(evaluation, finding => finding.Outcome is not (Outcome.Pass or Outcome.NotApplicable)));
        Assert.Equal(OverallOutcome.Pass, evaluation.Outcome);
        Assert.True(evaluation.Closing.Allowed);
        Assert.Empty(evaluation.Missing);
    }

    [Theory]
    [MemberData(nameof(MembersOfTheExample))]
    public void A_member_left_out_makes_nothing_better(string pointer)
    {
        var json = JsonNode.Parse(Samples.Catalogue.ExampleRecord)!;
        Remove(json, pointer);
        var read = RecordReader.Read(JsonSerializer.SerializeToUtf8Bytes(json));
        if (read.Record is not { } record)
        {
            Assert.All(read.Faults, fault => Assert.Equal(FaultCodes.RequiredMember, fault.Code));
            return;
        }

        var before = Samples.Engine.Evaluate(Samples.Example);
        var after = Samples.Engine.Evaluate(record);
        Assert.True(after.Outcome <= before.Outcome);
        if (after.Outcome is OverallOutcome.Unsafe or OverallOutcome.Incomplete)
            return;

        var said = after.Findings.ToDictionary(finding => (finding.RuleId, finding.Subject));
        Assert.All(before.Findings, finding =>
        {
            Assert.True(said.TryGetValue((finding.RuleId, finding.Subject), out var now), $"{finding.RuleId} fell silent");
            Assert.True(now.Outcome <= finding.Outcome, $"{finding.RuleId}: {finding.Outcome} became {now.Outcome}");
        });
    }

    [Fact]
    public void A_record_with_only_what_is_required_is_incomplete_and_asks()
    {
        var evaluation = Samples.Engine.Evaluate(Minimal());
        Assert.Equal(OverallOutcome.Incomplete, evaluation.Outcome);
        Assert.False(evaluation.Closing.Allowed);
        Assert.NotEmpty(evaluation.Missing);
        var whens = evaluation.Missing.Select(item => RecordMembers.At(item.Pointer).While).ToList();
        Assert.Equal(whens.Order(), whens);
        Assert.All(evaluation.Missing, item => Assert.EndsWith("?", item.Ask, StringComparison.Ordinal));
    }

    [Fact]
    public void No_absent_list_counts_as_not_applicable()
    {
        var minimal = Samples.Engine.Evaluate(Minimal());
        var expecting = Samples.Catalogue.Rules.Where(rule => rule.Info.Expects is not null).Select(rule => rule.Info.Id).ToHashSet();
        var example = Samples.Engine.Evaluate(Samples.Example).Findings
            .Where(finding => finding.Outcome == Outcome.Pass).Select(finding => finding.RuleId).ToHashSet();
        Assert.All(
            minimal.Findings.Where(finding => expecting.Contains(finding.RuleId) && example.Contains(finding.RuleId)),
            finding => Assert.True(finding.Outcome <= Outcome.Advisory, $"{finding.RuleId}: {finding.Outcome}"));
    }

    private static ServiceRecord Minimal() => Samples.Read(
        """{"recordId":"M-1","jobType":"annualService","jurisdiction":"GB-ENG","finishedAt":"2026-09-14T10:25:00+01:00","appliance":{"fuel":"naturalGas"}}"""u8.ToArray());

    private static IEnumerable<string> Members(JsonNode node, string pointer) => node switch
    {
        JsonObject section => section.SelectMany(member => Members(member.Value!, $"{pointer}/{member.Key}").Prepend($"{pointer}/{member.Key}")),
        JsonArray list => list.SelectMany((item, index) => Members(item!, $"{pointer}/{index}")),
        _ => [],
    };

    private static void Remove(JsonNode json, string pointer)
    {
        var segments = pointer.Split('/')[1..];
        var parent = segments[..^1].Aggregate(json, (node, segment) => node is JsonArray list
            ? list[int.Parse(segment, System.Globalization.CultureInfo.InvariantCulture)]!
            : node[segment]!);
        parent.AsObject().Remove(segments[^1]);
    }
}
