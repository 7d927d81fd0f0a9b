using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using Api.Tests.Contract;
using Api.Tests.Keys;
using Microsoft.Extensions.DependencyInjection;
using Storage;
using Storage.Keys;

namespace Api.Tests.Operations;

/// <summary>Requests that take much work leave the service to the others. Runs alone: it measures how long requests take.</summary>
[Collection("Alone")]
public sealed class DearWorkTests
{
    private const int Dear = 20;
    private const int Turns = 4;
    private const int Evaluated = 10;
    private const int Attempts = 3;

    /// <summary>A record that waited for the work of others took fifteen to thirty times as long.</summary>
    private const double MostSlower = 7;

    [Fact]
    public async Task One_tenants_dear_requests_wait_for_each_other_and_too_many_are_refused()
    {
        await using var service = new ServiceInProcess();
        await using var small = service.WithWebHostBuilder(builder => builder
            .UseSetting("Limits:DearAtOnce", "2").UseSetting("Limits:AuditsAtOnce", "100").UseSetting("Audits:Workers", "0"));
        var (one, other) = (await KeyOf(small.Services, "a"), await KeyOf(small.Services, "b"));
        await ServiceWithKeys.Seen();
        var records = AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 200));

        var mine = Enumerable.Range(0, Dear).Select(_ => With(small.CreateDefaultClient(new ContractHandler()), one).PostAudit(records)).ToList();
        var others = await With(small.CreateDefaultClient(new ContractHandler()), other).PostAudit(records);
        var answers = await Task.WhenAll(mine);

        Assert.Equal(HttpStatusCode.OK, others.StatusCode);
        Assert.Equal(201, (await others.ReadLines()).Length);
        var refused = answers.Where(answer => answer.StatusCode != HttpStatusCode.OK).ToList();
        Assert.InRange(refused.Count, 1, Dear - 9);
        foreach (var answer in refused)
        {
            Assert.Equal("/problems/too-much-at-once", (await answer.Read(HttpStatusCode.TooManyRequests))["type"].Text());
            Assert.NotNull(answer.Headers.RetryAfter);
        }
    }

    [Fact]
    public async Task Of_more_tenants_than_may_wait_the_last_are_told_to_come_back()
    {
        await using var service = new ServiceInProcess();
        await using var small = service.WithWebHostBuilder(builder => builder.UseSetting("Limits:DearAtOnce", "1").UseSetting("Audits:Workers", "0"));
        var keys = new List<string>();
        for (var tenant = 0; tenant < 45; tenant++)
            keys.Add(await KeyOf(small.Services, $"t{tenant}"));
        await ServiceWithKeys.Seen();
        var records = AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 60));

        var answers = await Task.WhenAll(keys.Select(key => With(small.CreateDefaultClient(new ContractHandler()), key).PostAudit(records)));

        var refused = answers.Where(answer => answer.StatusCode != HttpStatusCode.OK).ToList();
        Assert.InRange(refused.Count, 1, 12);
        foreach (var answer in refused)
        {
            Assert.Equal("/problems/too-busy", (await answer.Read(HttpStatusCode.ServiceUnavailable))["type"].Text());
            Assert.NotNull(answer.Headers.RetryAfter);
        }
    }

    /// <summary>Audits answered at once, looks at all that is stored, and samples of the largest sizes, all by one tenant.</summary>
    [Fact]
    public async Task While_one_tenant_asks_for_much_a_record_of_another_is_judged_as_quickly()
    {
        var folder = Directory.CreateTempSubdirectory("dear-");
        try
        {
            var store = Path.Combine(folder.FullName, "c.db");
            string one, other;
            using (var opened = Database.Open(store, StoreOpening.OrMake))
                (one, other) = (await Add(opened, "a"), await Add(opened, "b"));
            using var running = new RunningService("--urls=http://127.0.0.1:0", $"--Store:Path={store}", "--Limits:AuditsAtOnce=100");
            using var quick = With(await running.Listening(), one);
            using var dear = With(new HttpClient { BaseAddress = quick.BaseAddress }, other);
            var example = await File.ReadAllBytesAsync(Path.Combine(Repository.Root, "rules", "example-record.json"));
            var month = AuditCalls.Lines(AuditCalls.Month(example, 300));
            await dear.Completed((await dear.PostAudit(month, later: true)).Headers.Location!);
            await Evaluations(quick, example, 40);

            // In turns, so that what else the machine does slows both alike.
            var seen = new List<string>();
            for (var attempt = 0; attempt < Attempts; attempt++)
            {
                var (alone, beside) = (new List<TimeSpan>(), new List<TimeSpan>());
                for (var turn = 0; turn < Turns; turn++)
                {
                    alone.AddRange(await Evaluations(quick, example, Evaluated));
                    using var stop = new CancellationTokenSource();
                    var asked = Enumerable.Range(0, Dear).Select(number => Task.Run(() => AskForMuch(dear, number, month, stop.Token))).ToList();
                    await Task.Delay(500);
                    beside.AddRange(await Evaluations(quick, example, Evaluated));
                    await stop.CancelAsync();
                    await Task.WhenAll(asked);
                }

                var ratio = Median(beside) / Median(alone);
                seen.Add(string.Create(CultureInfo.InvariantCulture, $"{Median(alone).TotalMilliseconds:F1} ms alone, {Median(beside).TotalMilliseconds:F1} ms beside"));
                if (ratio < MostSlower)
                    return;
            }

            Assert.Fail(string.Join("; ", seen));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>An answer is never a part that looks like the whole: one that is too long is refused.</summary>
    [Fact]
    public async Task An_answer_that_is_too_long_is_refused_as_a_whole()
    {
        using var service = new ServiceInProcess();
        var records = AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 1200));

        var all = await service.CreateClient().PostAudit(records, query: "?include=all");
        // Without the document beside it, to which 1,200 lines say no more than the few of other tests.
        var some = await service.CreateDefaultClient().PostAudit(records);

        Assert.Equal("/problems/audit-too-long", (await all.Read(HttpStatusCode.RequestEntityTooLarge))["type"].Text());
        Assert.Equal(1201, (await some.ReadLines()).Length);
    }

    /// <summary>Bodies whose work takes longer than their sender waits, each within the bounds of what is read and judged at once.</summary>
    [Theory]
    [InlineData("a header of many names")]
    [InlineData("rows of a list with gaps")]
    [InlineData("a month of records")]
    public async Task For_who_has_left_nothing_is_worked_on(string what)
    {
        var (body, type) = what switch
        {
            "a header of many names" => (AuditCalls.Utf8(string.Join(',', Enumerable.Range(0, 140_000).Select(n => $"c{n}")) + "\n1\n"), "text/csv"),
            "rows of a list with gaps" => (AuditCalls.Utf8("defects.199\n" + string.Concat(Enumerable.Repeat("1\n", 5000))), "text/csv"),
            _ => (AuditCalls.Lines(AuditCalls.Month(await File.ReadAllBytesAsync(Path.Combine(Repository.Root, "rules", "example-record.json")), 2500)), AuditCalls.Ndjson),
        };
        using var running = new RunningService("--urls=http://127.0.0.1:0", "--Audits:Workers=0");
        using var client = await running.Listening();
        using (var patience = new CancellationTokenSource(TimeSpan.FromSeconds(1.5)))
        {
            try
            {
                using var content = new ByteArrayContent(body) { Headers = { ContentType = new MediaTypeHeaderValue(type) } };
                using var answer = await client.PostAsync(AuditCalls.AtOnce, content, patience.Token);
                Assert.NotEqual(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
            }
            catch (OperationCanceledException)
            {
                // Gone before the answer, as is meant.
            }
        }

        var seen = new List<double>();
        do
        {
            Assert.True(seen.Count < 20, $"Milliseconds of work in each second since the sender has left: {string.Join(", ", seen)}");
            var before = running.ProcessorTime;
            await Task.Delay(1000);
            seen.Add((running.ProcessorTime - before).TotalMilliseconds);
        }
        while (seen[^1] >= 50);
    }

    private static Task<string> KeyOf(IServiceProvider services, string tenant) =>
        services.GetRequiredService<KeyStore>().AddAsync(new Tenant(tenant), [KeyScope.Admin], "", ServiceInProcess.Now, expiresAt: null, CancellationToken.None);

    private static Task<string> Add(Database database, string tenant) =>
        new KeyStore(database).AddAsync(new Tenant(tenant), [KeyScope.Admin], "", ServiceInProcess.Now, expiresAt: null, CancellationToken.None);

    private static HttpClient With(HttpClient client, string key)
    {
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", key);
        return client;
    }

    private static async Task AskForMuch(HttpClient client, int number, byte[] month, CancellationToken stop)
    {
        for (; !stop.IsCancellationRequested; await Task.Delay(50, CancellationToken.None))
        {
            using var answer = await ((number % 4) switch
            {
                0 => client.PostAudit(month),
                1 => client.PostAsync("/v1/sampling", Calls.Json("""{"population":1000000,"tolerableCount":2000,"confidencePercent":99,"allowedFaults":10}"""), CancellationToken.None),
                _ => client.GetAsync("/v1/worth-a-look?from=2026-01-01&to=2026-12-31", CancellationToken.None),
            });
            Assert.True(answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.TooManyRequests or HttpStatusCode.GatewayTimeout, $"{answer.StatusCode}");
        }
    }

    private static TimeSpan Median(List<TimeSpan> times) => times.Order().ElementAt(times.Count / 2);

    /// <summary>How long single records take, one after the other.</summary>
    private static async Task<List<TimeSpan>> Evaluations(HttpClient client, byte[] record, int times)
    {
        var all = new List<TimeSpan>();
        for (var i = 0; i < times; i++)
        {
            var start = Stopwatch.GetTimestamp();
            await (await client.PostRecord(record)).Read(HttpStatusCode.Created);
            all.Add(Stopwatch.GetElapsedTime(start));
        }

        return all;
    }
}
