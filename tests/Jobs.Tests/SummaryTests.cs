using System.Text.Json;
using Checking;
using Jobs.Queue;
using Jobs.Summary;
using Storage;

namespace Jobs.Tests;

public sealed class SummaryTests
{
    private static readonly DateOnly Day = new(2027, 8, 1);

    [Fact]
    public async Task The_whole_is_the_sum_of_its_parts()
    {
        using var bench = new AuditBench("sqlite");
        using var scratch = new Scratch();
        var judge = new LineJudge(Scratch.Rules, new ProfileStore(scratch.Open()), new EvaluationStore(scratch.Open(), Scratch.Rules.Law), new HistoryStore(scratch.Open(), Scratch.Rules.Law), Scratch.A, new DateTimeOffset(Day, default, TimeSpan.Zero));
        var judged = await judge.JudgeAllAsync(AuditBench.Month(40).ToAsyncEnumerable(), default).ToListAsync();
        var whole = new SummaryBuilder(Day);
        judged.ForEach(whole.Add);

        var sum = new SummaryParts();
        foreach (var part in judged.Chunk(7))
        {
            var builder = new SummaryBuilder(Day);
            Array.ForEach(part, builder.Add);
            sum.Add(SummaryParts.Of(builder.Parts.ToBytes()));
        }

        Assert.Equal(Text(whole.ToSummary(40, Scratch.Rules.Catalogue.Header.Cautions)), Text(sum.ToSummary(Day, 40, Scratch.Rules.Catalogue.Header.Cautions)));
        Assert.Equal((8, 3L, "#/appliance/fuel"), (whole.Parts.Rejected, whole.Parts.FirstFault!.Line, whole.Parts.FirstFault.Pointer));

        // A high reading asks for the maker's decision on it, so the advisory and the dangerous records leave a question open.
        Assert.Equal(0.5m, whole.ToSummary(40, Scratch.Rules.Catalogue.Header.Cautions).CompletenessRate);
        Assert.Equal(16, whole.ToSummary(40, Scratch.Rules.Catalogue.Header.Cautions).WorstAppliances.Total);
        Assert.Equal(2, whole.ToSummary(40, Scratch.Rules.Catalogue.Header.Cautions).WorstAppliances.Rows[0].Line);

        // The example's next visit is due on 2027-09-14 at the latest: within 60 days of the day on which this is looked at.
        Assert.Equal(32, whole.ToSummary(40, Scratch.Rules.Catalogue.Header.Cautions).SoonDue.Total);
        Assert.Equal(0, whole.ToSummary(40, Scratch.Rules.Catalogue.Header.Cautions).Overdue.Total);
    }

    [Fact]
    public void Sums_that_were_kept_while_one_hash_stood_for_law_and_code_are_gone_on_with()
    {
        var parts = new SummaryParts();
        parts.Add(new SummaryParts { RuleSets = { ["GB 0.1.0 3a84"] = 2 } });
        parts.Add(new SummaryParts { RuleSets = { ["GB 1.0.0 12ab 34cd"] = 3 } });

        Assert.Equal(
            [("0.1.0", "3a84", "3a84", 2), ("1.0.0", "12ab", "34cd", 3)],
            JsonSerializer.Deserialize(Text(parts.ToSummary(new(2026, 9, 14), 5, Scratch.Rules.Catalogue.Header.Cautions)), AuditJson.Wire.AuditSummary)!.RuleSets.Select(set => (set.Version, set.LawHash, set.CodeHash, set.Records)));
    }

    private static string Text(AuditSummary summary) => JsonSerializer.Serialize(summary, AuditJson.Wire.AuditSummary);
}
