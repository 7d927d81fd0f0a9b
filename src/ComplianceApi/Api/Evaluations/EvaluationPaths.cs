using Jobs.Looks;
using Jobs.Previews;
using Jobs.Summary;

namespace ComplianceApi.Api.Evaluations;

/// <summary>Where stored evaluations are read; whatever names one by its id is answered with its path.</summary>
internal static class EvaluationPaths
{
    /// <summary>The path of one.</summary>
    public static string Of(string evaluationId) => $"/v1/evaluations/{evaluationId}";

    /// <summary>The row with the path of its evaluation.</summary>
    public static ChangeRow Addressed(this ChangeRow row) => row with { Evaluation = Of(row.Evaluation) };

    /// <summary>The report with the paths of its evaluations.</summary>
    public static LookReport Addressed(this LookReport report) => report with
    {
        Items = new SummaryTable<LookItem> { Total = report.Items.Total, Rows = [.. report.Items.Rows.Select(Addressed)] },
    };

    private static LookItem Addressed(LookItem item) => item with { Records = [.. item.Records.Select(one => one with { Evaluation = Of(one.Evaluation) })] };
}
