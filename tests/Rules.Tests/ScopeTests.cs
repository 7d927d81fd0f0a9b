using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Nodes;
using Findings;
using Kernel;
using Records;

namespace Rules.Tests;

/// <summary>No rule asks for a limit where or when none exists, and none fails otherwise: every case, for every gas, in every nation, at every change of law.</summary>
public sealed class ScopeTests
{
    /// <summary>The day before the first change, and every day of change with the day before it.</summary>
    private static readonly DateOnly[] Days =
    [
        .. RuleSet.Catalogue.Limits.Changes.Concat(RuleSet.Catalogue.Rules.Select(rule => rule.Info.InForceFrom))
            .Concat(TightnessDays).Where(day => day > DateOnly.MinValue).Distinct().SelectMany(day => new[] { day.AddDays(-1), day }).Distinct().Order(),
    ];

    private static IEnumerable<DateOnly> TightnessDays => [new(2026, 3, 25), new(2026, 10, 1)];

    [Fact]
    public void Every_case_is_judged_without_failure_for_every_gas_in_every_nation_at_every_change()
    {
        var places = (from fuel in Enum.GetValues<Fuel>() from place in RuleSet.Catalogue.JurisdictionCodes select (fuel, place)).ToList();
        var failed = new ConcurrentBag<string>();
        Parallel.ForEach(RuleSet.Cases.Select((pair, index) => (pair.Case, index)), item =>
        {
            var record = JsonNode.Parse(item.Case.RecordFrom(RuleSet.Catalogue.ExampleRecord))!;
            foreach (var ((fuel, place), turn) in places.Select((place, index) => (place, index)))
            {
                record["appliance"]!["fuel"] = WireText.Of(fuel);
                record["jurisdiction"] = place;

                // Each case and place takes another day, so that together they see all of them many times.
                var day = Days[(item.index * places.Count + turn) % Days.Length];
                foreach (var finding in RuleSet.Engine.Evaluate(RuleSet.Read(JsonSerializer.SerializeToUtf8Bytes(record)), asOf: day).Findings.Where(IsAFailedRule))
                    failed.Add($"{finding.RuleId}: {fuel} {place} {day:yyyy-MM-dd}: {finding.Message}");
            }
        });
        Assert.Empty(failed);
    }

    /// <summary>
    /// What a rule of the first pass says of a case that does not name its fuel is no better than what it says for any gas; where the gases
    /// differ it asks for the fuel. So none is taken by default, and no limit that differs by it lets anything pass.
    /// </summary>
    [Fact]
    public void What_is_said_without_the_fuel_is_no_better_than_for_any_gas()
    {
        var firstPass = RuleSet.Catalogue.Rules.OfType<FirstPassRule>().Select(rule => rule.Info.Id).ToHashSet(StringComparer.Ordinal);
        var (wrong, asked) = (new ConcurrentBag<string>(), new ConcurrentDictionary<string, bool>());
        Parallel.ForEach(RuleSet.Cases.Select((pair, index) => (pair.Case, index)), item =>
        {
            var record = RuleSet.Read(item.Case.RecordFrom(RuleSet.Catalogue.ExampleRecord));
            var byGas = Enum.GetValues<Fuel>().Cast<Fuel?>().Select(fuel => Said(record, fuel)).ToList();
            foreach (var ((rule, subject), finding) in Said(record, null))
            {
                if (finding.Outcome == Outcome.Missing)
                    asked[rule] = true;
                else if (finding.Outcome != Outcome.Unsafe && !byGas.TrueForAll(said => said.TryGetValue((rule, subject), out var known) && known.Outcome == finding.Outcome))
                    wrong.Add($"{rule} on '{subject}' says {finding.Outcome} without the fuel, and {string.Join(", ", byGas.Select(said => said.GetValueOrDefault((rule, subject))?.Outcome))} with: case {item.index}");
            }
        });

        Assert.True(wrong.IsEmpty, string.Join('\n', wrong.Order()));
        Assert.Contains("inlet-pressure", asked.Keys);

        Dictionary<(string, string), Finding> Said(ServiceRecord record, Fuel? fuel)
        {
            // The reader refuses a record that has measured something and does not name its fuel: the engine must not rely on it.
            typeof(Appliance).GetProperty(nameof(Appliance.Fuel))!.SetValue(record.Appliance, fuel);
            return RuleSet.Engine.AnswersTo(record).Where(finding => firstPass.Contains(finding.RuleId)).ToDictionary(finding => (finding.RuleId, finding.Subject));
        }
    }

    /// <summary>
    /// A record on which nobody got in: it is asked what was tried and left, and not for the gas; a danger that it states is one all the same.
    /// No limit of any gas is shown as met: each rule that differs by the gas asks for it where a visit owes what the rule looks at.
    /// </summary>
    [Fact]
    public void A_visit_without_access_is_not_asked_for_the_fuel_and_meets_no_limit_of_any()
    {
        var record = RuleSet.Read("""
            {
              "recordId": "x", "jobType": "landlordCheck", "jurisdiction": "GB-ENG", "finishedAt": "2026-09-14T10:25:00+01:00", "work": { "result": "noAccess" },
              "premises": { "belowGround": true }, "appliance": { "ratedInputKw": 30, "ratedInputBasis": "gross" }, "gasSupply": { "regulatorSealIntact": false }
            }
            """u8.ToArray());
        var evaluation = RuleSet.Engine.Evaluate(record);

        string[] hanging = ["category-covers-appliance", "inlet-pressure-loss", "lpg-below-ground", "meter-operating-pressure", "meter-standing-pressure", "plate-fuel"];
        Assert.All(hanging, id => Assert.Equal(Outcome.NotApplicable, Assert.Single(evaluation.Findings, finding => finding.RuleId == id).Outcome));
        Assert.DoesNotContain(evaluation.Missing, missing => missing.Pointer == "/appliance/fuel");
        Assert.All(["/work/tried", "/work/leftBehind"], pointer => Assert.Contains(evaluation.Missing, missing => missing.Pointer == pointer));
        Assert.False(evaluation.Closing.Allowed);

        // A rule alone is one without duties: whatever it asks for is owed.
        Assert.All(hanging, id => Assert.Equal(Outcome.Missing, Assert.Single(RuleSet.EngineOf(id).Evaluate(record).Findings, finding => finding.RuleId == id).Outcome));
        Assert.Contains(hanging, id => RuleSet.EngineOf(id).Evaluate(record).Missing.Any(missing => missing.Pointer == "/appliance/fuel"));
        Assert.Equal(Outcome.Unsafe, Assert.Single(evaluation.Findings, finding => finding.RuleId == "regulator-seal").Outcome);
        Assert.DoesNotContain(evaluation.Findings, IsAFailedRule);
    }

    /// <summary>That the law of a day long past is not known is said by no rule.</summary>
    private static bool IsAFailedRule(Finding finding) => finding is { Outcome: Outcome.Error, RuleId: not "law-of-the-day-known" };
}
