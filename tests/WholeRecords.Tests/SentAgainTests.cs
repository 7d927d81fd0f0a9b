using Findings;
using Kernel.Catalogues;
using Records;
using Rules;
using Visits;
using Visits.Facts;
using Visits.Judging;

namespace WholeRecords.Tests;

/// <summary>
/// A record that is sent again as it is takes nothing back, so it is judged as before, though a danger was named; and one that says
/// nothing of the danger does not close.
/// </summary>
public sealed class SentAgainTests
{
    private static readonly ComplianceEngine Engine = ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly));

    [Fact]
    public void Unchanged_it_is_judged_as_before()
    {
        var asked = 0;
        foreach (var (whole, record, first, answer) in Dangerous())
        {
            asked++;
            var again = Engine.Evaluate(record, new Lookup { SaidBefore = [answer] });
            Assert.Equal(Told(whole, first), Told(whole, again));
        }

        Assert.True(asked > 100, $"{asked} records");
    }

    [Fact]
    public void What_was_told_does_not_close_by_a_record_that_says_nothing_of_it()
    {
        // The example record shows none of them, nor any defect, and nothing in it was measured after the answer: whatever was told is gone from it.
        var without = Held.Read(Engine.Catalogue.ExampleRecord).Record!;
        foreach (var (whole, _, _, answer) in Dangerous())
        {
            var again = Engine.Evaluate(without, new Lookup { SaidBefore = [answer with { FinishedAt = without.FinishedAt.Value }] });
            Assert.False(again.Closing.Allowed, whole);
            Assert.Contains(RuleIds.DangerTakenBack, again.Closing.BlockedBy);
            Assert.All(answer.Dangers, danger => Assert.Contains(again.Situation!.Dangers, shown => shown.RuleId == danger.RuleId && shown.Subject == danger.Subject));
        }
    }

    private static string Told(string whole, Evaluation said) =>
        $"{whole}: {said.Outcome}, {said.Closing.Allowed} {said.Closing.ClosesAs} {string.Join(", ", said.Closing.BlockedBy)}, {said.Situation?.State} {said.Situation?.Handled}";

    /// <summary>The whole records that show a danger of their boiler, with what was said of each and how a store remembers it.</summary>
    private static IEnumerable<(string Whole, ServiceRecord Record, Evaluation Said, EarlierAnswer Answer)> Dangerous()
    {
        foreach (var whole in WholeRecord.All)
        {
            if (Held.Read(whole.Utf8).Record is not { } record)
                continue;
            var said = Engine.Evaluate(record);
            if (VisitFacts.Of(record, said, Engine.Law).Dangers is { } dangers)
                yield return (whole.Name, record, said, new EarlierAnswer { FinishedAt = record.FinishedAt.Value, Dangers = dangers });
        }
    }
}
