using System.Net;

namespace Api.Tests;

/// <summary>One Idempotency-Key sent to two instances, each a process of its own, on one store.</summary>
[Collection("Heavy processes")]
public sealed class TwoInstancesTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>, IDisposable
{
    private const int Tries = 20;

    private readonly List<RunningService> _running = [];
    private StoreOfKind? _store;

    public void Dispose()
    {
        _running.ForEach(running => running.Dispose());
        _store?.Dispose();
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task One_key_at_two_instances_makes_one_evaluation(string kind)
    {
        using var first = await Start(kind, seconds: 30);
        using var second = await Start(kind, seconds: 30);
        for (var number = 0; number < Tries; number++)
        {
            // Every second time the other instance is sent another body.
            var answers = await Task.WhenAll(Post(first, $"once-{number}", Record(number)), Post(second, $"once-{number}", Record(number, isOther: number % 2 == 1)));

            Assert.All(answers, answer => Assert.Contains(answer.StatusCode, new[] { HttpStatusCode.Created, HttpStatusCode.Conflict, HttpStatusCode.UnprocessableEntity }));
            Assert.Single(answers.Where(answer => answer.StatusCode == HttpStatusCode.Created).Select(answer => answer.Headers.Location).Distinct());
        }

        Assert.Equal(Tries, await Count("evaluations"));
        Assert.Equal(Tries, await Count("idempotency_keys"));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task One_key_at_two_instances_makes_one_audit(string kind)
    {
        using var first = await Start(kind, seconds: 30);
        using var second = await Start(kind, seconds: 30);
        for (var number = 0; number < Tries; number++)
        {
            var answers = await Task.WhenAll(first.PostAudit(Record(number), later: true, key: $"once-{number}"), second.PostAudit(Record(number, isOther: number % 2 == 1), later: true, key: $"once-{number}"));

            Assert.All(answers, answer => Assert.Contains(answer.StatusCode, new[] { HttpStatusCode.Accepted, HttpStatusCode.Conflict, HttpStatusCode.UnprocessableEntity }));
            Assert.Single(answers.Where(answer => answer.StatusCode == HttpStatusCode.Accepted).Select(answer => answer.Headers.Location).Distinct());
        }

        Assert.Equal(Tries, await Count("audits"));
    }

    /// <summary>Keys that a killed instance held are free again when their time is over, and what it had stored is answered again.</summary>
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task The_keys_of_a_killed_instance_are_free_again_and_no_record_is_stored_twice(string kind)
    {
        const int posters = 50;
        using var first = await Start(kind, seconds: 10);
        using var second = await Start(kind, seconds: 10);
        var (keys, answered) = (0, 0);

        // Each posts until it is cut off, so that whenever the kill comes it finds requests at work.
        var posting = Enumerable.Range(0, posters).Select(async _ =>
        {
            try
            {
                for (; ; Interlocked.Increment(ref answered))
                {
                    var number = Interlocked.Increment(ref keys);
                    Assert.Equal(HttpStatusCode.Created, (await Post(first, $"killed-{number}", Record(number))).StatusCode);
                }
            }
            catch (HttpRequestException)
            {
                // Killed meanwhile.
            }
        }).ToList();
        while (Volatile.Read(ref answered) == 0 && !posting.Exists(poster => poster.IsFaulted))
            await Task.Delay(1);
        _running[0].Kill();
        await Task.WhenAll(posting);
        Assert.Equal(posters, keys - answered);
        Assert.True(await Count("idempotency_keys") > await Count("evaluations"), "The killed instance held no key.");

        await Parallel.ForEachAsync(Enumerable.Range(1, keys), new ParallelOptions { MaxDegreeOfParallelism = 8 }, async (number, _) =>
        {
            HttpResponseMessage answer;
            for (var patience = 300; (answer = await Post(second, $"killed-{number}", Record(number))).StatusCode == HttpStatusCode.Conflict && patience > 0; patience--)
                await Task.Delay(100, CancellationToken.None);
            Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        });

        Assert.Equal(keys, await Count("evaluations"));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_refused_record_leaves_no_key_behind(string kind)
    {
        using var client = await Start(kind, seconds: 30);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Post(client, "refused", "{}"u8.ToArray())).StatusCode);

        Assert.Equal(0, await Count("idempotency_keys"));
    }

    private byte[] Record(int number, bool isOther = false) => service.ExampleRecord.With(record => record["recordId"] = $"TWO-{number}{(isOther ? "-other" : "")}");

    private static Task<HttpResponseMessage> Post(HttpClient client, string key, byte[] record) =>
        client.SendAsync(new HttpRequestMessage(HttpMethod.Post, "/v1/evaluations") { Content = Calls.Json(record), Headers = { { "Idempotency-Key", key } } });

    private async Task<HttpClient> Start(string kind, int seconds)
    {
        _store ??= new StoreOfKind(kind);
        _running.Add(new RunningService("--urls=http://127.0.0.1:0", $"--Requests:Seconds={seconds}", "--Limits:AuditsAtOnce=100", "--Store:Create=true", _store.Setting));
        return await _running[^1].Listening();
    }

    private Task<long> Count(string table) => _store!.Count(table);
}
