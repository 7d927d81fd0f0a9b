global using System.Net;
global using System.Net.Http.Headers;
global using Compliance.Models;
using Compliance;
using Microsoft.Kiota.Abstractions;
using Microsoft.Kiota.Abstractions.Authentication;
using Microsoft.Kiota.Http.HttpClientLibrary;

await Every.Error(args, http => new ByKiota(new ComplianceClient(
    new HttpClientRequestAdapter(new AnonymousAuthenticationProvider(), httpClient: http) { BaseUrl = http.BaseAddress!.ToString().TrimEnd('/') })));

internal sealed class ByKiota(ComplianceClient client) : IClient
{
    public Task ListRules(int? limit) => client.V1.Rules.GetAsync(request => request.QueryParameters.Limit = limit);

    public Task GetEvaluation() => client.V1.Evaluations["none"].GetAsync();

    public Task Evaluate(ServiceRecord visit) => client.V1.Evaluations.PostAsync(visit);

    public Task Audit(IEnumerable<ServiceRecord> visits) => client.V1.AuditLines.PostAsync([.. visits]);

    public async Task<string> AuditLater(IEnumerable<ServiceRecord> visits) =>
        (await client.V1.Audits.PostAsync([.. visits]))!.AuditId!;

    public Task GetReport(string auditId) => client.V1.Audits[auditId].Report.GetAsync();

    public Task Cancel(string auditId) => client.V1.Audits[auditId].DeleteAsync();

    public Refusal? Read(Exception fault) => fault switch
    {
        Problem known => new(known.ResponseStatusCode, known.Status, known.Type, known.TraceId),
        ApiException other => new(other.ResponseStatusCode),
        _ => null,
    };
}
