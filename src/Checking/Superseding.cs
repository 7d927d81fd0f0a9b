using Findings;
using Records;
using Records.Faults;
using Wire;

namespace Checking;

/// <summary>
/// What a record may do to the stored evaluation that it names in <c>supersedes</c>. A danger that was told once is not taken back by a
/// record of another appliance, nor without a reason.
/// </summary>
/// <param name="record">The record that replaces.</param>
/// <param name="earlier">The record that is to be replaced.</param>
/// <param name="said">What was said of it.</param>
internal sealed class Superseding(ServiceRecord record, ServiceRecord earlier, Evaluation said)
{
    private readonly SupersedesReason? _reason = record.SupersedesBecause?.Reason;

    /// <summary>Could anything get better by replacing it?</summary>
    public bool CanGetBetter => said.Outcome != OverallOutcome.Pass || !said.Closing.Allowed;

    /// <summary>Does the earlier evaluation go on counting for its own appliance?</summary>
    public bool StillStands => _reason == SupersedesReason.WrongAppliance && (said.Outcome == OverallOutcome.Unsafe || !said.Closing.Allowed);

    /// <summary>What is wrong, as far as the two records tell.</summary>
    public IEnumerable<Fault> Faults()
    {
        if (_reason != SupersedesReason.WrongAppliance && !SameAppliance.Of(record, earlier))
        {
            yield return new Fault("#/supersedes", FaultCodes.OtherAppliance,
                "The record must be of the same appliance as the one it replaces: the same maker and serial number or, where either is not recorded, the same premises reference and day. "
                + "If the earlier record was of the wrong appliance, say so in supersedesBecause.");
        }

        if (_reason == SupersedesReason.MeasuredAgain && record.FinishedAt.Value <= earlier.FinishedAt.Value)
        {
            yield return new Fault("#/supersedesBecause/reason", FaultCodes.OutOfOrder,
                $"What was measured again was measured later: this visit must finish after {earlier.FinishedAt.Text}, when the earlier one did.");
        }
    }

    /// <summary>What is wrong once it is known what the record shows.</summary>
    public IEnumerable<Fault> Faults(Evaluation now)
    {
        if (record.SupersedesBecause is null && Better(now) is { Length: > 0 } better)
            yield return new Fault("#/supersedesBecause", FaultCodes.ReasonNeeded, $"Say why: by this record {better}.");
    }

    /// <summary>What is replaced, and what is no longer said.</summary>
    public ReplacedEvaluation Replaced(Evaluation now) => new()
    {
        EvaluationId = record.Supersedes!,
        Outcome = said.Outcome,
        StillStands = StillStands,
        Gone = [.. said.Findings.Where(finding => finding.Outcome == Outcome.Unsafe || (finding.IsProblem && said.Closing.BlockedBy.Contains(finding.RuleId, StringComparer.Ordinal)))
            .Select(finding => (Before: finding, Now: OutcomeNow(now, finding)))
            .Where(pair => pair.Now is null || pair.Now > pair.Before.Outcome)
            .Select(pair => new GoneFinding { RuleId = pair.Before.RuleId, Title = pair.Before.Title, Subject = pair.Before.Subject, Outcome = pair.Before.Outcome, Now = pair.Now })],
    };

    private static Outcome? OutcomeNow(Evaluation now, Finding before) => now.Findings
        .Where(finding => finding.RuleId == before.RuleId && finding.Subject == before.Subject).Select(finding => (Outcome?)finding.Outcome).Min();

    private string Better(Evaluation now)
    {
        var better = new List<string>();
        if (now.Outcome > said.Outcome)
            better.Add($"the outcome goes from {WireNames.Of(said.Outcome)} to {WireNames.Of(now.Outcome)}");
        if (now.Closing.Allowed && !said.Closing.Allowed)
            better.Add("the job can be closed, which it could not before");
        return string.Join(" and ", better);
    }
}
