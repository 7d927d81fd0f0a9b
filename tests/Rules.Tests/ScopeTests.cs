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

    /// <summary>That the law of a day long past is not known is said by no rule.</summary>
    private static bool IsAFailedRule(Finding finding) => finding is { Outcome: Outcome.Error, RuleId: not "law-of-the-day-known" };
}
