using Findings;
using Kernel;
using Kernel.Catalogues;
using Records;
using Rules;
using Visits;
using Visits.Judging;
using Wire;

namespace WholeRecords.Tests.Properties;

/// <summary>The rules of today.</summary>
internal sealed class TodaysEngine : IEngine
{
    /// <summary>Rules of this topic judge what was done about a danger, and are none themselves.</summary>
    private const string Handling = "unsafeSituation";

    private readonly ComplianceEngine _engine = ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly));

    public Answer Judge(ServiceRecord record, Lookup lookup)
    {
        var said = _engine.Evaluate(record, lookup, detail: Detail.Problems);
        var dangers = said.Findings.Where(finding => finding.Outcome == Outcome.Unsafe && finding.Topic != Handling).ToList();
        return new Answer
        {
            Outcome = said.Outcome,
            MayClose = said.Closing.Allowed,
            ClosesAs = said.Closing.Allowed ? said.Closing.ClosesAs : null,
            Rows = [.. said.Findings.Select(finding => new Row(finding.RuleId, finding.Subject, finding.Outcome))],
            Missing = [.. said.Missing.Select(item => new Asked(item.Pointer, "must")), .. said.NotLookedAt.Select(item => new Asked(item.Pointer, "should"))],
            Duties = [.. said.Duties.Select(duty => new Owed(duty.Kind, WireNames.Of(duty.Weight), WireNames.Of(duty.State)))],
            Situation = said.Situation is { } situation ? new Situation(WireNames.Of(situation.State), situation.Handled, situation.Open) : null,
            Dangers = dangers.Select(finding => $"{finding.RuleId} {finding.Subject}").ToHashSet(StringComparer.Ordinal),
            IsHeldByADanger = said.Closing.BlockedBy.Any(rule => dangers.Exists(finding => finding.RuleId == rule)),
        };
    }
}
