using System.Net;
using System.Net.Http.Headers;
using System.Text.Json.Nodes;

namespace Api.Tests.Contract;

/// <summary>What every operation of the document does with a request that no operation takes. New routes are taken in by themselves.</summary>
public sealed class MatrixTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    public static TheoryData<string> All => [.. PublishedContract.V1.Operations.Select(operation => operation.Id)];

    public static TheoryData<string> Strict => [.. PublishedContract.V1.Operations.Where(operation => operation.IsStrict).Select(operation => operation.Id)];

    public static TheoryData<string> WithBody => [.. PublishedContract.V1.Operations.Where(operation => operation.Body is not null).Select(operation => operation.Id)];

    public static TheoryData<string> OfOneThing => [.. PublishedContract.V1.Operations.Where(operation => operation.JsonBody is not null && !operation.ReportsFaults).Select(operation => operation.Id)];

    public static TheoryData<string> WithETag => [.. PublishedContract.V1.Operations.Where(operation => operation.Responses.ContainsKey("304") && !operation.Path.Contains('{', StringComparison.Ordinal)).Select(operation => operation.Id)];

    [Theory, MemberData(nameof(All))]
    public async Task A_forwarded_request_is_refused_everywhere(string operation)
    {
        var request = RequestOf(operation);
        request.Headers.Add("X-Forwarded-For", "127.0.0.1");

        await Refused(request, 403, "forwarded-request");
    }

    [Theory, MemberData(nameof(All))]
    public async Task Another_method_is_refused_and_the_right_ones_are_named(string operation)
    {
        var request = RequestOf(operation);
        request.Method = HttpMethod.Patch;

        var response = await Refused(request, 405, "method-not-allowed");

        Assert.Contains(Find(operation).Method, response.Content.Headers.Allow);
    }

    [Theory, MemberData(nameof(Strict))]
    public async Task An_unknown_parameter_is_refused_everywhere(string operation)
    {
        var request = RequestOf(operation, "?colour=blue");

        var problem = await (await Refused(request, 400, "invalid-parameter")).Read(HttpStatusCode.BadRequest);

        Assert.Equal(["colour"], problem["errors"].Texts("parameter"));
    }

    [Theory, MemberData(nameof(Strict))]
    public async Task The_trace_of_the_caller_is_continued_in_every_refusal(string operation)
    {
        const string Trace = "4bf92f3577b34da6a3ce929d0e0e4736";
        var request = RequestOf(operation, "?colour=blue");
        request.Headers.Add("traceparent", $"00-{Trace}-00f067aa0ba902b7-01");

        var problem = await (await _client.SendAsync(request)).Read(HttpStatusCode.BadRequest);

        Assert.Equal(Trace, problem["traceId"].Text());
    }

    [Theory, MemberData(nameof(WithBody))]
    public async Task Another_media_type_is_refused(string operation)
    {
        var request = RequestOf(operation);
        request.Content = new ByteArrayContent("x"u8.ToArray()) { Headers = { ContentType = new MediaTypeHeaderValue("application/xml") } };

        await Refused(request, 415, "unsupported-media-type");
    }

    [Theory, MemberData(nameof(WithBody))]
    public async Task What_is_no_JSON_is_refused(string operation)
    {
        var request = RequestOf(operation);
        request.Content = Calls.Json("{\"a\":");

        await Refused(request, 400, "unreadable-body");
    }

    [Theory, MemberData(nameof(OfOneThing))]
    public async Task JSON_of_the_wrong_form_is_refused_with_the_place(string operation)
    {
        var request = RequestOf(operation);
        request.Content = Calls.Json("\"a text\"");

        var problem = await (await Refused(request, 422, "invalid-body")).Read(HttpStatusCode.UnprocessableEntity);

        Assert.Equal(["#"], problem["errors"].Texts("pointer"));
    }

    [Theory, MemberData(nameof(WithETag))]
    public async Task What_the_caller_has_kept_is_not_sent_again(string operation)
    {
        var first = await _client.SendAsync(RequestOf(operation));
        var tag = first.Headers.ETag!;
        Assert.False(tag.IsWeak);
        foreach (var kept in new[] { tag.ToString(), $"W/{tag}", $"\"other\", {tag}", "*" })
        {
            var again = RequestOf(operation);
            again.Headers.TryAddWithoutValidation("If-None-Match", kept);
            var response = await _client.SendAsync(again);
            Assert.Equal(HttpStatusCode.NotModified, response.StatusCode);
            Assert.Equal(tag, response.Headers.ETag);
            Assert.Empty(await response.Content.ReadAsByteArrayAsync());
        }

        var other = RequestOf(operation);
        other.Headers.TryAddWithoutValidation("If-None-Match", "\"other\"");
        Assert.Equal(await first.Content.ReadAsByteArrayAsync(), await (await _client.SendAsync(other)).Content.ReadAsByteArrayAsync());
    }

    private static Operation Find(string operation) => PublishedContract.V1.Operations.Single(one => one.Id == operation);

    private HttpRequestMessage RequestOf(string operation, string query = "")
    {
        var found = Find(operation);
        return new HttpRequestMessage(new HttpMethod(found.Method), found.PathWith() + query) { Content = found.Body is null ? null : Calls.Json(service.ExampleRecord) };
    }

    private async Task<HttpResponseMessage> Refused(HttpRequestMessage request, int status, string kind)
    {
        var response = await _client.SendAsync(request);
        var text = await response.Content.ReadAsStringAsync();
        Assert.True((int)response.StatusCode == status, $"{request.Method} {request.RequestUri}: {(int)response.StatusCode} {text}");
        Assert.Equal($"/problems/{kind}", JsonNode.Parse(text)!["type"].Text());
        return response;
    }
}
