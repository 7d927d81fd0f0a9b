using System.Net.Http.Headers;
using Compliance;
using Compliance.Models;
using Microsoft.Kiota.Abstractions.Authentication;
using Microsoft.Kiota.Http.HttpClientLibrary;

var client = Client(args[0], _ => { });
var forwarded = Client(args[0], request => request.Headers.Add("X-Forwarded-For", "127.0.0.1"));
var unreadable = Client(args[0], request => request.Content = new StringContent("{", new MediaTypeHeaderValue("application/json")));
var packed = Client(args[0], request => request.Content!.Headers.ContentEncoding.Add("br"));
var broken = Client(args[1], _ => { });
var hurried = Client(args[2], _ => { });
var unknown = Client(args[3], _ => { });
var keyed = Client(args[3], request => request.Headers.Authorization = new("Bearer", args[4]));
var visit = new ServiceRecord
{
    RecordId = "HB-0009",
    JobType = JobType.Repair,
    Jurisdiction = Jurisdiction.GBSCT,
    FinishedAt = new DateTimeOffset(2026, 9, 14, 10, 25, 0, TimeSpan.Zero),
    Appliance = new Appliance { Fuel = Fuel.Butane },
};

await Refused(() => client.V1.Rules.GetAsync(request => request.QueryParameters.Limit = 0));
await Refused(() => unreadable.V1.Evaluations.PostAsync(visit));
await Refused(() => unknown.V1.Rules.GetAsync());
await Refused(() => forwarded.V1.Rules.GetAsync());
await Refused(() => keyed.V1.Evaluations.PostAsync(visit));
await Refused(() => client.V1.Evaluations["none"].GetAsync());

var audit = (await client.V1.Audits.PostAsync([.. Enumerable.Repeat(visit, 4000)], request => request.Headers.Add("Prefer", "respond-async")))!;
await Refused(() => client.V1.Audits[audit.AuditId!].Report.GetAsync());
await client.V1.Audits[audit.AuditId!].DeleteAsync();
await Refused(() => client.V1.Audits.PostAsync([.. Enumerable.Repeat(visit, 5001)]));
await Refused(() => packed.V1.Evaluations.PostAsync(visit));
await Refused(() => client.V1.Audits.PostAsync([]));
await Refused(() => Often(() => keyed.V1.Rules.GetAsync()));
await Refused(() => broken.V1.Evaluations["none"].GetAsync());
await Refused(() => hurried.V1.Evaluations.PostAsync(visit));

static ComplianceClient Client(string url, Action<HttpRequestMessage> change) =>
    new(new HttpClientRequestAdapter(new AnonymousAuthenticationProvider(), httpClient: new HttpClient(new Changed(change) { InnerHandler = new HttpClientHandler() })) { BaseUrl = url });

static async Task Often(Func<Task> call)
{
    for (var times = 0; times < 100; times++)
        await call();
}

static async Task Refused(Func<Task> call)
{
    try
    {
        await call();
        Console.WriteLine("accepted");
    }
    catch (Problem refusal) when (refusal.TraceId!.Length == 32 && refusal.Status == refusal.ResponseStatusCode)
    {
        Console.WriteLine($"{refusal.ResponseStatusCode} {refusal.Type}");
    }
}
