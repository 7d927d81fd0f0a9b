using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text;

namespace Api.Tests.Operations;

/// <summary>
/// What eight times as long a request costs. Measured is the processor time of a service of its own, which other work on the machine
/// does not change: linear is eight times, quadratic sixty-four.
/// </summary>
[Collection("Heavy processes")]
public sealed class GrowthTests(GrowthTests.Measured service) : IClassFixture<GrowthTests.Measured>
{
    private const int Times = 8;
    private const double MostGrowth = 2.5 * Times;
    private const int Attempts = 3;

    /// <summary>What costs less than this stops nobody, and is too short to be measured.</summary>
    private static readonly TimeSpan Cheap = TimeSpan.FromMilliseconds(10);

    private static readonly string Minimal = """{"recordId":"r","jobType":"annualService","jurisdiction":"GB-ENG","finishedAt":"2026-09-14T10:25:00Z","appliance":{"fuel":"naturalGas"}""";

    /// <summary>
    /// The larger of the two sizes, near the bound of what is read, a request of each size, and how both are answered: another answer,
    /// such as that the request is too long, would mean that nothing was parsed.
    /// </summary>
    private static readonly Dictionary<string, (int Large, HttpStatusCode Status, Func<int, HttpRequestMessage> Of)> Requests = new(StringComparer.Ordinal)
    {
        ["CSV header, more names than are read"] = (100_000, HttpStatusCode.BadRequest, size => Csv(string.Join(',', Numbers(size).Select(n => $"c{n}")) + "\n1\n")),
        ["CSV header, names"] = (2000, HttpStatusCode.OK, size => Csv(string.Join(',', Numbers(size).Select(n => $"c{n}")) + "\n" + new string(',', size - 1) + "\n")),
        ["CSV header, items of a list"] = (2000, HttpStatusCode.OK, size => Csv(string.Join(',', Numbers(size).Select(n => $"defects.{n}")) + "\n" + string.Join(',', Numbers(size)) + "\n")),
        ["CSV header, one deep name"] = (400_000, HttpStatusCode.BadRequest, size => Csv(string.Join('.', Numbers(size).Select(_ => "a")) + "\n1\n")),
        ["CSV rows, short"] = (4800, HttpStatusCode.OK, size => Csv("recordId,jobType\n" + Repeat("1\n", size))),
        ["CSV rows, of lists with gaps"] = (2400, HttpStatusCode.OK, size => Csv("defects.199\n" + Repeat("1\n", size))),
        ["CSV row, one long cell"] = (900_000, HttpStatusCode.OK, size => Csv("recordId\n" + new string('x', size) + "\n")),
        ["CSV row, quotes"] = (400_000, HttpStatusCode.OK, size => Csv("recordId\n\"" + Repeat("\"\"", size) + "\"\n")),
        ["NDJSON, lines"] = (4800, HttpStatusCode.OK, size => Lines(Repeat("{}\n", size))),
        ["NDJSON, blank lines"] = (4_000_000, HttpStatusCode.OK, size => Lines("{}" + new string('\n', size))),
        ["NDJSON, one line beyond its bound"] = (12_000_000, HttpStatusCode.OK, size => Lines(new string('x', size))),
        ["JSON array, items"] = (4800, HttpStatusCode.OK, size => Array("[" + string.Join(',', Numbers(size).Select(_ => "{}")) + "]")),
        ["JSON array, one item"] = (1_000_000, HttpStatusCode.OK, size => Array("[\"" + new string('x', size) + "\"]")),
        ["JSON array, brackets"] = (400_000, HttpStatusCode.OK, size => Array(new string('[', size) + new string(']', size))),
        ["record, deep"] = (400_000, HttpStatusCode.BadRequest, size => Record(new string('[', size) + new string(']', size))),
        ["record, unknown members"] = (60_000, HttpStatusCode.UnprocessableEntity, size => Record(Minimal + string.Concat(Numbers(size).Select(n => $",\"m{n}\":1")) + "}")),
        ["record, one member over and over"] = (100_000, HttpStatusCode.BadRequest, size => Record(Minimal + Repeat(",\"jobType\":1", size / 2) + "}")),
        ["record, long names"] = (1600, HttpStatusCode.UnprocessableEntity, size => Record(Minimal + string.Concat(Numbers(400).Select(n => $",\"{n}{new string('m', size)}\":1")) + "}")),
        ["record, faulty items"] = (40_000, HttpStatusCode.UnprocessableEntity, size => Record(Minimal + ",\"defects\":[" + string.Join(',', Numbers(size).Select(_ => "{\"class\":1}")) + "]}")),
        ["record, faulty items of items"] = (160, HttpStatusCode.UnprocessableEntity, size => Record(Minimal + ",\"combustion\":{\"readings\":[" + string.Join(',', Numbers(100).Select(_ => "{" + string.Join(',', Numbers(size).Select(n => $"\"m{n}\":1")) + "}")) + "]}}")),
        ["record, a long text"] = (1_000_000, HttpStatusCode.UnprocessableEntity, size => Record(Minimal + ",\"premises\":{\"reference\":\"" + new string('x', size) + "\"}}")),
        ["record, a text of escapes"] = (160_000, HttpStatusCode.UnprocessableEntity, size => Record(Minimal + ",\"premises\":{\"reference\":\"" + Repeat("\\u0061", size) + "\"}}")),
        ["record, digits of a number"] = (1_000_000, HttpStatusCode.UnprocessableEntity, size => Record(Minimal + ",\"burner\":{\"electrodeGapMm\":1." + new string('1', size) + "}}")),
        ["record, an exponent"] = (1_000_000, HttpStatusCode.UnprocessableEntity, size => Record(Minimal + ",\"burner\":{\"electrodeGapMm\":1e" + new string('9', size) + "}}")),
        ["record, digits of a second"] = (1_000_000, HttpStatusCode.UnprocessableEntity, size => Record(Minimal.Replace("25:00Z", $"25:00.{new string('1', size)}Z", StringComparison.Ordinal) + "}")),
        ["profile, unknown members"] = (60_000, HttpStatusCode.UnprocessableEntity, size => Sent(HttpMethod.Put, "/v1/appliance-profiles/p", "application/json", "{\"x\":1" + string.Concat(Numbers(size).Select(n => $",\"m{n}\":1")) + "}")),
        ["profile, faulty items"] = (100_000, HttpStatusCode.UnprocessableEntity, size => Sent(HttpMethod.Put, "/v1/appliance-profiles/p", "application/json", "{\"sealsToRenew\":[" + string.Join(',', Numbers(size).Select(_ => "\"x\"")) + "]}")),
        ["computation, unknown members"] = (60_000, HttpStatusCode.UnprocessableEntity, size => Posted("/v1/calculations/coCo2Ratio", "{\"x\":1" + string.Concat(Numbers(size).Select(n => $",\"m{n}\":1")) + "}")),
        ["computation, one member over and over"] = (100_000, HttpStatusCode.BadRequest, size => Posted("/v1/calculations/coCo2Ratio", "{\"x\":1" + Repeat(",\"x\":1", size) + "}")),
        ["computation, a long name over many members"] = (40_000, HttpStatusCode.UnprocessableEntity, size => Posted("/v1/calculations/coCo2Ratio", "{\"" + new string('x', size) + "\":{\"x\":1" + string.Concat(Numbers(size / 10).Select(n => $",\"m{n}\":1")) + "}}")),
        ["sampling, items"] = (40_000, HttpStatusCode.OK, size => Posted("/v1/sampling", "{\"confidencePercent\":95,\"tolerableSharePercent\":10,\"seed\":\"s\",\"items\":[" + string.Join(',', Numbers(size).Select(n => $"\"i{n}\"")) + "]}")),
        ["query, parameters"] = (1200, HttpStatusCode.BadRequest, size => Get("/v1/audits?" + string.Join('&', Numbers(size).Select(n => $"m{n}")))),
        ["query, one parameter over and over"] = (1600, HttpStatusCode.BadRequest, size => Get("/v1/audits?" + string.Join('&', Numbers(size).Select(_ => "next")))),
        ["query, one long value"] = (7200, HttpStatusCode.BadRequest, size => Get("/v1/audits?next=" + new string('x', size))),
        ["Idempotency-Key"] = (24_000, HttpStatusCode.BadRequest, size => With(Record(Minimal + "}"), "Idempotency-Key", new string('x', size))),
        ["Accept-Encoding"] = (12_000, HttpStatusCode.OK, size => With(Get("/v1/rules"), "Accept-Encoding", string.Join(',', Numbers(size / 4).Select(_ => "a;q=0")))),
        ["If-None-Match"] = (12_000, HttpStatusCode.OK, size => With(Get("/v1/rules"), "If-None-Match", string.Join(',', Numbers(size / 4).Select(_ => "\"a\"")))),
    };

