using Jobs.Summary;

namespace Wording;

/// <summary>What the page of an audit and its report say in the same words.</summary>
public static class SummaryWords
{
    /// <summary>From which day deadlines are seen, and how many records leave nothing open.</summary>
    public static string Head(AuditSummary summary) => $"Deadlines are seen from {Say.Day(summary.LookedAtOn)}."
        + (summary.CompletenessRate is { } rate ? $" {Say.Share(rate)} of the judged records leave no question open." : "");

    /// <summary>Where and when: "P-00188, visited 14 September 2026, engineer 7000285".</summary>
    public static string Visit(WorstAppliance record) => string.Join(", ", new[]
    {
        record.Premises ?? "premises not recorded",
        record.VisitedOn is { } day ? $"visited {Say.Day(day)}" : null,
        record.Engineer is { } engineer ? $"engineer {engineer}" : "engineer not recorded",
    }.OfType<string>());

    /// <summary>What is said where no record shows a danger: only of those that could be judged.</summary>
    public static string NoDanger(AuditSummary summary) => summary.Records switch
    {
        { Judged: 0 } records => $"{(records.Read == 1 ? "The record" : $"None of the {Say.Count(records.Read)} records")} could {(records.Read == 1 ? "not " : "")}be judged, so nothing is known of any danger.",
        { Rejected: > 0 } records => $"No danger is shown by the {Say.Of(records.Judged, "record")} that could be judged; {Say.Of(records.Rejected, "record")} could not be judged, and nothing is known of {(records.Rejected == 1 ? "it" : "them")}. That is about the records, not about the boilers.",
        _ => "No record shows a danger. That is about the records, not about the boilers.",
    };

    /// <summary>The first fault with its place; null where each record could be judged.</summary>
    public static string? Fault(AuditSummary summary) => summary.FirstFault is not { } fault ? null
        : $"Line {Say.Count(fault.Line)}{(fault.RecordId is { } id ? $", record {id}" : "")}, {(fault.Pointer.Trim('#', '/').Length > 0 ? Say.Place(fault.Pointer) : "the whole record")}: {Say.Sentence(fault.Detail)}";

    /// <summary>Maker, model and serial number, as far as they are recorded.</summary>
    public static string Appliance(WorstAppliance record) => string.Join(" ", new[] { record.Maker, record.Model, record.SerialNumber }.OfType<string>());

    /// <summary>The class to be expected, and whether the record deals with the danger.</summary>
    public static string Closing(WorstAppliance record) =>
        (record.ExpectedClass is { } expected ? $"expected class {OutcomeWords.Class(expected)}; " : "")
        + (record.Danger is { } danger ? $"{OutcomeWords.Of(danger)}; " : "")
        + (record.Handled ?? record.ClosingAllowed ? "everything that it calls for is recorded" : "not everything that it calls for is recorded");

    /// <summary>How many of how many are shown; empty where all are.</summary>
    public static string Cut(int shown, int total) => shown < total ? $"{Say.Count(shown)} of {Say.Count(total)} are shown." : "";
}
