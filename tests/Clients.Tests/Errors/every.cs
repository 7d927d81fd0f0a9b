/// <summary>What a generated client is asked to do here; the two C# clients differ in how it is called and in nothing else.</summary>
internal interface IClient
{
    Task ListRules(int? limit = null);
    Task GetEvaluation();
    Task Evaluate(ServiceRecord visit);
    Task Audit(IEnumerable<ServiceRecord> visits);

    /// <summary>The id of an audit that is judged by and by.</summary>
    Task<string> AuditLater(IEnumerable<ServiceRecord> visits);
    Task GetReport(string auditId);
    Task Cancel(string auditId);

    /// <summary>What the client makes of a refusal; null: it is none.</summary>
    Refusal? Read(Exception fault);
}

/// <summary>A refusal as a client read it. Nothing but the status is known of one that the document names for no operation.</summary>
internal sealed record Refusal(int Status, int? StatusInBody = null, string? Type = null, string? TraceId = null);

/// <summary>Every error that the service knows, provoked and read.</summary>
internal static class Every
{
    public static async Task Error(string[] args, Func<HttpClient, IClient> make)
    {
        var (service, broken, strict, key) = (args[0], args[1], args[2], args[3]);
        var visit = new ServiceRecord
        {
            RecordId = "HB-0009",
            JobType = JobType.Repair,
            Jurisdiction = Jurisdiction.GBSCT,
            FinishedAt = new DateTimeOffset(2026, 9, 14, 10, 25, 0, TimeSpan.Zero),
            Appliance = new Appliance { Fuel = Fuel.Butane },
        };

        var client = Client(service);
        var holder = Client(strict, WithKey);
        await Refused(client, it => it.ListRules(limit: 0));
        await Refused(Client(service, request => request.Content = new StringContent("{", new MediaTypeHeaderValue("application/json"))), it => it.Evaluate(visit));
        await Refused(Client(strict), it => it.ListRules());
        await Refused(holder, it => it.GetEvaluation());
        await Refused(Client(service, request => request.Headers.Add("X-Forwarded-For", "127.0.0.1")), it => it.ListRules());
        await Refused(client, it => it.GetEvaluation());
        await Refused(Client(service, request => request.Method = HttpMethod.Patch), it => it.ListRules());

        var audit = await client.AuditLater(Enumerable.Repeat(visit, 4000));
        await Refused(client, it => it.GetReport(audit));
        await client.Cancel(audit);
        await Refused(client, it => it.Audit(Enumerable.Repeat(visit, 5001)));
        await Refused(Client(service, request => request.Content!.Headers.ContentEncoding.Add("br")), it => it.Evaluate(visit));
        await Refused(client, it => it.Audit([]));
        await Refused(holder, async it =>
        {
            while (true)
                await it.ListRules();
        });
        await Refused(Client(broken), it => it.GetEvaluation());
        await Task.Delay(TimeSpan.FromSeconds(2)); // The service gives the holder of the key a request a second.
        await Refused(Client(strict, request => { WithKey(request); request.Content = new Late(); }), it => it.Evaluate(visit));

        IClient Client(string url, Action<HttpRequestMessage>? change = null) =>
            make(new HttpClient(new Changed(change ?? (_ => { })) { InnerHandler = new HttpClientHandler() }) { BaseAddress = new Uri(url) });

        void WithKey(HttpRequestMessage request) => request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", key);
    }

    private static async Task Refused(IClient client, Func<IClient, Task> call)
    {
        try
        {
            await call(client);
            Console.WriteLine("accepted");
        }
        catch (Exception fault) when (client.Read(fault) is { } refusal && (refusal.Type is null || (refusal.StatusInBody == refusal.Status && refusal.TraceId?.Length == 32)))
        {
            Console.WriteLine($"{refusal.Status} {refusal.Type}".TrimEnd());
        }
    }
}

/// <summary>Changes a request on its way.</summary>
internal sealed class Changed(Action<HttpRequestMessage> change) : DelegatingHandler
{
    protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        change(request);
        return base.SendAsync(request, cancellationToken);
    }
}

/// <summary>A body that takes longer to arrive than the service waits.</summary>
internal sealed class Late : HttpContent
{
    public Late() => Headers.ContentType = new MediaTypeHeaderValue("application/json");

    protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context)
    {
        await stream.WriteAsync("{"u8.ToArray());
        await stream.FlushAsync();
        await Task.Delay(TimeSpan.FromSeconds(6));
        await stream.WriteAsync("}"u8.ToArray());
    }

    protected override bool TryComputeLength(out long length)
    {
        length = 0;
        return false;
    }
}
