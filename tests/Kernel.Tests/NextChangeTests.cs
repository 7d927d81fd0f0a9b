using System.Text;
using Findings;
using Kernel.Catalogues;
using Rules;
using Visits;
using Visits.Judging;

namespace Kernel.Tests;

/// <summary>Another day's law, and what the next known change would make of an answer.</summary>
public sealed class NextChangeTests
{
    [Fact]
    public void On_the_last_day_before_the_English_alarm_rules_the_change_names_them_and_their_answers()
    {
        // SI 2022/707: in force on 1 October 2022.
        var record = Samples.Changed(json =>
        {
            json["premises"]!["use"] = "rented";
            json["premises"]!["roomIsLivingSpace"] = true;
            json["coAlarm"]!["present"] = false;
        });
        var evaluation = Samples.Engine.Evaluate(record, asOf: new DateOnly(2022, 9, 30));
        var next = Samples.Engine.NextChange(evaluation, record);

        Assert.Equal(new DateOnly(2022, 10, 1), next.On);
        Assert.Contains(next.What, change => change is { Kind: LawKind.Rule, Id: RuleIds.CoAlarmEnglandRented, How: LawEvent.Begins });
        Assert.Contains(next.What, change => change is { Kind: LawKind.Document, Id: "SI-2022-707", How: LawEvent.Begins });
        var differing = Assert.Single(next.Findings, answer => answer.RuleId == RuleIds.CoAlarmEnglandRented);
        Assert.Equal((null, Samples.Engine.Evaluate(record).Findings.Single(finding => finding.RuleId == RuleIds.CoAlarmEnglandRented).Outcome), (differing.Before, differing.After));
    }

    [Fact]
    public void The_withdrawal_of_an_edition_is_a_known_change()
    {
        var next = Next(new DateOnly(2026, 9, 14));

        Assert.Equal(new DateOnly(2026, 10, 1), next.On);
        Assert.Contains(next.What, change => change is { Kind: LawKind.Document, Id: "IGEM-UP-1B", How: LawEvent.Ends } && change.Text.EndsWith("edition 3", StringComparison.Ordinal));
        Assert.Empty(next.Findings);
    }

    [Fact]
    public void A_limit_of_the_deployer_that_begins_later_is_a_known_change_with_both_figures()
    {
        var engine = ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, Encoding.UTF8.GetBytes("""
            [{ "id": "cold-fill", "what": "cold fill", "min": 1.4, "max": 1.5, "unit": "bar", "resolution": 0.1, "origin": "deployer", "source": "made up",
               "verified": true, "inForceFrom": "2026-09-20", "who": "the office", "why": "a test" }]
            """)));
        var record = Samples.Changed(json => json["water"]!["coldFillBar"] = 1.2);
        var next = engine.NextChange(engine.Evaluate(record), record);

        Assert.Equal((new DateOnly(2026, 9, 20), OverallOutcome.Advisory), (next.On, next.Outcome));
        Assert.Equal("cold fill: from at least 1 at most 1.5 bar to at least 1.4 at most 1.5 bar", Assert.Single(next.What).Text);
        Assert.Contains(next.Findings, answer => answer is { RuleId: RuleIds.ColdFillPressure, Before: Outcome.Pass, After: Outcome.Advisory });
    }

    [Fact]
    public void Where_nothing_further_is_known_the_answer_says_so()
    {
        var next = Next(new DateOnly(2200, 1, 1));
        Assert.Equal((null, 0, 0), (next.On, next.What.Count, next.Findings.Count));
    }

    [Fact]
    public void A_change_elsewhere_is_no_change_here()
    {
        // 1 December 2022 is a day of change in Wales alone.
        Assert.NotEqual(new DateOnly(2022, 12, 1), Next(new DateOnly(2022, 11, 30)).On);
    }

    private static NextChange Next(DateOnly asOf) =>
        Samples.Engine.NextChange(Samples.Engine.Evaluate(Samples.Example, asOf: asOf), Samples.Example);
}