    public static TheoryData<string> Parsers => [.. Requests.Keys];

    [Theory]
    [MemberData(nameof(Parsers))]
    public async Task Eight_times_as_long_a_request_costs_about_eight_times_as_much(string parser)
    {
        var (large, status, of) = Requests[parser];
        await service.CostOf(() => of(large / Times), status);
        await service.CostOf(() => of(large), status);
        var seen = new List<string>();
        for (var attempt = 0; attempt < Attempts; attempt++)
        {
            var (little, much) = (await service.CostOf(() => of(large / Times), status), await service.CostOf(() => of(large), status));
            if (much < Cheap || much / little <= MostGrowth)
                return;
            seen.Add(string.Create(CultureInfo.InvariantCulture, $"{little.TotalMilliseconds:F1} and {much.TotalMilliseconds:F1} ms"));
        }

        Assert.Fail($"{parser}: {string.Join("; ", seen)}");
    }

    private static IEnumerable<int> Numbers(int count) => Enumerable.Range(0, count);

    private static string Repeat(string text, int times) => new StringBuilder(text.Length * times).Insert(0, text, times).ToString();

    private static HttpRequestMessage Csv(string body) => Sent(HttpMethod.Post, AuditCalls.AtOnce, "text/csv", body);

    private static HttpRequestMessage Lines(string body) => Sent(HttpMethod.Post, AuditCalls.AtOnce, AuditCalls.Ndjson, body);

