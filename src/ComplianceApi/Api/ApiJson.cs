using System.Text.Json;
using System.Text.Json.Serialization;
using ComplianceApi.Api.Calculations;
using ComplianceApi.Api.Evaluations;
using ComplianceApi.Api.OpenApi;
using ComplianceApi.Api.Probes;
using ComplianceApi.Api.Questions;
using ComplianceApi.Api.Requests;
using ComplianceApi.Api.Rules;
using ComplianceApi.Api.Sampling;
using Findings;
using Jobs;
using Jobs.Looks;
using Jobs.Previews;
using Jobs.Queue;
using Kernel;
using Kernel.Catalogues;
using Microsoft.AspNetCore.Http.Json;
using Storage;

namespace ComplianceApi.Api;

/// <summary>How the host writes its own answers; evaluations are written by <see cref="EvaluationJson"/>, with the same settings.</summary>
[JsonSerializable(typeof(Health))]
[JsonSerializable(typeof(QuestionList))]
[JsonSerializable(typeof(RuleView))]
[JsonSerializable(typeof(Page<RuleView>))]
[JsonSerializable(typeof(Page<RuleSetSummary>))]
[JsonSerializable(typeof(Page<LimitDefinition>))]
[JsonSerializable(typeof(Page<ReferenceDocument>))]
[JsonSerializable(typeof(Page<DutyKind>))]
[JsonSerializable(typeof(ReasonBook))]
[JsonSerializable(typeof(Page<CalculationView>))]
[JsonSerializable(typeof(CalculationResult))]
[JsonSerializable(typeof(EvaluationPage))]
[JsonSerializable(typeof(ApplianceProfile))]
[JsonSerializable(typeof(AuditStatus))]
[JsonSerializable(typeof(Page<AuditStatus>))]
[JsonSerializable(typeof(Page<FindingRow>))]
[JsonSerializable(typeof(ApiCatalog))]
[JsonSerializable(typeof(SamplingAnswer))]
[JsonSerializable(typeof(PreviewStatus))]
[JsonSerializable(typeof(LookReport))]
[JsonSerializable(typeof(Page<PreviewStatus>))]
[JsonSerializable(typeof(Page<ChangeRow>))]
internal sealed partial class ApiJson : JsonSerializerContext
{
    public static ApiJson Wire { get; } = new(new JsonSerializerOptions(EvaluationJson.Wire.Options) { TypeInfoResolver = null });

    /// <summary>Lets typed results write as the wire form does.</summary>
    public static void Configure(JsonOptions options)
    {
        options.SerializerOptions.DefaultIgnoreCondition = Wire.Options.DefaultIgnoreCondition;
        options.SerializerOptions.Encoder = Wire.Options.Encoder;
        options.SerializerOptions.TypeInfoResolverChain.Insert(0, EvaluationJson.Default);
        options.SerializerOptions.TypeInfoResolverChain.Insert(1, Default);
    }
}
