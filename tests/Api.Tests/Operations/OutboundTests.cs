using System.Collections.Concurrent;
using System.Diagnostics.Tracing;
using System.Net.Sockets;
using ComplianceApi.Commands.Demo;

namespace Api.Tests.Operations;

/// <summary>Nothing beyond the process has a say in a verdict. Runs alone: it watches the whole process.</summary>
[Collection("Alone")]
public sealed class OutboundTests
{
    [Fact]
    public async Task Judging_asks_nobody()
    {
        using var service = new ServiceInProcess();
        var client = service.CreateClient();
        await (await client.PostRecord(service.ExampleRecord)).Read(System.Net.HttpStatusCode.Created);
        using var calls = new OutwardCalls();

        foreach (var (_, record) in DemoMonth.Records(service.ExampleRecord))
            await client.PostRecord(record);
        await client.PostAudit(AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 50)));
        await client.Completed((await client.PostAudit(AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 50)), later: true)).Headers.Location!);
        Assert.Empty(calls.Seen);

        // That a call would be seen.
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        await Assert.ThrowsAnyAsync<SocketException>(async () => await socket.ConnectAsync(System.Net.IPAddress.Loopback, 1));
        Assert.NotEmpty(calls.Seen);
    }

    /// <summary>Connections that are begun and names that are looked up.</summary>
    private sealed class OutwardCalls : EventListener
    {
        private readonly ConcurrentQueue<string> _seen = [];

        public IReadOnlyCollection<string> Seen => _seen;

        protected override void OnEventSourceCreated(EventSource eventSource)
        {
            if (eventSource.Name is "System.Net.Sockets" or "System.Net.NameResolution")
                EnableEvents(eventSource, EventLevel.Informational);
        }

        protected override void OnEventWritten(EventWrittenEventArgs eventData)
        {
            if (eventData.EventName is "ConnectStart" or "ResolutionStart")
                _seen.Enqueue($"{eventData.EventSource.Name} {eventData.EventName} {string.Join(' ', eventData.Payload ?? (IReadOnlyList<object?>)[])}");
        }
    }
}

/// <summary>Tests that no other may run beside.</summary>
[CollectionDefinition("Alone", DisableParallelization = true)]
public sealed class Alone;
