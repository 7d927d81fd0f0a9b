using System.Net;

namespace Api.Tests;

/// <summary>One Idempotency-Key sent to two instances, each a process of its own, on one store.</summary>
[Collection("Heavy processes")]
public sealed class TwoInstancesTests(ServiceInProcess service, TwoInstancesTests.Pairs pairs) : IClassFixture<ServiceInProcess>, IClassFixture<TwoInstancesTests.Pairs>
{
    private const int Tries = 20;

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task One_key_at_two_instances_makes_one_evaluation(string kind)
    {
        var pair = await pairs.Of(kind);
        for (var number = 0; number < Tries; number++)
        {
            // Every second time the other instance is sent another body.
            var answers = await Task.WhenAll(Post(pair.First, $"once-{number}", Record(number)), Post(pair.Second, $"once-{number}", Record(number, isOther: number % 2 == 1)));

            Assert.All(answers, answer => Assert.Contains(answer.StatusCode, new[] { HttpStatusCode.Created, HttpStatusCode.Conflict, HttpStatusCode.UnprocessableEntity }));
            Assert.Single(answers.Where(answer => answer.StatusCode == HttpStatusCode.Created).Select(answer => answer.Headers.Location).Distinct());
        }

        Assert.Equal(Tries, await pair.Store.Count("evaluations"));
        Assert.Equal(Tries, await pair.Store.Count("idempotency_keys"));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task One_key_at_two_instances_makes_one_audit(string kind)
    {
        var pair = await pairs.Of(kind);
        for (var number = 0; number < Tries; number++)
        {
            var answers = await Task.WhenAll(
                pair.First.PostAudit(Record(number), later: true, key: $"once-{number}"), pair.Second.PostAudit(Record(number, isOther: number % 2 == 1), later: true, key: $"once-{number}"));

            Assert.All(answers, answer => Assert.Contains(answer.StatusCode, new[] { HttpStatusCode.Accepted, HttpStatusCode.Conflict, HttpStatusCode.UnprocessableEntity }));
            Assert.Single(answers.Where(answer => answer.StatusCode == HttpStatusCode.Accepted).Select(answer => answer.Headers.Location).Distinct());
        }

        Assert.Equal(Tries, await pair.Store.Count("audits"));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_refused_record_leaves_no_key_behind(string kind)
    {
        var pair = await pairs.Of(kind);
        var before = await pair.Store.Count("idempotency_keys");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Post(pair.First, "refused", "{}"u8.ToArray())).StatusCode);

        Assert.Equal(before, await pair.Store.Count("idempotency_keys"));
    }

    /// <summary>Keys that a killed instance held are free again when their time is over, and what it had stored is answered again.</summary>
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task The_keys_of_a_killed_instance_are_free_again_and_no_record_is_stored_twice(string kind)
    {
        const int posters = 50;
        using var pair = await Pair.Start(kind, seconds: 10);
        var (keys, answered) = (0, 0);

        // Each posts until it is cut off, so that whenever the kill comes it finds requests at work.
        var posting = Enumerable.Range(0, posters).Select(async _ =>
        {
            try
            {
                for (; ; Interlocked.Increment(ref answered))
                {
                    var number = Interlocked.Increment(ref keys);
                    Assert.Equal(HttpStatusCode.Created, (await Post(pair.First, $"killed-{number}", Record(number))).StatusCode);
                }
            }
            catch (HttpRequestException)
            {
                // Killed meanwhile.
            }
        }).ToList();
        while (Volatile.Read(ref answered) == 0 && !posting.Exists(poster => poster.IsFaulted))
            await Task.Delay(1);
        pair.KillFirst();
        await Task.WhenAll(posting);
        Assert.Equal(posters, keys - answered);
        Assert.True(await pair.Store.Count("idempotency_keys") > await pair.Store.Count("evaluations"), "The killed instance held no key.");

        await Parallel.ForEachAsync(Enumerable.Range(1, keys), new ParallelOptions { MaxDegreeOfParallelism = 8 }, async (number, _) =>
        {
            HttpResponseMessage answer;
            for (var patience = 300; (answer = await Post(pair.Second, $"killed-{number}", Record(number))).StatusCode == HttpStatusCode.Conflict && patience > 0; patience--)
                await Task.Delay(100, CancellationToken.None);
            Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        });

        Assert.Equal(keys, await pair.Store.Count("evaluations"));
    }

    private byte[] Record(int number, bool isOther = false) => service.ExampleRecord.With(record => record["recordId"] = $"TWO-{number}{(isOther ? "-other" : "")}");

    private static Task<HttpResponseMessage> Post(HttpClient client, string key, byte[] record) =>
        client.SendAsync(new HttpRequestMessage(HttpMethod.Post, "/v1/evaluations") { Content = Calls.Json(record), Headers = { { "Idempotency-Key", key } } });

    /// <summary>Two instances on one store.</summary>
    internal sealed class Pair : IDisposable
    {
        private readonly List<RunningService> _running = [];

        private Pair(StoreOfKind store) => Store = store;

        public StoreOfKind Store { get; }

        public HttpClient First { get; private set; } = new();

        public HttpClient Second { get; private set; } = new();

        /// <param name="kind">sqlite or postgresql.</param>
        /// <param name="seconds">How long a request may take, and so how long a key is its holder's.</param>
        public static async Task<Pair> Start(string kind, int seconds)
        {
            var pair = new Pair(new StoreOfKind(kind));
            pair.First = await pair.StartOne(seconds);
            pair.Second = await pair.StartOne(seconds);
            return pair;
        }

        public void KillFirst() => _running[0].Kill();

        public void Dispose()
        {
            First.Dispose();
            Second.Dispose();
            _running.ForEach(running => running.Dispose());
            Store.Dispose();
        }

        private Task<HttpClient> StartOne(int seconds)
        {
            _running.Add(new RunningService("--urls=http://127.0.0.1:0", $"--Requests:Seconds={seconds}", "--Limits:AuditsAtOnce=100", "--Store:Create=true", Store.Setting));
            return _running[^1].Listening();
        }
    }

    /// <summary>A pair of each kind, for the tests that leave it as it is.</summary>
    public sealed class Pairs : IDisposable
    {
        private readonly Dictionary<string, Task<Pair>> _pairs = new(StringComparer.Ordinal);

        public void Dispose()
        {
            foreach (var pair in _pairs.Values.Where(pair => pair.IsCompletedSuccessfully))
                pair.Result.Dispose();
        }

        internal Task<Pair> Of(string kind) => _pairs.TryGetValue(kind, out var pair) ? pair : _pairs[kind] = Pair.Start(kind, seconds: 30);
    }
}
