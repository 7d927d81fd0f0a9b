using System.Data.Common;
using System.Text;
using Checking;
using Jobs.Queue;
using Kernel.Catalogues;
using Storage;
using Visits.Judging;

namespace Jobs.Previews;

/// <summary>
/// Judges the evaluations of one chunk twice: by the rules in force and by the candidate, both with what stood beside the record when it
/// was first judged and as seen from the same day, so that nothing but the change of rules makes a difference.
/// </summary>
public sealed class PreviewWork(Database database, CandidateEngines engines, ProfileStore profiles, ResultStore results, PreviewStore previews)
{
    private readonly StoredVisits _visits = new(database);

    /// <summary>Does one chunk.</summary>
    /// <exception cref="DbException">The store does not answer; the chunk waits for the next try.</exception>
    public async Task RunAsync(Chunk chunk, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(chunk);
        var candidate = await previews.CandidateAsync(chunk.Tenant, chunk.AuditId, cancel);
        if (EngineOf(candidate, out var why) is not { } engine)
        {
            await previews.FailAsync(chunk.Tenant, chunk.AuditId, why, cancel);
            return;
        }

        var ids = chunk.Lines.Select(line => Encoding.UTF8.GetString(line.Utf8.Span)).ToList();
        var stored = await _visits.FindAsync(chunk.Tenant, ids, cancel);
        var check = new StoredRecordCheck(profiles, chunk.Tenant);
        var (sums, rows) = (new PreviewParts(), new List<object?[]>());
        foreach (var (line, id) in chunk.Lines.Zip(ids))
        {
            var problem = chunk.Attempts > Chunk.MostAttempts
                ? $"Whoever judged it ended before it was done, {Chunk.MostAttempts} times in a row."
                : await JudgeAsync(line.Number, id, stored.GetValueOrDefault(id));
            if (problem is null)
                continue;
            sums.Rejected++;
            rows.Add(PreviewRows.Of(chunk, line.Number, id, problem));
        }

        await results.CompleteAsync(chunk, sums.Judged, sums.Rejected, sums.ToBytes(), transaction => transaction.InsertAsync(PreviewRows.Table, PreviewRows.Columns, rows, cancel), cancel);

        async Task<string?> JudgeAsync(long number, string id, StoredVisit? visit)
        {
            try
            {
                var was = await check.LookUpAsync(visit, cancel);
                if (!was.IsThere)
                    return was.Problem;

                var before = engines.InForce.Answer(was.Record, was.Beside, was.AsOf, was.LookedAtOn);
                var after = engine.Answer(was.Record, was.Beside, candidate.AsOf ?? was.AsOf, was.LookedAtOn);
                var changes = FindingDiff.Between(before.Findings, after.Findings).ToList();
                sums.Add(was.Record, before.Outcome, after.Outcome, changes, engines.InForce.Catalogue.Info, engine.Catalogue.Info);
                rows.AddRange(PreviewRows.Of(chunk, number, id, was.Record, changes));
                return null;
            }
            catch (Exception fault) when (fault is not (DbException or OperationCanceledException))
            {
                return $"It could not be judged ({fault.GetType().Name}).";
            }
        }
    }

    /// <summary>A candidate fitted when it was accepted; another version of this service may have come since.</summary>
    private ComplianceEngine? EngineOf(Candidate candidate, out string why)
    {
        try
        {
            why = "";
            return engines.Of(candidate);
        }
        catch (CatalogueException fault)
        {
            why = $"The candidate does not fit the limits of this version: {string.Join("; ", fault.Gaps)}.";
            return null;
        }
    }
}
