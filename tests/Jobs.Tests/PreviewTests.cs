using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Dapper;
using Findings;
using Jobs.Previews;
using Jobs.Summary;
using Records;
using Records.Reading;
using Records.Values;
using Rules;
using Storage;

namespace Jobs.Tests;

/// <summary>What a change of rules would do to a stored archive: planted changes are found, all of them and nothing else.</summary>
public sealed class PreviewTests
{
    private const int Archive = 500;

    private static readonly ChangeQuery AnyRow = new(null, null, null, null, null);

    /// <summary>The archive's cold fill pressures, over and over. Shipped: 1.0 to 1.5 bar.</summary>
    private static readonly decimal[] ColdFills = [1.2m, 1.0m, 0.9m, 1.4m, 1.5m];

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_tighter_limit_brings_and_changes_what_lies_below_it_and_nothing_else(string kind)
    {
        using var bench = new PreviewBench(kind);
        await bench.Fill(Archive);

        var (status, rows) = await bench.Preview(Limit("1.1", "1.5"));

        Assert.Equal((AuditState.Completed, Archive, Archive, 0), (status.State, status.Evaluations.Read, status.Evaluations.Judged, status.Evaluations.Rejected));
        Assert.All(rows, row => Assert.Equal(RuleIds.ColdFillPressure, row.RuleId));
        Assert.Equal(bench.IdsWhere(coldFill => coldFill == 1.0m), rows.Where(row => row.Change == ChangeKind.New).Select(row => row.Evaluation));
        Assert.Equal(bench.IdsWhere(coldFill => coldFill == 0.9m), rows.Where(row => row.Change == ChangeKind.Changed).Select(row => row.Evaluation));
        var planted = bench.IdsWhere(coldFill => coldFill < 1.1m).Order().ToList();
        var right = rows.Select(row => row.Evaluation).Intersect(planted).Count();
        Stated.Holds("evaluations with a value below a limit that is tightened, two in five of an archive", planted.Count, right, rows.Count - right);
        var summary = status.Summary!;
        Assert.Equal((Archive / 5 * 2, Archive / 5, Archive / 5, 0), (summary.ChangedEvaluations, summary.Findings.New, summary.Findings.Changed, summary.Findings.Gone));
        Assert.Equal([RuleIds.ColdFillPressure], summary.Rules.Rows.Where(rule => rule.Counts.Changes > 0).Select(rule => rule.Key));
        Assert.Equal(Archive / 5 * 2, summary.Engineers.Rows.Sum(engineer => engineer.Counts.Changes));
        Assert.Equal(["2026-07", "2026-08", "2026-09"], summary.Months.Rows.Select(month => month.Key));
        Assert.Equal(rows.Count(row => row.FinishedOn!.Value.Month == 8), summary.Months.Rows[1].Counts.Changes);
        Assert.Equal(Archive, summary.Outcomes.Sum(move => move.Evaluations));
        Assert.Equal(Archive / 5, summary.Outcomes.Single(move => (move.Before, move.After) == (OverallOutcome.Pass, OverallOutcome.Advisory)).Evaluations);
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_loosened_limit_takes_findings_away(string kind)
    {
        using var bench = new PreviewBench(kind);
        await bench.Fill(50);

        var (status, rows) = await bench.Preview(Limit("0.9", "1.5", """, "loosens": true"""));

        Assert.Equal(bench.IdsWhere(coldFill => coldFill == 0.9m), rows.Select(row => row.Evaluation));
        Assert.All(rows, row => Assert.Equal((ChangeKind.Gone, "", "advisory", ""), (row.Change, row.Outcome, row.OutcomeBefore, row.Message)));
        Assert.Equal((0, 0, 10), (status.Summary!.Findings.New, status.Summary.Findings.Changed, status.Summary.Findings.Gone));
    }

    [Theory]
    [InlineData("""{"overrides":[]}""")]
    [InlineData("""{"overrides":[{"id":"cold-fill","what":"another name","min":1.0,"max":1.5,"unit":"bar","resolution":0.1,"origin":"deployer","source":"another source","verified":true,"who":"W","why":"Y"}]}""")]
    public async Task A_change_that_only_renames_things_changes_nothing(string candidate)
    {
        using var bench = new PreviewBench("sqlite");
        await bench.Fill(50);

        var (status, rows) = await bench.Preview(candidate);

        Assert.Empty(rows);
        Assert.Equal((0, 0, 0, 0), (status.Summary!.ChangedEvaluations, status.Summary.Findings.New, status.Summary.Findings.Changed, status.Summary.Findings.Gone));
        Assert.Equal(10, status.Summary.Findings.Unchanged);
    }

    [Theory]
    [InlineData("2022-09-30")] // SI 2022/707, on alarms in rented homes, is in force from the day after
    [InlineData("2012-12-31")] // the rule on flues in voids begins the day after
    public async Task Under_the_law_of_another_day_it_finds_what_judging_each_record_by_that_day_finds(string day)
    {
        using var bench = new PreviewBench("sqlite");
        await bench.Fill(20, record =>
        {
            record["premises"]!["use"] = "rented";
            record["premises"]!["roomIsLivingSpace"] = true;
            record["coAlarm"]!["present"] = false;
        });
        var asOf = DateOnly.Parse(day, CultureInfo.InvariantCulture);

        var (_, rows) = await bench.Preview($$"""{"asOf":"{{day}}"}""");

        var expected = bench.Records.SelectMany(record =>
        {
            var now = FindingsOf(record, record.FinishedAt.Date);
            var then = FindingsOf(record, asOf);
            return now.Except(then).Concat(then.Except(now)).Select(key => (record.RecordId, key.RuleId, key.Subject)).Distinct();
        });
        Assert.NotEmpty(rows);
        Assert.Equal(expected.Order(), rows.Select(row => (row.RecordId, row.RuleId, row.Subject)).Order());

        static List<(string RuleId, string Subject, Outcome Outcome)> FindingsOf(ServiceRecord record, DateOnly asOf) =>
            [.. Scratch.Rules.Evaluate(record, asOf: asOf, lookedAtOn: record.FinishedAt.Date).Findings.Where(finding => finding.Outcome < Outcome.Pass)
                .Select(finding => (finding.RuleId, finding.Subject, finding.Outcome))];
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_chunk_that_its_holder_left_is_done_by_the_next_and_nothing_is_written_twice(string kind)
    {
        using var bench = new PreviewBench(kind);
        await bench.Fill(Archive);
        var undisturbed = await bench.Preview(Limit("1.1", "1.5"));

        var disturbed = await bench.Accept(Limit("1.1", "1.5"));
        Assert.NotNull(await bench.Audits.Chunks.TakeAsync(default));
        await bench.Audits.WorkOff(bench.Audits.AnotherWorker);
        Assert.Equal(AuditState.Running, (await bench.Find(disturbed)).State);
        bench.Audits.Clock.Now += AuditBench.Lease + TimeSpan.FromSeconds(1);
        await bench.Audits.WorkOff(bench.Audits.Worker, bench.Audits.AnotherWorker);

        var after = (Status: await bench.Find(disturbed), Rows: await bench.Rows(disturbed, AnyRow));
        Assert.Equal(undisturbed.Rows, after.Rows);
        Assert.Equal(JsonSerializer.Serialize(undisturbed.Status.Summary, PreviewJson.Wire.PreviewSummary), JsonSerializer.Serialize(after.Status.Summary, PreviewJson.Wire.PreviewSummary));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task What_is_superseded_outside_the_days_or_anothers_is_left_out_and_what_goes_meanwhile_is_reported(string kind)
    {
        using var bench = new PreviewBench(kind);
        await bench.Fill(30);
        await bench.Store(bench.Records[0], Scratch.B);
        await bench.Store(bench.Records[1], Scratch.A, supersedes: bench.Ids[1]);
        var preview = await bench.Accept("""{"asOf":"2026-10-12","from":"2026-07-01","to":"2026-07-11"}""");
        await bench.Audits.Store.WriteAsync(
            async transaction => await transaction.Connection!.ExecuteAsync("DELETE FROM evaluations WHERE evaluation_id = @id", new { id = bench.Ids[0] }, transaction) == 1, default);

        await bench.Audits.WorkOff();

        var status = await bench.Find(preview);
        var inside = bench.Records.Count(record => record.FinishedAt.Date <= new DateOnly(2026, 7, 11));
        Assert.InRange(inside, 3, 29);
        Assert.Equal((AuditState.Completed, inside - 1, inside - 2, 1), (status.State, status.Evaluations.Read, status.Evaluations.Judged, status.Evaluations.Rejected));
        var gone = Assert.Single(await bench.Rows(preview, AnyRow with { Change = "notJudged" }));
        Assert.Equal((bench.Ids[0], "It is no longer stored."), (gone.Evaluation, gone.Message));
        Assert.Null(await bench.Previews.FindAsync(Scratch.B, preview, default));
    }

    [Fact]
    public async Task A_record_is_judged_by_the_profile_that_it_was_judged_by()
    {
        using var bench = new PreviewBench("sqlite");
        var profiles = new ProfileStore(bench.Audits.Store);
        await profiles.SaveAsync(Scratch.A, "p", new MakerLimits { CoPpmMax = 90, Source = "invented" }, bench.Audits.Clock.Now, default);
        await profiles.SaveAsync(Scratch.A, "p", new MakerLimits { CoPpmMax = 300, Source = "invented" }, bench.Audits.Clock.Now, default);
        await bench.Fill(1, record =>
        {
            record["appliance"]!["profileId"] = "p";
            record.AsObject().Remove("makerLimits");
        }, new Visits.Lookup { ProfileId = "p", ProfileVersion = 1, ProfileLimits = new MakerLimits { CoPpmMax = 90, Source = "invented" } });

        var (status, _) = await bench.Preview("""{"overrides":[]}""");

        // 96 ppm is over the 90 of the first version; by the second it would be no finding.
        Assert.Contains(status.Summary!.Rules.Rows, rule => rule.Key == RuleIds.FlueCo && rule.Counts.Unchanged > 0);
    }

    [Fact]
    public async Task Cancelled_it_is_not_gone_on_with_and_a_candidate_that_no_longer_fits_ends_it()
    {
        using var bench = new PreviewBench("sqlite");
        await bench.Fill(Archive);
        var cancelled = await bench.Accept("""{"overrides":[]}""");
        Assert.True(await bench.Audits.Worker.RunOneAsync(default));
        Assert.False(await bench.Audits.Audits.CancelAsync(Scratch.A, cancelled, default));
        Assert.True(await bench.Previews.CancelAsync(Scratch.A, cancelled, default));
        Assert.False(await bench.Audits.Worker.RunOneAsync(default));
        Assert.Equal((AuditState.Cancelled, 200), ((await bench.Find(cancelled)).State, (await bench.Find(cancelled)).Evaluations.Judged));

        var unfit = await bench.Accept("""{"overrides":[{"id":"no-such-limit"}]}""");
        await bench.Audits.WorkOff();
        Assert.Equal(AuditState.Failed, (await bench.Find(unfit)).State);
        Assert.Contains("override 1", (await bench.Find(unfit)).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_empty_archive_is_a_completed_preview_and_audits_and_previews_are_listed_apart()
    {
        using var bench = new PreviewBench("sqlite");
        var audit = await bench.Audits.Post(AuditBench.Month(1));
        var (status, rows) = await bench.Preview("""{"asOf":"2026-10-12"}""");

        Assert.Equal((AuditState.Completed, 0), (status.State, status.Evaluations.Read));
        Assert.Empty(rows);
        Assert.Equal([audit], (await bench.Audits.Audits.ListAsync(Scratch.A, null, 10, default)).Items.Select(one => one.AuditId));
        Assert.Equal([status.PreviewId], (await bench.Previews.ListAsync(Scratch.A, null, 10, default)).Items.Select(one => one.PreviewId));
        Assert.Null(await bench.Audits.Audits.FindAsync(Scratch.A, status.PreviewId, default));
    }

    [Fact]
    public async Task Pages_of_rows_put_together_are_all_rows_of_what_was_asked_for()
    {
        using var bench = new PreviewBench("sqlite");
        await bench.Fill(60);
        var (status, rows) = await bench.Preview(Limit("1.1", "1.5"));
        foreach (var (query, matches) in new (ChangeQuery, Func<ChangeRow, bool>)[]
        {
            (AnyRow, _ => true), (AnyRow with { Change = "new" }, row => row.Change == ChangeKind.New), (AnyRow with { Outcome = "unsafe" }, row => row.Outcome == "unsafe"),
            (AnyRow with { RuleId = RuleIds.ColdFillPressure }, _ => true), (AnyRow with { Month = "2026-08" }, row => row.FinishedOn!.Value.Month == 8),
            (AnyRow with { Engineer = "700001" }, row => row.Engineer == "700001"),
        })
        {
            var found = new List<ChangeRow>();
            var after = (Line: 0L, Ordinal: 0);
            while (await bench.Previews.PageAsync(Scratch.A, status.PreviewId, query, after, 7, default) is { Count: > 0 } page)
            {
                found.AddRange(page);
                after = (page[^1].Line, page[^1].Ordinal);
            }

            Assert.Equal(rows.Where(matches), found);
            Assert.Equal(found.Count, await bench.Previews.CountAsync(Scratch.A, status.PreviewId, query, default));
        }
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task What_is_purged_is_in_no_preview(string kind)
    {
        using var bench = new PreviewBench(kind);
        await bench.Fill(10, record => record["premises"]!["use"] = "ownerOccupied");
        var (status, rows) = await bench.Preview(Limit("1.1", "1.5"));
        Assert.NotEmpty(rows);

        await new Retention(bench.Audits.Store, Scratch.Rules.Law, TimeProvider.System).PurgeAsync(Scratch.A, new DateTimeOffset(2026, 8, 1, 0, 0, 0, TimeSpan.Zero), _ => { }, default);

        var left = rows.Where(row => row.FinishedOn >= new DateOnly(2026, 8, 1)).ToList();
        Assert.InRange(left.Count, 1, rows.Count - 1);
        Assert.Equal(left, await bench.Rows(status.PreviewId, AnyRow));
    }

    private static string Limit(string min, string max, string more = "") => $$"""
        {"overrides":[{"id":"cold-fill","what":"cold fill","min":{{min}},"max":{{max}},"unit":"bar","resolution":0.1,"origin":"deployer","source":"house rule","verified":true,"who":"W","why":"made up for a test"{{more}}}]}
        """;

    /// <summary>A store with an invented archive.</summary>
    private sealed class PreviewBench : IDisposable
    {
        private readonly EvaluationStore _evaluations;
        private int _stored;

        public PreviewBench(string kind)
        {
            Audits = new AuditBench(kind);
            _evaluations = new EvaluationStore(Audits.Store, Scratch.Rules.Law);
            Previews = new PreviewStore(Audits.Store, Audits.Audits, Audits.Clock);
        }

        public AuditBench Audits { get; }

        public PreviewStore Previews { get; }

        public List<ServiceRecord> Records { get; } = [];

        public List<string> Ids { get; } = [];

        public IEnumerable<string> IdsWhere(Func<decimal, bool> coldFill) =>
            Ids.Where((_, index) => coldFill(Records[index].Water!.ColdFillBar!.Value));

        public async Task Fill(int evaluations, Action<JsonNode>? change = null, Visits.Lookup? lookup = null)
        {
            for (var number = 0; number < evaluations; number++)
            {
                var day = new DateOnly(2026, 7, 1).AddDays(number * 80 / evaluations);
                var json = JsonNode.Parse(Encoding.UTF8.GetString(Scratch.Posted)
                    .Replace("2026-09-14", $"{day:yyyy-MM-dd}", StringComparison.Ordinal).Replace("2027-09-14", $"{day.AddYears(1):yyyy-MM-dd}", StringComparison.Ordinal))!;
                json["recordId"] = $"A-{number:0000}";
                json["engineer"]!["licenceNumber"] = $"70000{number % 3}";
                json["water"]!["coldFillBar"] = ColdFills[number % ColdFills.Length];
                change?.Invoke(json);
                var record = RecordReader.Read(Encoding.UTF8.GetBytes(json.ToJsonString())).Record!;
                Records.Add(record);
                Ids.Add(await Store(record, Scratch.A, json: json, lookup: lookup));
            }
        }

        public async Task<string> Store(ServiceRecord record, Tenant tenant, string? supersedes = null, JsonNode? json = null, Visits.Lookup? lookup = null)
        {
            var moment = new DateTimeOffset(2026, 9, 29, 0, 0, 0, TimeSpan.Zero).AddSeconds(_stored++);
            var evaluation = Scratch.Rules.Evaluate(record, lookup) with { EvaluationId = Guid.CreateVersion7(moment).ToString(), EvaluatedAt = moment };
            var posted = json is null ? JsonSerializer.SerializeToUtf8Bytes(JsonNode.Parse(Scratch.Posted)) : Encoding.UTF8.GetBytes(json.ToJsonString());
            Assert.True(await _evaluations.SaveAsync(tenant, supersedes is null ? record : Superseding(record, supersedes), posted, evaluation, Include.Passes, default));
            return evaluation.EvaluationId!;
        }

        public async Task<string> Accept(string candidate)
        {
            var accepted = await new PreviewIntake(Audits.Store, Audits.Clock).AcceptAsync(Scratch.A, JsonSerializer.Deserialize(candidate, PreviewJson.Wire.Candidate)!, default);
            return accepted.PreviewId;
        }

        public async Task<(PreviewStatus Status, IReadOnlyList<ChangeRow> Rows)> Preview(string candidate)
        {
            var id = await Accept(candidate);
            await Audits.WorkOff(Audits.Worker, Audits.AnotherWorker);
            return (await Find(id), await Rows(id, AnyRow));
        }

        public async Task<PreviewStatus> Find(string id) => (await Previews.FindAsync(Scratch.A, id, default))!;

        public async Task<IReadOnlyList<ChangeRow>> Rows(string id, ChangeQuery query) => await Previews.AllAsync(Scratch.A, id, query, default).ToListAsync();

        public void Dispose() => Audits.Dispose();

        private static ServiceRecord Superseding(ServiceRecord record, string supersedes) => new()
        {
            RecordId = record.RecordId,
            Supersedes = supersedes,
            JobType = record.JobType,
            Jurisdiction = record.Jurisdiction,
            FinishedAt = Timestamp.Parse("2026-12-01T10:25:00+00:00"),
            Appliance = record.Appliance,
        };
    }
}
