using System.Text.Json;
using System.Text.Json.Nodes;
using Findings;
using Records;
using Records.Faults;
using Records.Members;
using Records.Reading;
using Visits.Judging;

namespace Kernel.Tests;

/// <summary>Silence is never read as approval: what a record leaves out can only make its outcome graver.</summary>
public sealed class SilenceTests
{
    /// <summary>
    /// What the example volunteers beyond what its visit owes, with the rule that falls silent without it and asks nothing. The list is whole: a
    /// further entry is a member whose absence nobody sees.
    /// </summary>
    private static readonly Dictionary<string, string[]> NobodyAsksFor = new(StringComparer.Ordinal)
    {
        ["/combustion/settledMinutes"] = ["visit-long-enough"],
        ["/disturbedJoints/0/partNumber"] = ["new-seal-part-number"],
        ["/disturbedJoints/1/partNumber"] = ["new-seal-part-number"],
        ["/escape"] = ["escape-made-safe"],
        ["/heatExchanger/minutesSpent"] = ["visit-long-enough"],
        ["/instruments"] = ["other-instrument-calibrated"],
        ["/instruments/2/kind"] = ["other-instrument-calibrated"],
        ["/instruments/2/serialNumber"] = ["other-instrument-calibrated"],
        ["/instruments/3/kind"] = ["other-instrument-calibrated"],
        ["/instruments/3/serialNumber"] = ["other-instrument-calibrated"],
        ["/makerLimits"] = ["makers-seal-renewed"],
        ["/makerLimits/sealsToRenew"] = ["makers-seal-renewed"],
        ["/partsFitted"] = ["part-for-this-gas"],
        ["/startedAt"] = ["visit-long-enough"],
        ["/water/systemVolumeL"] = ["vessel-volume"],
        ["/water/vesselVolumeL"] = ["vessel-volume"],
    };

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

        // Where a list is gone its rows are, too, and the rule asks for the list instead.
        var said = after.Findings.ToLookup(finding => finding.RuleId);
        Assert.Equal(
            NobodyAsksFor.GetValueOrDefault(pointer, []),
            before.Findings
                .Where(was => !said[was.RuleId].Any(now => now.Outcome <= was.Outcome && (now.Subject == was.Subject || now.Outcome < Outcome.Pass)))
                .Select(was => was.RuleId).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
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

    /// <summary>Said of the rules by themselves: only a duty can take back what a rule asks for.</summary>
    [Fact]
    public void Without_duties_no_absent_list_counts_as_not_applicable()
    {
        var minimal = ComplianceEngine.Start(Samples.Catalogue.With(Samples.Catalogue.Rules)).Evaluate(Minimal());
        var expecting = Samples.Catalogue.Rules.Where(rule => rule.Info.Expects is not null).Select(rule => rule.Info.Id).ToHashSet();
        var example = Samples.Engine.Evaluate(Samples.Example).Findings
            .Where(finding => finding.Outcome == Outcome.Pass).Select(finding => finding.RuleId).ToHashSet();
        Assert.All(
            minimal.Findings.Where(finding => expecting.Contains(finding.RuleId) && example.Contains(finding.RuleId)),
            finding => Assert.True(finding.Outcome <= Outcome.Advisory, $"{finding.RuleId}: {finding.Outcome}"));
    }

    /// <summary>A list that is absent is asked for, with duties too, once the work calls for it.</summary>
    [Theory]
    [InlineData("gasPath", "disturbed-gas-joint-proved")]
    [InlineData("combustionCircuit", "combustion-circuit-seal")]
    public void The_work_that_was_done_calls_for_the_absent_list(string touched, string asking)
    {
        var untouched = Samples.Engine.Evaluate(Minimal());
        var record = JsonNode.Parse(MinimalJson)!;
        record["work"] = new JsonObject { ["touched"] = new JsonArray(touched) };
        var worked = Samples.Engine.Evaluate(Samples.Read(JsonSerializer.SerializeToUtf8Bytes(record)));
        Assert.Equal(Outcome.NotApplicable, Assert.Single(untouched.Findings, finding => finding.RuleId == asking).Outcome);
        Assert.Equal(Outcome.Missing, Assert.Single(worked.Findings, finding => finding.RuleId == asking).Outcome);
    }

    private static ServiceRecord Minimal() => Samples.Read(MinimalJson);

    private static byte[] MinimalJson => """{"recordId":"M-1","jobType":"annualService","jurisdiction":"GB-ENG","finishedAt":"2026-09-14T10:25:00+01:00","appliance":{"fuel":"naturalGas"}}"""u8.ToArray();

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
