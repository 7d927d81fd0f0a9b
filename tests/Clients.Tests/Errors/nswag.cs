using System.Net.Http.Headers;
using Compliance;

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

await Refused(() => client.ListRulesAsync(limit: 0));
await Refused(() => unreadable.CreateEvaluationAsync(visit));
await Refused(() => unknown.ListRulesAsync());
await Refused(() => forwarded.ListRulesAsync());
await Refused(() => keyed.CreateEvaluationAsync(visit));
await Refused(() => client.GetEvaluationAsync("none"));

AuditStatus? audit = null;
try
{
    await client.CreateAuditAsync(Enumerable.Repeat(visit, 4000), prefer: "respond-async");
}
catch (ApiException<AuditStatus> accepted)
{
    audit = accepted.Result;
}

await Refused(() => client.GetAuditReportAsync(audit!.AuditId));
await client.CancelAuditAsync(audit!.AuditId);
await Refused(() => client.CreateAuditAsync(Enumerable.Repeat(visit, 5001)));
await Refused(() => packed.CreateEvaluationAsync(visit));
await Refused(() => client.CreateAuditAsync([]));
await Refused(() => Often(() => keyed.ListRulesAsync()));
await Refused(() => broken.GetEvaluationAsync("none"));
await Refused(() => hurried.CreateEvaluationAsync(visit));

static ComplianceClient Client(string url, Action<HttpRequestMessage> change) =>
    new(new HttpClient(new Changed(change) { InnerHandler = new HttpClientHandler() }) { BaseAddress = new Uri(url) });

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
    catch (ApiException<Problem> refusal) when (refusal.Result.TraceId.Length == 32 && refusal.Result.Status == refusal.StatusCode)
    {
        Console.WriteLine($"{refusal.StatusCode} {refusal.Result.Type}");
    }
}
