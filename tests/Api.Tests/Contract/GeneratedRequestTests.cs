using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace Api.Tests.Contract;

/// <summary>
/// Requests made from the document alone (allowed, on the bounds, forbidden, hostile) against the running service on loopback. Each
/// exchange is held against the document, nothing is 500, and nothing hangs. <c>REQUESTS</c> says how many, <c>SEED</c> which ones.
/// </summary>
public sealed class GeneratedRequestTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);
    private static readonly string[] HostilePaths = ["%00", "..%2F..%2Fetc%2Fpasswd", "%F0%9F%98%80", "'%3B--", "%E0%A4%A", new('a', 3000)];
    private static readonly string[] HostileBodies =
    [
        "", "null", "[]", "{", "\"", "{\"recordId\":\"a\",\"recordId\":\"b\"}", "{\"recordId\":\"\\ud800\"}", new string('[', 5000), "NaN", "{\"a\":1e999999999}",
        "{\"__proto__\":{}}", "\u0000", "{\"recordId\":" + new string('9', 4000) + "}",
    ];

    private static readonly List<Operation> WithBody = [.. PublishedContract.V1.Operations.Where(operation => operation.Body is not null)];

    private readonly ConcurrentDictionary<string, int> _answers = new(StringComparer.Ordinal);

    [Fact]
    public async Task No_request_from_the_document_is_answered_outside_of_it()
    {
        var count = Setting("REQUESTS", 1500);
        var seed = Setting("SEED", 20260914);
        using var running = new RunningService("--urls=http://127.0.0.1:0");
        using var plain = await running.Listening();
        using var client = new HttpClient(new ContractHandler { InnerHandler = new SocketsHttpHandler() }) { BaseAddress = plain.BaseAddress, Timeout = Patience };

        var faults = new ConcurrentQueue<string>();
        await Parallel.ForEachAsync(Enumerable.Range(0, count), new ParallelOptions { MaxDegreeOfParallelism = 4 }, async (number, cancel) =>
        {
            var (request, kind) = RequestOf(new Random(unchecked((seed * 1_000_003) + number)));
            var said = $"seed {seed}, request {number}: {request.Method} {request.RequestUri!.OriginalString[..Math.Min(120, request.RequestUri.OriginalString.Length)]}";
            try
            {
                using var response = await client.SendAsync(request, cancel);
                _answers.AddOrUpdate($"{kind} {(int)response.StatusCode}", 1, (_, known) => known + 1);
                if ((int)response.StatusCode >= 500)
                    faults.Enqueue($"{said}: {(int)response.StatusCode}");
            }
            catch (Exception fault) when (fault is ContractException or HttpRequestException or TaskCanceledException)
            {
                faults.Enqueue($"{said}: {fault.Message}");
            }
        });

        Console.WriteLine($"{count} requests: {string.Join(", ", _answers.OrderBy(answer => answer.Key, StringComparer.Ordinal).Select(answer => $"{answer.Key}: {answer.Value}"))}");
        Assert.True(faults.IsEmpty, $"{faults.Count} of {count} break the contract:\n{string.Join('\n', faults.Take(20))}");
        Assert.True((await plain.GetAsync("/health/ready")).IsSuccessStatusCode);

        // The generator must not have missed its aim: of what is allowed about half is accepted (the document cannot say what members mean together),
        // and what is forbidden is refused.
        Assert.True(Of("allowed body", '2') * 4 > Of("allowed body", '4') * 3, "few of the allowed bodies were accepted");
        Assert.Equal(0, Of("forbidden", '2') + Of("forbidden body", '2'));
        Assert.True(Of("forbidden", '4') > 0 && Of("forbidden body", '4') > 0);
    }

    private int Of(string kind, char status) => _answers.Where(answer => answer.Key.StartsWith($"{kind} {status}", StringComparison.Ordinal)).Sum(answer => answer.Value);

    private static (HttpRequestMessage Request, string Kind) RequestOf(Random random)
    {
        var contract = PublishedContract.V1;
        var candidates = random.Next(2) == 0 ? contract.Operations : WithBody;
        var operation = candidates[random.Next(candidates.Count)];
        var values = new SchemaValues(contract.Document, random);
        var kind = random.Next(4) switch { 0 => "forbidden", 1 => "hostile", _ => "allowed" };
        var isBody = operation.JsonBody is not null && random.Next(3) > 0;
        if (kind == "forbidden" && isBody && operation.ReportsFaults)
            kind = "hostile";
        if (kind == "forbidden" && !isBody && !operation.Parameters.Any(IsCheckedQuery))
            kind = "allowed";

        // A path value, a query and a body; the one thing that is wrong is in the query or in the body.
        var path = operation.PathWith(kind == "hostile" && !isBody ? _ => HostilePaths[random.Next(HostilePaths.Length)] : null);
        var query = operation.Parameters.Where(parameter => parameter["in"].Text() == "query" && parameter["name"].Text() != "next" && random.Next(3) == 0)
            .Select(parameter => (Name: parameter["name"].Text(), Value: Text(values.Allowed(parameter["schema"]!)))).ToList();
        if (kind != "allowed" && !isBody)
        {
            if (operation.Parameters.Where(IsCheckedQuery).ToList() is { Count: > 0 } known)
            {
                var wrong = known[random.Next(known.Count)];
                query.RemoveAll(one => one.Name == wrong["name"].Text());
                query.Add((wrong["name"].Text(), kind == "forbidden" ? "no such value" : HostileBodies[random.Next(9)]));
            }
            else
            {
                query.Add(("colour", "\u0001"));
            }
        }

        var uri = path + (query.Count > 0 ? "?" + string.Join('&', query.Select(one => $"{one.Name}={Uri.EscapeDataString(one.Value)}")) : "");
        var request = new HttpRequestMessage(new HttpMethod(operation.Method), new Uri(uri, UriKind.Relative));
        if (operation.JsonBody is { } schema)
        {
            var body = values.Allowed(schema);
            var sent = !isBody || kind == "allowed" ? body.ToJsonString()
                : kind == "forbidden" ? values.Forbidden(schema, body)!.ToJsonString()
                : HostileBodies[random.Next(HostileBodies.Length)];
            request.Content = Calls.Json(Encoding.UTF8.GetBytes(sent));
        }
        else if (operation.Body is { } other)
        {
            request.Content = new StringContent(HostileBodies[random.Next(HostileBodies.Length)], Encoding.UTF8, other.First().Key);
        }

        return (request, isBody ? kind + " body" : kind);
    }

    private static bool IsCheckedQuery(JsonNode parameter) => parameter["in"].Text() == "query"
        && (parameter["schema"]!["$ref"] is not null || parameter["schema"]!["enum"] is not null || parameter["schema"]!["format"] is not null || parameter["schema"]!["type"].Text() != "string");

    private static string Text(JsonNode value) => value is JsonValue text && text.TryGetValue<string>(out var plain) ? plain : value.ToJsonString();

    private static int Setting(string name, int absent) =>
        Environment.GetEnvironmentVariable(name) is { Length: > 0 } text ? int.Parse(text, CultureInfo.InvariantCulture) : absent;
}
