using System.Text.Json;
using Kernel;
using Kernel.Catalogues;
using Records;
using Visits.Judging;
using Wire;

namespace Rules.Tests;

/// <summary>No bound of a limit can be one step off, in either direction, without a written case that notices.</summary>
public sealed class LimitChangeTests
{
    private static readonly List<(IComplianceRule Rule, RuleCase Case, ServiceRecord Record)> Cases =
        [.. RuleSet.Cases.Select(pair => (pair.Rule, pair.Case, RuleSet.RecordOf(pair.Case)))];

    /// <summary>A bound that no verdict hangs on: the standard's low natural-gas pressure is judged by rate and burn, and only told here.</summary>
    private static readonly (string Id, string Bound, Fuel Fuel) OnlyTold = ("inlet-pressure-range", "min", Fuel.NaturalGas);

    private static IReadOnlyList<LimitDefinition> Lines => RuleSet.Catalogue.Limits.Definitions;

    /// <summary>Line of limits.json (from 0), its id, bound and number of steps.</summary>
    public static TheoryData<int, string, string, int> Changes
    {
        get
        {
            var data = new TheoryData<int, string, string, int>();
            foreach (var (line, bound, steps) in
                from line in Lines.Index()
                from bound in new[] { ("min", line.Item.Min), ("max", line.Item.Max) }
                where bound.Item2 is not null && !(line.Item.Id == OnlyTold.Id && bound.Item1 == OnlyTold.Bound && line.Item.Fuels!.Contains(WireNames.Of(OnlyTold.Fuel)))
                from steps in new[] { -1, 1 }
                select (line, bound.Item1, steps))
            {
                data.Add(line.Index, line.Item.Id, bound, steps);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Changes))]
    public void A_bound_that_is_one_step_off_is_noticed(int index, string id, string bound, int steps)
    {
        var changed = JsonSerializer.SerializeToNode(Lines[index], CatalogueJson.Options)!;
        changed[bound] = changed[bound]!.GetValue<decimal>() + (steps * Lines[index].Resolution);
        var book = new LimitBook([.. Lines.Select((line, at) => at == index ? changed.Deserialize<LimitDefinition>(CatalogueJson.Options)! : line)]);

        Assert.True(Cases.Exists(one => Differs(one.Rule, one.Case, one.Record, book)), $"no case notices that {bound} of {id} is {changed[bound]}");
    }

    private static bool Differs(IComplianceRule rule, RuleCase one, ServiceRecord record, LimitBook book)
    {
        var answer = RuleSet.AnswerTo(one.Expect, RuleSet.AnswersOf(rule.Info.Id, RuleSet.EngineOf(rule).AnswersTo(record, book, one.Beside())));
        return answer.Outcome != one.Expect.Outcome
            || (one.Expect.Margin is { } margin && answer.Margin != margin)
            || (one.Expect.Says is { } words && answer.Message?.Contains(words, StringComparison.Ordinal) != true);
    }
}
