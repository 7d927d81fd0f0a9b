using Findings;
using Kernel;
using Kernel.Catalogues;
using Kernel.Engine;
using Records;
using Visits.Judging;
using Wire;

namespace Rules.Tests;

/// <summary>Every case beside every rule of the duties, asked in company: a rule that chains needs those that infer.</summary>
public sealed class DutyCasesTests
{
    private static readonly JudgingEngine Engine = JudgingEngine.Start(RuleSet.Catalogue);

    public static TheoryData<string, string> Calling => NamesOf(rule => rule is DutyCallRule);

    public static TheoryData<string, string> Inferring => NamesOf(rule => rule is DutyFactRule);

    [Theory]
    [MemberData(nameof(Calling))]
    public void Rule_calls_for_what_its_case_expects(string ruleId, string name)
    {
        var (one, owed) = Asked(ruleId, name);
        var calls = owed.Calls.Where(called => called.Rule.Info.Id == ruleId).ToList();
        var weights = calls.SelectMany(called => called.Parts.Select(part => (Part: part, called.Call.Weight))).GroupBy(call => call.Part, call => call.Weight, StringComparer.Ordinal)
            .ToDictionary(part => part.Key, part => part.Max(), StringComparer.Ordinal);

        Assert.Null(one.Expect.Infers);
        Assert.Equal(one.Expect.Calls, calls.Count > 0);
        Assert.All(one.Expect.Must ?? [], part => Assert.Equal(Weight.Must, Assert.Contains(part, weights)));
        Assert.All(one.Expect.Should ?? [], part => Assert.Equal(Weight.Should, Assert.Contains(part, weights)));
        Assert.All(one.Expect.PutOff ?? [], part => Assert.Contains(calls, called => called.Parts.Contains(part) && (called.Call.Weight is null || called.Call.IsPutOffAgain)));
        Assert.All((one.Expect.Must ?? []).Except(one.Expect.PutOff ?? []), part => Assert.DoesNotContain(calls, called => called.Parts.Contains(part) && called.Call.IsPutOffAgain));
        Assert.All(one.Expect.NotFor ?? [], part => Assert.DoesNotContain(part, weights));
    }

    [Theory]
    [MemberData(nameof(Inferring))]
    public void Rule_infers_what_its_case_expects(string ruleId, string name)
    {
        var (one, owed) = Asked(ruleId, name);
        var inferred = owed.Facts.Where(fact => fact.Shown.Exists(shown => shown.RuleId == ruleId)).Cast<DutyFact<TouchedPart>>().Select(fact => WireNames.Of(fact.What));

        Assert.Null(one.Expect.Calls);
        Assert.Equal(one.Expect.Infers!.Order(StringComparer.Ordinal), inferred.Order(StringComparer.Ordinal));
    }

    /// <summary>What is called for of some visits only has a case of one of them, and one of another.</summary>
    [Fact]
    public void Every_call_is_made_in_a_case_and_not_made_in_another() => Assert.All(RuleSet.Catalogue.DutyCases.Where(entry => entry.Key is DutyCallRule), entry =>
    {
        var made = entry.Value.Select(one => Asked(entry.Key.Info.Id, one.Name).Owed.Calls.Select(called => called.Call).Where(((DutyCallRule)entry.Key).Calls.Contains).ToList()).ToList();
        Assert.All(((DutyCallRule)entry.Key).Calls, call => Assert.True(
            made.Exists(calls => calls.Contains(call)) && made.Exists(calls => !calls.Contains(call)),
            $"{entry.Key.Info.Id}: no case of {string.Join(", ", call.Parts)}{(call.Where is null ? "" : $" where {call.Where}")}"));
    });

    [Fact]
    public void The_cases_of_a_rule_show_it_say_something_and_nothing() => Assert.All(RuleSet.Catalogue.DutyCases, entry =>
    {
        var cases = entry.Value;
        Assert.Equal(cases.Count, cases.Select(one => one.Name).Distinct().Count());
        Assert.True(cases.Any(one => one.Expect.Calls == true || one.Expect.Infers is { Count: > 0 }), $"{entry.Key.Info.Id}: no case in which it says anything");
        Assert.True(cases.Any(one => one.Expect.Calls == false || one.Expect.Infers is { Count: 0 }), $"{entry.Key.Info.Id}: no case in which it says nothing");
        Assert.True(cases.Count > 2, $"{entry.Key.Info.Id}: no case at its edge");
    });

    private static (DutyCase Case, OwedDuties Owed) Asked(string ruleId, string name)
    {
        var one = RuleSet.Catalogue.DutyCases.Single(entry => entry.Key.Info.Id == ruleId).Value.Single(candidate => candidate.Name == name);
        var visit = RuleSet.Engine.VisitOf(RuleSet.Read(one.RecordFrom(RuleSet.Catalogue.ExampleRecord)), one.Beside());
        _ = Engine.Evaluate(visit);
        Assert.True(visit.Owed.IsKnown);
        return (one, visit.Owed);
    }

    private static TheoryData<string, string> NamesOf(Func<DutyRule, bool> chosen)
    {
        var data = new TheoryData<string, string>();
        foreach (var (rule, cases) in RuleSet.Catalogue.DutyCases.Where(entry => chosen(entry.Key)))
        {
            foreach (var one in cases)
                data.Add(rule.Info.Id, one.Name);
        }

        return data;
    }
}
