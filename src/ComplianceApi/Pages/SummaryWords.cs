using Audits;

namespace ComplianceApi;

/// <summary>What the page of an audit and its report say in the same words.</summary>
internal static class SummaryWords
{
    public static string Head(AuditSummary summary) => $"Deadlines are seen from {Say.Day(summary.LookedAtOn)}."
        + (summary.CompletenessRate is { } rate ? $" {Say.Share(rate)} of the judged records leave no question open." : "");

    public static string Appliance(WorstAppliance record) => string.Join(" ", new[] { record.Maker, record.Model, record.SerialNumber }.OfType<string>());

    public static string Closing(WorstAppliance record) =>
        (record.ExpectedClass is { } expected ? $"expected class {OutcomeWords.Class(expected)}; " : "")
        + (record.ClosingAllowed ? "dealt with by the record" : "nothing recorded that ends it");

    public static string Cut(int shown, int total) => shown < total ? $"{Say.Count(shown)} of {Say.Count(total)} are shown." : "";
}
