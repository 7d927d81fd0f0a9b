using SecondOpinion;
using SecondOpinion.Duties;

namespace WholeRecords.Tests;

/// <summary>Two people who have not read the rules say the same of the whole records, or the page names the record. With REWRITE_OPINION=1 it is written anew.</summary>
public sealed class OpinionTests
{
    /// <summary>Records on which the two still differ, with the reason. None today.</summary>
    private static readonly IReadOnlyDictionary<string, string> OpenDisputes = new Dictionary<string, string>();

    [Fact]
    public void The_second_person_expects_what_the_auditor_expects_but_for_open_disputes()
    {
        var different = SecondlyJudged.All.Where(one => one.Differences.Count > 0).ToList();
        Assert.True(
            different.Select(one => one.Whole.Name).Order(StringComparer.Ordinal).SequenceEqual(OpenDisputes.Keys.Order(StringComparer.Ordinal)),
            string.Join('\n', different.Select(one => $"{one.Whole.Name}: {string.Join("; ", one.Differences)}")));
    }

    [Fact]
    public async Task The_committed_page_is_what_the_second_person_says()
    {
        var file = Path.Combine(WholeRecord.Folder, "OPINION.md");
        var page = OpinionPage.Of(SecondlyJudged.All);
        if (Environment.GetEnvironmentVariable("REWRITE_OPINION") == "1")
            await File.WriteAllTextAsync(file, page);

        Assert.True(await File.ReadAllTextAsync(file) == page, "tests/records/whole/OPINION.md is stale: run tests/rewrite and look at the difference.");
    }

    /// <summary>A need that the table of reasons names and nobody here knows would stop the judgement of whoever uses that reason.</summary>
    [Fact]
    public void Every_need_of_the_table_of_reasons_is_known()
    {
        var visit = new Visit(new Case(SecondlyJudged.Read(SecondlyJudged.JsonOf(WholeRecord.All[0]))!, [], []));
        Assert.NotEmpty(ReasonTable.InForce.Needs);
        Assert.All(ReasonTable.InForce.Needs.Keys, need => Needs.IsMet(visit, need));
    }

    /// <summary>Whatever is not done is some kind of not done: no duty is silent, and what holds names what is asked for.</summary>
    [Fact]
    public void What_is_held_says_what_is_asked_and_every_duty_has_a_state()
    {
        foreach (var one in SecondlyJudged.All.Where(one => one.Said is not null))
        {
            Assert.Equal(one.Said!.MayClose, !one.Said.Asks.Any());
            Assert.All(one.Said.Duties, duty => Assert.NotEmpty(duty.Because));
            Assert.All(one.Said.Duties.Where(duty => duty.State > DutyState.ByReason), duty => Assert.NotEmpty(duty.Asks));
        }
    }
}
