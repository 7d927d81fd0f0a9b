using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Logging;

namespace Benchmarks;

/// <summary>The floor of any service on this web server: takes a record's bytes and answers as many bytes as an evaluation has.</summary>
internal static class Echo
{
    public static int Run(string url, string answerFile)
    {
        var answer = File.ReadAllBytes(answerFile);
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        var app = builder.Build();
        app.MapPost("/echo", async context =>
        {
            await context.Request.Body.CopyToAsync(Stream.Null);
            context.Response.ContentType = "application/json";
            context.Response.ContentLength = answer.Length;
            await context.Response.Body.WriteAsync(answer);
        });
        app.MapGet("/health/live", () => "up");
        app.Run(url);
        return 0;
    }
}
