using Records;
using Records.Members;

namespace SecondOpinion.Tests;

/// <summary>The table reason x duty hangs together, and no row does what the table forbids.</summary>
public sealed class ReasonTableTests
{
    private static readonly ReasonTable Table = ReasonTable.InForce;

    [Fact]
    public void Every_member_that_a_row_or_a_ban_names_exists()
    {
        Assert.NotEmpty(Table.Rows);
        Assert.All(Table.Rows, row => Assert.NotEmpty(row.What));
        Assert.All(Table.Rows.SelectMany(row => row.What).Concat(Table.Never.SelectMany(ban => ban.What ?? [])), what => Assert.NotNull(RecordMembers.Find(what)));
        Assert.All(Table.Rows.SelectMany(row => row.ContradictedBy).Where(words => words.StartsWith('/')), words => Assert.NotNull(RecordMembers.Find(words.Split(' ')[0])));
        Assert.All(Table.Needs.Values.SelectMany(words => words.Split(' ', ',', ';')).Where(word => word.StartsWith('/')), place => Assert.NotNull(RecordMembers.Find(place)));
    }

    [Fact]
    public void An_item_is_told_from_others_by_a_value_that_its_member_can_have()
    {
        var named = Table.Rows.Where(row => row.Where is not null).Select(row => (row.What, Where: row.Where!))
            .Concat(Table.Never.Where(ban => ban.Where is not null).Select(ban => (What: ban.What!, Where: ban.Where!))).ToList();
        Assert.NotEmpty(named);
        Assert.All(named.SelectMany(one => one.What.SelectMany(what => one.Where.Select(where => (what, where.Key, where.Value)))), one =>
        {
            var item = one.what[..(one.what.IndexOf('*', StringComparison.Ordinal) + 1)];
            Assert.Contains(one.Value, RecordMembers.At($"{item}/{one.Key}").AllowedValues);
        });
    }

    [Fact]
    public void Every_duty_and_every_need_is_known_and_every_reason_and_need_is_used()
    {
        Assert.All(Table.Rows.Select(row => row.Duty).Concat(Table.Never.SelectMany(ban => ban.Duties ?? [])), duty => Assert.Contains(duty, Table.Duties.Keys));
        var needed = Table.Rows.SelectMany(row => row.Needs).Concat(Table.Never.Select(ban => ban.Unless).OfType<string>()).Distinct().ToList();
        Assert.Empty(needed.Except(Table.Needs.Keys));
        Assert.Empty(Table.Needs.Keys.Except(needed));
        Assert.Equal(Enum.GetValues<NotDoneReason>(), Table.Rows.Select(row => row.Because).Distinct().Order());
    }

    [Fact]
    public void No_two_rows_answer_the_same_question()
    {
        var asked = Table.Rows.SelectMany(row => row.What.SelectMany(what => (row.Jobs ?? Enum.GetValues<JobType>()).Except(row.NotJobs)
            .Select(job => $"{row.Because} {row.Duty} {what} {string.Join(',', row.Where ?? new Dictionary<string, string>())} {job}"))).ToList();
        Assert.Equal(asked.Count, asked.Distinct().Count());
    }

    [Fact]
    public void No_row_does_what_the_table_forbids() => Assert.Empty(
        from ban in Table.Never
        where ban.Jurisdiction is null && ban.Before is null
        from row in Table.Rows
        where IsForbidden(row, ban)
        select $"{row.Because} {row.Duty} {string.Join(' ', row.What)}: {ban.Says}");

    /// <summary>A ban meets a row that it could be told of; each kind of ban here would meet a row made for it.</summary>
    [Fact]
    public void A_row_that_is_forbidden_is_found()
    {
        Assert.All(Table.Never.Where(ban => ban.Jurisdiction is null && ban.Before is null), ban =>
        {
            var row = new Reason
            {
                Because = ban.Because?[0] ?? NotDoneReason.NotFitted,
                Duty = ban.Duties?[0] ?? "examineAfterWork",
                What = ban.What ?? ["/water/hotBar"],
                Where = ban.Where,
                Weight = DutyWeight.Must,
                LeftInUse = CountsInUse.Either,
                When = "",
                Source = "",
            };
            Assert.True(IsForbidden(row, ban), ban.Says);
        });
    }

    private static bool IsForbidden(Reason row, ReasonBan ban) =>
        (ban.Because?.Contains(row.Because) ?? true)
        && (ban.Duties?.Contains(row.Duty) ?? true)
        && (ban.What?.Intersect(row.What).Any() ?? true)
        && (ban.Where?.All(where => row.Where is null || row.Where.Contains(where)) ?? true)
        && (ban.Weight is null || ban.Weight == row.Weight)
        && (ban.LeftInUse is null || row.LeftInUse != CountsInUse.Not)
        && (ban.Unless is null || !row.Needs.Contains(ban.Unless));
}
