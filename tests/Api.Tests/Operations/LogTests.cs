using System.Collections.Concurrent;
using System.Net;
using System.Text;
using Api.Tests.Keys;
using ComplianceApi.Commands.Demo;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Logging;
using Storage.Keys;

namespace Api.Tests.Operations;

/// <summary>The log says what happened and to whom, and nothing of what a record says.</summary>
public sealed class LogTests : IDisposable
{
    private readonly ServiceInProcess _service = new();

    public void Dispose() => _service.Dispose();

    [Theory]
    [InlineData("Information")]
    [InlineData("Trace")]
    public async Task The_log_of_the_demo_month_names_no_place_no_boiler_no_engineer_and_no_reading(string level)
    {
        var log = new WholeLog();
        await using var logged = _service.WithWebHostBuilder(builder => builder
            .UseSetting("Logging:LogLevel:Default", level)
            .ConfigureLogging(logging => logging.AddProvider(log)));
        var client = logged.CreateDefaultClient();
        var records = DemoMonth.Records(_service.ExampleRecord).Select(one => one.Json).ToList();
        foreach (var record in records)
        {
            var posted = await client.PostRecord(record);
            if (posted.Headers.Location is { } location)
                await client.GetStringAsync(location.ToString()["/v1".Length..]);
        }

        await client.PostRecord(records[0].With(record => record["appliance"]!["fuel"] = "DEMO-COAL-1"));
        await client.Completed((await client.PostAudit(AuditCalls.Lines(records), later: true)).Headers.Location!);
        await client.GetAsync("/v1/evaluations/DEMO-BOILER-001?colour=DEMO-BLUE-1");

        Assert.NotEmpty(log.Text);
        var said = Said.ByRecords(records);
        Assert.True(said.Count > 500);
        Assert.All(said.Append("DEMO-COAL-1").Append("DEMO-BLUE-1"), text => Assert.DoesNotContain(text, log.Text, StringComparison.Ordinal));
        Assert.Equal(level == "Trace", log.Text.Contains("POST /v1/evaluations answered 201", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_refusal_is_logged_with_the_route_the_key_and_the_tenant_and_without_the_secret()
    {
        using var keyed = new ServiceWithKeys();
        var log = new WholeLog();
        var key = await keyed.NewKey("a", KeyScope.Evaluate);
        await using var logged = keyed.Inner.WithWebHostBuilder(builder => builder.ConfigureLogging(logging => logging.AddProvider(log)));
        var client = logged.CreateDefaultClient();
        client.DefaultRequestHeaders.Authorization = new("Bearer", key);

        Assert.Equal(HttpStatusCode.Forbidden, (await client.GetAsync("/v1/evaluations/some-id")).StatusCode);
        client.DefaultRequestHeaders.Authorization = new("Bearer", key + "x");
        Assert.Equal(HttpStatusCode.Unauthorized, (await client.GetAsync("/v1/evaluations/some-id")).StatusCode);

        Assert.Matches($"GET /v1/evaluations/{{evaluationId}} answered 403 after [0-9]+ ms; key {KeyText.IdOf(key)}, tenant a, trace [0-9a-f]{{32}}", log.Text);
        Assert.Contains("answered 401", log.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(key.Split('.')[1], log.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("some-id", log.Text, StringComparison.Ordinal);
    }

    /// <summary>All that is logged: messages, their members, scopes and exceptions.</summary>
    private sealed class WholeLog : ILoggerProvider
    {
        private readonly ConcurrentQueue<string> _entries = [];

        public string Text => string.Join('\n', _entries);

        public ILogger CreateLogger(string categoryName) => new Category(categoryName, _entries);

        public void Dispose()
        {
        }

        private sealed class Category(string name, ConcurrentQueue<string> entries) : ILogger
        {
            public IDisposable? BeginScope<TState>(TState state) where TState : notnull => null;

            public bool IsEnabled(LogLevel logLevel) => true;

            public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
            {
                var entry = new StringBuilder($"{logLevel} {name} {formatter(state, exception)} {exception}");
                if (state is IEnumerable<KeyValuePair<string, object?>> members)
                    entry.AppendJoin(' ', members.Select(member => $"{member.Key}={member.Value}"));
                entries.Enqueue(entry.ToString());
            }
        }
    }
}
