using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using Api.Tests.Contract;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Visits.Judging;

namespace Api.Tests;

/// <summary>The service in this process, with a store and a log of its own.</summary>
public sealed class ServiceInProcess : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("api-");

    /// <summary>The moment that the service takes for now.</summary>
    public static DateTimeOffset Now { get; } = new(2026, 9, 14, 12, 0, 0, TimeSpan.Zero);

    public string StorePath => Path.Combine(_folder.FullName, "compliance.db");

    public LogLines Log { get; } = new();

    public byte[] ExampleRecord => Services.GetRequiredService<ComplianceEngine>().Catalogue.ExampleRecord;

    /// <summary>A client whose every exchange is held against the published document.</summary>
    public new HttpClient CreateClient() => CreateDefaultClient(new ContractHandler());

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("Store:Path", StorePath);
        builder.UseSetting("Store:Create", "true");
        builder.ConfigureLogging(logging => logging.AddProvider(Log));
        builder.ConfigureServices(services => services.AddSingleton<TimeProvider>(new StoppedClock()));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && _folder.Exists)
            _folder.Delete(recursive: true);
    }

    private sealed class StoppedClock : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => Now;
    }
}

/// <summary>Everything logged as a warning or worse.</summary>
public sealed class LogLines : ILoggerProvider, ILogger
{
    private readonly List<string> _lines = [];

    public IReadOnlyList<string> Lines
    {
        get
        {
            lock (_lines)
                return [.. _lines];
        }
    }

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state) where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Warning;

    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
    {
        lock (_lines)
        {
            if (IsEnabled(logLevel))
                _lines.Add(formatter(state, exception));
        }
    }

    public void Dispose()
    {
    }
}

/// <summary>Calls as the tests make them.</summary>
internal static class Calls
{
    public static Task<HttpResponseMessage> PostRecord(this HttpClient client, byte[] record, string query = "") =>
        client.PostAsync($"/v1/evaluations{query}", Json(record));

    public static Task<HttpResponseMessage> PostRecord(this HttpClient client, string record, string query = "") =>
        client.PostRecord(Encoding.UTF8.GetBytes(record), query);

    public static ByteArrayContent Json(byte[] body) => new(body) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };

    public static ByteArrayContent Json(string body) => Json(Encoding.UTF8.GetBytes(body));

    public static async Task<JsonNode> Read(this HttpResponseMessage response, HttpStatusCode expected = HttpStatusCode.OK)
    {
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode == expected, $"{(int)response.StatusCode}: {text}");
        return JsonNode.Parse(text)!;
    }

    public static async Task<JsonNode> GetJson(this HttpClient client, string path) => await (await client.GetAsync(path)).Read();

    public static string Text(this JsonNode? node) => node!.GetValue<string>();

    public static IEnumerable<string> Texts(this JsonNode? list, string member) => list!.AsArray().Select(item => item![member].Text());

    /// <summary>The record with one member changed.</summary>
    public static byte[] With(this byte[] record, Action<JsonNode> change)
    {
        var node = JsonNode.Parse(record)!;
        change(node);
        return Encoding.UTF8.GetBytes(node.ToJsonString());
    }
}
