using Findings;
using Records;
using Storage;
using Visits;
using Visits.Facts;
using Visits.Judging;

namespace Jobs.Queue;

/// <summary>Makes visits of the records of an audit, so that the history of their appliances knows them.</summary>
public sealed class AuditVisits(ComplianceEngine engine, TimeProvider clock)
{
    /// <summary>
    /// The rows of a chunk's visits. They are known from now on, and never at the start of their own audit, as at which all its records
    /// are judged: so its lines do not see one another, whatever the order in which they are judged.
    /// </summary>
    internal VisitRows RowsOf(Chunk chunk, IReadOnlyList<JudgedLine> lines)
    {
        var (now, earliest) = (clock.GetUtcNow(), chunk.AuditStartedAt.AddTicks(1));
        return new VisitRows(chunk.Tenant, lines.Where(line => line.Line.Evaluation is not null).Select(line => VisitOf(chunk.AuditId, line)), now > earliest ? now : earliest, Law, chunk.KeyId);
    }

    /// <summary>What the law makes of a record as a document.</summary>
    internal IRecordLaw Law => engine.Law;

    /// <summary>What falls due by a record.</summary>
    internal IReadOnlyList<DueDate> DueOf(ServiceRecord record, Lookup beside, Evaluation? said = null) => engine.Law.DueDatesOf(engine.VisitOf(record, beside), said);

    private ArrivingVisit VisitOf(string auditId, JudgedLine judged) =>
        new(EvaluationIds.Of(auditId, judged.Line.Line), judged.Record!, judged.Line.Evaluation!, judged.Line.SupersededBy is null ? DueOf(judged.Record!, judged.Beside, judged.Line.Evaluation) : [])
        {
            AuditId = auditId,
            Line = judged.Line.Line,
            ReplacedBy = judged.Line.SupersededBy is { } line ? EvaluationIds.Of(auditId, line) : null,
        };
}
