using Findings;
using Records;
using Storage;

namespace Jobs.Summary;

/// <summary>Adds records, or the sums of other parts, to sums.</summary>
public sealed class SummaryBuilder(DateOnly lookedAtOn)
{
    /// <summary>How many days ahead a duty counts as due soon.</summary>
    public const int SoonDays = 60;

    private const string NotRecorded = "(not recorded)";

    /// <summary>The sums so far.</summary>
    internal SummaryParts Parts { get; } = new();

    /// <summary>What the records show that were added.</summary>
    /// <param name="read">How many records were read.</param>
    /// <param name="cautions">The cautions that every answer carries.</param>
    public AuditSummary ToSummary(long read, IReadOnlyList<string> cautions) => Parts.ToSummary(lookedAtOn, read, cautions);

    /// <summary>Adds one record.</summary>
    public void Add(JudgedLine judged)
    {
        ArgumentNullException.ThrowIfNull(judged);
        if (judged is not { Record: { } record, Line: { Evaluation: { } evaluation } line })
        {
            Parts.Rejected++;
            Parts.FirstFault = FirstFault.Earlier(Parts.FirstFault, FirstFault.Of(judged.Line));
            return;
        }

        Parts.Judged++;
        if (line.SupersededBy is not null)
        {
            Parts.Superseded++;
            return;
        }

        Parts.Complete += evaluation.Counts is { Missing: 0, Error: 0 } && evaluation.Missing.Count == 0 ? 1 : 0;
        Count(Parts.Outcomes, evaluation.Outcome);
        var ruleSet = $"{evaluation.RuleSet.Id} {evaluation.RuleSet.Version} {evaluation.RuleSet.LawHash} {evaluation.RuleSet.CodeHash}";
        Parts.RuleSets[ruleSet] = Parts.RuleSets.GetValueOrDefault(ruleSet) + 1;
        Count(At(Parts.Engineers, record.Engineer?.LicenceNumber ?? NotRecorded), evaluation.Outcome);
        Count(At(Parts.Models, $"{record.Appliance.Maker ?? NotRecorded} {record.Appliance.Model ?? NotRecorded}"), evaluation.Outcome);
        foreach (var instrument in (record.Instruments ?? []).Select(instrument => instrument.SerialNumber ?? NotRecorded).Distinct(StringComparer.Ordinal))
            Count(At(Parts.Instruments, instrument), evaluation.Outcome);
        foreach (var finding in evaluation.Findings)
        {
            if (finding.Outcome is Outcome.Pass or Outcome.NotApplicable)
                continue;
            Count(At(Parts.Topics, finding.Topic), finding);
            Count(At(Parts.Rules, finding.RuleId), finding);
        }

        RatioDistribution.Add(Parts.CoCo2Ratios, record, evaluation);
        AddWorst(line, record, evaluation);
        AddDue(line, record, evaluation);
    }

    private void AddWorst(AuditLine line, ServiceRecord record, Evaluation evaluation)
    {
        if (evaluation.Counts is { Unsafe: 0, Error: 0, Missing: 0, Advisory: 0 })
            return;

        Parts.Marked++;
        Parts.Worst.Add(WorstAppliance.Of(line.Line, evaluation, record));
        SummaryMerge.CutWorst(Parts.Worst, force: false);
    }

    private void AddDue(AuditLine line, ServiceRecord record, Evaluation evaluation)
    {
        foreach (var due in evaluation.Due.Where(due => due.BeforeUse != true && due.By <= lookedAtOn.AddDays(SoonDays)))
        {
            var isOverdue = due.By < lookedAtOn;
            Parts.Overdue += isOverdue ? 1 : 0;
            Parts.SoonDue += isOverdue ? 0 : 1;
            var list = isOverdue ? Parts.OverdueFirst : Parts.SoonDueFirst;
            list.Add(new DueEntry
            {
                Line = line.Line,
                RecordId = evaluation.RecordId,
                Maker = record.Appliance.Maker,
                SerialNumber = record.Appliance.SerialNumber,
                What = due.What,
                By = due.By,
                RuleId = due.RuleId,
            });
            SummaryMerge.CutDue(list, force: false);
        }
    }

    internal static T At<T>(SortedDictionary<string, T> table, string key) where T : new()
    {
        if (!table.TryGetValue(key, out var counts))
            table.Add(key, counts = new T());
        return counts;
    }

    private static void Count(OverallCounts counts, OverallOutcome outcome)
    {
        counts.Unsafe += outcome == OverallOutcome.Unsafe ? 1 : 0;
        counts.Incomplete += outcome == OverallOutcome.Incomplete ? 1 : 0;
        counts.Advisory += outcome == OverallOutcome.Advisory ? 1 : 0;
        counts.Pass += outcome == OverallOutcome.Pass ? 1 : 0;
    }

    private static void Count(FindingCounts counts, Finding finding)
    {
        var (outcome, isMust) = (finding.Outcome, finding.Weight != Weight.Should);
        counts.Unsafe += outcome == Outcome.Unsafe ? 1 : 0;
        counts.Error += outcome == Outcome.Error ? 1 : 0;
        counts.Missing += outcome == Outcome.Missing && isMust ? 1 : 0;
        counts.NotLookedAt += outcome == Outcome.Missing && !isMust ? 1 : 0;
        counts.Advisory += outcome == Outcome.Advisory ? 1 : 0;
    }
}
