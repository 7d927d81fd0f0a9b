using System.Collections.Concurrent;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace Api.Tests.Operations;

/// <summary>What the service tells of itself to whoever is named to receive it.</summary>
public sealed class TelemetryTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly ConcurrentBag<(string Path, string Body)> _received = [];

    [Fact]
    public async Task Traces_and_counts_are_sent_where_they_are_asked_for_and_tell_nothing_of_a_record()
    {
        await using var receiver = await Receive();
        using (var running = new RunningService("--urls=http://127.0.0.1:0", $"--OTEL_EXPORTER_OTLP_ENDPOINT={receiver.Urls.First()}", "--OTEL_EXPORTER_OTLP_PROTOCOL=http/protobuf"))
        {
            using var client = await running.Listening();
            var posted = await client.PostRecord(service.ExampleRecord);
            await client.GetStringAsync(posted.Headers.Location);
            await client.PostRecord("{}");
            Assert.Equal(0, await running.Terminated());
        }

        var traces = Sent("/v1/traces");
        var counts = Sent("/v1/metrics");
        Assert.Contains("/v1/evaluations/{evaluationId}", traces, StringComparison.Ordinal);
        Assert.Contains("judge", traces, StringComparison.Ordinal);
        Assert.Contains("compliance.evaluations", counts, StringComparison.Ordinal);
        Assert.Contains("compliance.records.refused", counts, StringComparison.Ordinal);
        Assert.Contains("http.server.request.duration", counts, StringComparison.Ordinal);
        var told = traces + counts;
        Assert.All(Said.ByRecords([service.ExampleRecord]), text => Assert.DoesNotContain(text, told, StringComparison.Ordinal));
        Assert.DoesNotMatch("/v1/evaluations/[0-9a-f]{8}-", told);
    }

    [Fact]
    public async Task Nothing_is_sent_unasked()
    {
        await using var receiver = await Receive();
        using var running = new RunningService("--urls=http://127.0.0.1:0", "--OTEL_EXPORTER_OTLP_ENDPOINT=");
        using var client = await running.Listening();
        await client.PostRecord(service.ExampleRecord);
        Assert.Equal(0, await running.Terminated());

        Assert.Empty(_received);
    }

    private string Sent(string path) => string.Concat(_received.Where(one => one.Path == path).Select(one => one.Body));

    private async Task<WebApplication> Receive()
    {
        var builder = WebApplication.CreateSlimBuilder(["--urls=http://127.0.0.1:0"]);
        builder.Logging.ClearProviders();
        var app = builder.Build();
        app.MapPost("/{**path}", async (HttpRequest request) =>
        {
            using var body = new MemoryStream();
            await request.Body.CopyToAsync(body);
            _received.Add((request.Path, Encoding.Latin1.GetString(body.ToArray())));
        });
        await app.StartAsync();
        return app;
    }
}