    private static HttpRequestMessage Array(string body) => Posted(AuditCalls.AtOnce, body);

    private static HttpRequestMessage Record(string body) => Posted("/v1/evaluations?store=false", body);

    private static HttpRequestMessage Posted(string path, string body) => Sent(HttpMethod.Post, path, "application/json", body);

    private static HttpRequestMessage Get(string path) => new(HttpMethod.Get, path);

    private static HttpRequestMessage Sent(HttpMethod method, string path, string type, string body) => new(method, path)
    {
        Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body)) { Headers = { ContentType = new MediaTypeHeaderValue(type) } },
    };

    private static HttpRequestMessage With(HttpRequestMessage request, string header, string value)
    {
        request.Headers.TryAddWithoutValidation(header, value);
        return request;
    }

    /// <summary>A service whose processor time is measured. It judges no stored audits beside the requests.</summary>
    public sealed class Measured : IAsyncLifetime, IDisposable
    {
        private const int MostRequests = 20;
        private static readonly TimeSpan Enough = TimeSpan.FromMilliseconds(100);

        private readonly RunningService _running = new("--urls=http://127.0.0.1:0", "--Audits:Workers=0");
        private HttpClient _client = new();

        public async Task InitializeAsync() => _client = await _running.Listening();

        public Task DisposeAsync() => Task.CompletedTask;

        public void Dispose()
        {
            _client.Dispose();
            _running.Dispose();
        }

        /// <summary>Processor time of one request, each answered with <paramref name="status"/>.</summary>
        public async Task<TimeSpan> CostOf(Func<HttpRequestMessage> make, HttpStatusCode status)
        {
            var (before, requests) = (_running.ProcessorTime, 0);
            while (requests < MostRequests && _running.ProcessorTime - before < Enough)
            {
                using var request = make();
                using var answer = await _client.SendAsync(request);
                await answer.Content.ReadAsByteArrayAsync();
                Assert.Equal(status, answer.StatusCode);
                requests++;
            }

            // The kernel counts in steps; none of them is no cost of nothing.
            return TimeSpan.FromMilliseconds(Math.Max(1, (_running.ProcessorTime - before).TotalMilliseconds)) / requests;
        }
    }
}
