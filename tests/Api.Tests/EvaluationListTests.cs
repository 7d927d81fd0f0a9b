using System.Net;
using System.Text.Json.Nodes;

namespace Api.Tests;

/// <summary>Which evaluations there are, and what a reader sees who follows them.</summary>
public sealed class EvaluationListTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task Evaluations_are_found_by_what_a_record_says_part_by_part()
    {
        for (var number = 0; number < 5; number++)
            await Post($"list-{number}", record => record["premises"]!["reference"] = "P-list");
        var unsafeOne = await Post("list-unsafe", record =>
        {
            record["premises"]!["reference"] = "P-list";
            record["combustion"]!["readings"]![0]!["coPpm"] = 2000;
        });

        var first = await _client.GetJson("/v1/evaluations?premises=P-list&limit=4");
        Assert.Equal(["list-unsafe", "list-4", "list-3", "list-2"], first["items"].Texts("recordId"));
        Assert.Equal((6, true), (first["total"].Number(), first["isMore"]!.GetValue<bool>()));
        var second = await _client.GetJson($"/v1/evaluations?premises=P-list&limit=4&next={first["next"]}");
        Assert.Equal(["list-1", "list-0"], second["items"].Texts("recordId"));
        Assert.Null(second["next"]);

        var found = Assert.Single((await _client.GetJson("/v1/evaluations?premises=P-list&outcome=unsafe&closing=held"))["items"]!.AsArray())!;
        Assert.Equal((unsafeOne, "unsafe", "held", "annualService"), (found["evaluationId"].Text(), found["outcome"].Text(), found["closing"].Text(), found["jobType"].Text()));
        Assert.Equal("unsafe", (await _client.GetJson($"/v1/evaluations/{found["evaluationId"].Text()}"))["outcome"].Text());
        Assert.Equal(["list-3"], (await _client.GetJson("/v1/evaluations?recordId=list-3&from=2026-09-14&to=2026-09-14"))["items"].Texts("recordId"));
    }

    [Fact]
    public async Task Who_follows_the_changes_sees_each_once_and_what_takes_its_place()
    {
        var from = (await _client.GetJson("/v1/evaluations?changedSince=0&recordId=nobody's"))["changedUpTo"].Number();
        var first = await Post("follow", _ => { });
        var seen = await _client.GetJson($"/v1/evaluations?changedSince={from}&recordId=follow");
        Assert.Equal([first], seen["items"].Texts("evaluationId"));

        var second = await Post("follow", record => record["water"]!["coldFillBar"] = 1.2m);
        var next = await _client.GetJson($"/v1/evaluations?changedSince={seen["changedUpTo"]}&recordId=follow");
        Assert.Equal([(second, false, null), (first, true, second)], next["items"]!.AsArray().Select(one => (one!["evaluationId"].Text(), one["superseded"]!.GetValue<bool>(), one["supersededBy"]?.GetValue<string>())));
        Assert.Empty((await _client.GetJson($"/v1/evaluations?changedSince={next["changedUpTo"]}&recordId=follow"))["items"]!.AsArray());
    }

    [Theory]
    [InlineData("changedSince=999999999", "changedSince")]
    [InlineData("changedSince=-1", "changedSince")]
    [InlineData("changedSince=0&next=5", "next")]
    [InlineData("from=2026-09-15&to=2026-09-14", "to")]
    [InlineData("outcome=bad", "outcome")]
    [InlineData("engineer=", "engineer")]
    public async Task A_question_that_has_no_answer_is_refused(string query, string parameter)
    {
        var problem = await (await _client.GetAsync($"/v1/evaluations?{query}")).Read(HttpStatusCode.BadRequest);
        Assert.Equal([parameter], problem["errors"].Texts("parameter"));
    }

    private async Task<string> Post(string recordId, Action<JsonNode> change) => (await (await _client.PostRecord(service.ExampleRecord.With(record =>
    {
        record["recordId"] = recordId;
        change(record);
    }))).Read(HttpStatusCode.Created))["evaluationId"].Text();
}

