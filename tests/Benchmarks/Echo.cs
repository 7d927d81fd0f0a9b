using System.Buffers;
using System.Text.Json;
using ComplianceApi.Api.Requests;
using Findings;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Logging;
using Records.Reading;

namespace Benchmarks;

/// <summary>
/// The floor of any service on this web server: <c>/echo</c> reads the record and writes a held evaluation, both as JSON, and judges
/// nothing; <c>/lines</c> does it with NDJSON, a line at a time, and writes each record as it was read; <c>/bytes</c> takes bytes and answers as many, and looks at none.
/// </summary>
internal static class Echo
{
    public static int Run(string url, string answerFile)
    {
        var answer = File.ReadAllBytes(answerFile);
        var evaluation = new Lazy<Evaluation>(() => JsonSerializer.Deserialize(answer, EvaluationJson.Wire.Evaluation)!);
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Limits.MaxRequestBodySize = null);
        var app = builder.Build();
        app.MapPost("/echo", async context =>
        {
            _ = await JsonSerializer.DeserializeAsync(context.Request.Body, RecordJson.Default.ServiceRecord);
            context.Response.ContentType = "application/json";
            await JsonSerializer.SerializeAsync(context.Response.Body, evaluation.Value, EvaluationJson.Wire.Evaluation);
        });
        app.MapPost("/lines", async context =>
        {
            context.Response.ContentType = "application/x-ndjson";
            var output = context.Response.BodyWriter;
            await foreach (var line in NdjsonReader.ReadAsync(context.Request.Body, JsonBody.MaxBytes, context.RequestAborted))
            {
                if (RecordReader.Read(line.Utf8).Record is { } record)
                    WireJson.Write(output, record, RecordJson.Default.ServiceRecord);
                else
                    output.Write(line.Utf8.Span);
                output.Write("\n"u8);
                if (output.UnflushedBytes > 64 * 1024)
                    await output.FlushAsync(context.RequestAborted);
            }
        });
        app.MapPost("/bytes", async context =>
        {
            await context.Request.Body.CopyToAsync(Stream.Null);
            context.Response.ContentType = "application/json";
            await context.Response.Body.WriteAsync(answer);
        });
        app.MapGet("/health/live", () => "up");
        app.Run(url);
        return 0;
    }
}
