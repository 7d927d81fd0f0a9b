using Checking;
using Kernel.Catalogues;
using Rules;
using Storage;
using Visits;
using Visits.Judging;

namespace WholeRecords.Tests;

/// <summary>What the rules of today say of a whole record. Null where it is refused.</summary>
internal sealed record Judged(WholeRecord Whole, string? Outcome, bool? MayClose, Findings.Evaluation? Said = null)
{
    /// <summary>The state of the worst danger, whether all are handled, and at least the kinds of duty that are wanted open; true where nothing is wanted.</summary>
    public bool HasSituationWanted => Whole.State is null || (Said?.Situation is { } situation
        && Whole.AcceptedStates.Contains(Wire.WireNames.Of(situation.State)) && situation.Handled == Whole.IsHandled && Whole.Open.All(situation.Open.Contains));

    /// <summary>Behind the last visit, so that each has happened, on whatever day the tests run.</summary>
    private static readonly DateTimeOffset ReceivedAt = new(2026, 12, 31, 12, 0, 0, TimeSpan.Zero);

    public bool HasOutcomeWanted => Outcome is not null && Whole.AcceptedOutcomes.Contains(Outcome);

    public bool HasClosingWanted => MayClose is { } may && Whole.AcceptedClosings.Contains(may);

    /// <summary>All whole records, on the road of the command check: read, looked up in a store that holds nothing, judged.</summary>
    public static async Task<IReadOnlyList<Judged>> AllAsync(CancellationToken cancel)
    {
        var folder = Directory.CreateTempSubdirectory("whole-");
        try
        {
            using var database = Database.Open(Path.Combine(folder.FullName, "empty.db"), StoreOpening.OrMake);
            var engine = ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly));
            var check = new RecordCheck(engine, new ProfileStore(database), new EvaluationStore(database, engine.Law), Tenant.Local, ReceivedAt);
            var histories = new HistoryStore(database, engine.Law);
            var judged = new List<Judged>();
            foreach (var whole in WholeRecord.All)
                judged.Add(await OneAsync(whole));
            return judged;

            async Task<Judged> OneAsync(WholeRecord whole)
            {
                if (Held.Read(whole.Utf8).Record is not { } record)
                    return new Judged(whole, null, null);
                var said = await check.CheckAsync(record, (await histories.FindAsync(Tenant.Local, [record], ReceivedAt, cancel))[0], cancel);
                return said.Evaluation is { } evaluation
                    ? new Judged(whole, Wire.WireNames.Of(evaluation.Outcome), evaluation.Closing.Allowed, evaluation)
                    : new Judged(whole, null, null);
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