/// <summary>The list while three instances write and are killed.</summary>
[Collection("Heavy processes")]
public sealed class FollowedAmongKillsTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private const int Writers = 3;
    private const int RecordsEach = 60;
    private const int SentTwice = 3;

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Who_follows_misses_nothing_and_sees_nothing_twice(string kind)
    {
        using var store = new StoreOfKind(kind);
        using var reading = Start(store);
        using var reader = await reading.Listening();
        using var done = new CancellationTokenSource();
        var following = Task.Run(() => Follow(reader, done.Token));

        var written = await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(() => Write(store, writer))));
        await done.CancelAsync();
        var (seen, polls) = await following;

        // Numbers only grow, so none comes twice.
        Assert.Equal(seen.Select(one => one.Change).Order(), seen.Select(one => one.Change));
        Assert.Equal(seen.Count, seen.Select(one => one.Change).Distinct().Count());

        // What it saw last of each is what a list says in the end, and everything is there that a writer was told of.
        var last = seen.GroupBy(one => one.EvaluationId).Select(same => same.Last()).OrderByDescending(one => one.Change).ToList();
        Assert.Equal(await All(reader), last);
        Assert.Empty(written.SelectMany(ids => ids).Except(last.Select(one => one.EvaluationId)));
        Assert.Equal(Writers * RecordsEach, last.Count(one => !one.IsSuperseded));
        Assert.Equal(Writers * RecordsEach / SentTwice, last.Count(one => one.IsSuperseded));
        Assert.True(polls > 20, $"Only {polls} polls saw something new: this proves little.");
    }

    /// <summary>Posts, every third record twice; is killed a few times, and posts what was not answered again under the same key.</summary>
    private async Task<List<string>> Write(StoreOfKind store, int writer)
    {
        var told = new List<string>();
        var instance = Start(store);
        var client = await instance.Listening();
        for (var number = 0; number < RecordsEach; number++)
        {
            for (var time = 0; time < (number % SentTwice == 0 ? 2 : 1); time++)
            {
                // Killed while the request is under way.
                if (number % 30 == 10 + writer * 5 && time == 0)
                {
                    var lost = Post(client, writer, number, time);
                    await Task.Delay(number % 7);
                    instance.Kill();
                    await Task.WhenAny(lost);
                    client.Dispose();
                    instance.Dispose();
                    instance = Start(store);
                    client = await instance.Listening();
                }

                told.Add(await Answered(client, writer, number, time));
            }
        }

        client.Dispose();
        instance.Dispose();
        return told;
    }

    private async Task<string> Answered(HttpClient client, int writer, int number, int time)
    {
        // The key of a killed instance is held for as long as a request may take.
        for (var patience = 200; ; patience--)
        {
            using var answer = await Post(client, writer, number, time);
            if (answer.StatusCode != HttpStatusCode.Conflict || patience == 0)
                return (await answer.Read(HttpStatusCode.Created))["evaluationId"].Text();
            await Task.Delay(100);
        }
    }

    private Task<HttpResponseMessage> Post(HttpClient client, int writer, int number, int time)
    {
        var record = service.ExampleRecord.With(record =>
        {
            record["recordId"] = $"W{writer}-{number}";
            record["appliance"]!["serialNumber"] = $"QB-W{writer}-{number}";
            record["water"]!["coldFillBar"] = time == 0 ? 1.1m : 1.2m;
        });
        return client.SendAsync(new HttpRequestMessage(HttpMethod.Post, "/v1/evaluations") { Content = Calls.Json(record), Headers = { { "Idempotency-Key", $"{writer}-{number}-{time}" } } });
    }

    private static async Task<(List<Seen> Seen, int Polls)> Follow(HttpClient client, CancellationToken done)
    {
        var seen = new List<Seen>();
        var upTo = "0";
        for (var polls = 0; ;)
        {
            var isLast = done.IsCancellationRequested;
            var answer = await client.GetJson($"/v1/evaluations?changedSince={upTo}&limit=7");
            upTo = answer["changedUpTo"]!.ToJsonString();
            seen.AddRange(Items(answer));
            polls += answer["items"]!.AsArray().Count > 0 ? 1 : 0;
            if (isLast && !answer["isMore"]!.GetValue<bool>())
                return (seen, polls);
        }
    }

    private static async Task<List<Seen>> All(HttpClient client)
    {
        var all = new List<Seen>();
        for (string? next = ""; next is not null;)
        {
            var answer = await client.GetJson($"/v1/evaluations?limit=100{next}");
            all.AddRange(Items(answer));
            next = answer["next"] is { } number ? $"&next={number}" : null;
        }

        return all;
    }

    private static IEnumerable<Seen> Items(JsonNode answer) =>
        answer["items"]!.AsArray().Select(one => new Seen(one!["change"]!.GetValue<long>(), one["evaluationId"].Text(), one["superseded"]!.GetValue<bool>()));

    private static RunningService Start(StoreOfKind store) => new("--urls=http://127.0.0.1:0", "--Requests:Seconds=3", "--Store:Create=true", store.Setting);

    private sealed record Seen(long Change, string EvaluationId, bool IsSuperseded);
}
