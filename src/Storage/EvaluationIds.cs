using System.Globalization;

namespace Storage;

/// <summary>Ids of what was said of the records of audits. They sort as the records do.</summary>
internal static class EvaluationIds
{
    /// <summary>The id of what an audit says of one record.</summary>
    public static string Of(string auditId, long line) => string.Create(CultureInfo.InvariantCulture, $"{auditId}.{line:D9}");

    /// <summary>Below and above all ids of one audit.</summary>
    public static (string Below, string Above) Around(string auditId) => ($"{auditId}.", $"{auditId}/");
}
