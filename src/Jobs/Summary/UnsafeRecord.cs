using Findings;
using Records;
using Storage;

namespace Jobs.Summary;

/// <summary>A record that shows a danger, with what an engineer needs to go there.</summary>
/// <param name="Record">Which record it is, and of what.</param>
/// <param name="Gravest">Its gravest finding.</param>
public sealed record UnsafeRecord(WorstAppliance Record, Finding Gravest)
{
    /// <summary>Of an answer to a record; null where it is not unsafe, or another record of the audit replaces it.</summary>
    public static UnsafeRecord? Of(AuditLine line, ServiceRecord? record)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line is { SupersededBy: null, Evaluation: { Outcome: OverallOutcome.Unsafe } evaluation }
            ? new UnsafeRecord(
                WorstAppliance.Of(line.Line, evaluation, record),
                evaluation.Findings.Where(finding => finding.Outcome == Outcome.Unsafe).MaxBy(finding => finding.ExpectedClass)!)
            : null;
    }

    /// <summary>The gravest first, as in the summary.</summary>
    public static IReadOnlyList<UnsafeRecord> Sorted(IEnumerable<UnsafeRecord> all) => SummaryMerge.GravestFirst(all, one => one.Record);
}
