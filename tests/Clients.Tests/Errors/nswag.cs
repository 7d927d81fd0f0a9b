global using System.Net;
global using System.Net.Http.Headers;
global using Compliance;

await Every.Error(args, http => new ByNSwag(new ComplianceClient(http)));

internal sealed class ByNSwag(ComplianceClient client) : IClient
{
    public Task ListRules(int? limit) => client.ListRulesAsync(limit: limit);

    public Task GetEvaluation() => client.GetEvaluationAsync("none");

    public Task Evaluate(ServiceRecord visit) => client.CreateEvaluationAsync(visit);

    public Task Audit(IEnumerable<ServiceRecord> visits) => client.JudgeAtOnceAsync(visits);

    public async Task<string> AuditLater(IEnumerable<ServiceRecord> visits) => (await client.CreateAuditAsync(visits)).AuditId;

    public Task GetReport(string auditId) => client.GetAuditReportAsync(auditId);

    public Task Cancel(string auditId) => client.CancelAuditAsync(auditId);

    public Refusal? Read(Exception fault) => fault switch
    {
        ApiException<Problem> known => new(known.StatusCode, known.Result.Status, known.Result.Type, known.Result.TraceId),
        ApiException other => new(other.StatusCode),
        _ => null,
    };
}
