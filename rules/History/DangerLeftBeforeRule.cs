using Findings;
using Kernel;
using Records;
using Visits;
using Wire;

namespace Rules.History;

[Id(RuleIds.DangerLeftBefore), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "26(9)"), Cites("GSIUR-1998", "34")]
[Title("What became of a danger that an earlier visit left is recorded as a defect")]
[Why("A boiler that was turned off for a danger is often on again within the week. The engineer who comes next may know nothing of it, unless the record asks what became of it.")]
[Coverage(Coverage.MayOverReport, "a danger that another firm put right in between is asked for as well")]
public sealed class DangerLeftBeforeRule : VisitRule
{
    protected override string SubjectPointer => "/defects";

    protected override bool? Applies(Visit visit) => !visit.HadNoAccess && LeftBefore(visit).Any();

    protected override Verdict Assess(Visit visit, Look look)
    {
        var open = OpenBefore(visit).ToList();
        if (open.Count == 0)
            return look.Pass($"what became of a danger that was left at an earlier visit is recorded as a defect");

        var (danger, on) = open[0];
        return (danger.Topic is { } topic
                ? look.Missing($"a danger of the topic {topic} was left at the visit of {on}, and no defect says what became of it", "/defects")
                : look.Missing($"a danger was left at the visit of {on}, and no defect says what became of it", "/defects"))
            .Warn(Cautions.DangerStands).Advise("Record it as a defect, at its place or by its topic alone: put right, when and by what later look, or what was done about it now.");
    }

    /// <summary>The dangers that earlier visits left and of which neither a later visit nor this record spoke, with their days.</summary>
    internal static IEnumerable<(PastDanger Danger, DateOnly On)> OpenBefore(Visit visit) =>
        LeftBefore(visit).Where(left => !visit.RecordedDefects.Any(recorded => SaysWhatBecameOfIt(recorded) && IsOf(left.Danger, recorded.Defect.Subject, recorded.Defect.Topic)));

    /// <summary>The dangers that earlier visits left and of which no later visit spoke again, with their days.</summary>
    private static IEnumerable<(PastDanger Danger, DateOnly On)> LeftBefore(Visit visit)
    {
        List<PastVisit> later = [];
        foreach (var past in visit.MaybeOfThisAppliance.Where(past => past.FinishedAt < visit.Record.FinishedAt.Value))
        {
            foreach (var danger in (past.Dangers ?? []).Where(danger => danger.IsLeft))
            {
                if (!later.Exists(one => SpokeOf(one, danger)))
                    yield return (danger, past.Date);
            }

            later.Add(past);
        }
    }

    // A minor defect of the same topic is no word on a danger, nor is one of another appliance: what is left goes with this boiler, or with the
    // supply that leads to it. How far what was done counts, other rules ask.
    internal static bool SaysWhatBecameOfIt(RecordedDefect recorded) => (recorded.IsOfThisAppliance || recorded.Defect.Concerns == DefectConcern.Supply)
        && (recorded.IsDangerous || recorded.Defect is { Action: DefectAction.Rectified, ReexaminedAt: not null });

    // One that left it as well says so itself, as a danger of its own.
    private static bool SpokeOf(PastVisit later, PastDanger danger) =>
        later.Defects?.Any(defect => defect.Action == WireNames.Of(DefectAction.Rectified) && IsOf(danger, defect.Subject, defect.Topic)) == true || later.Dangers?.Any(other => IsOf(danger, other.Subject, other.Topic)) == true;

    // A word that names a place is of that place alone: of two dangers of one topic it speaks of one. The topic counts where either names none.
    private static bool IsOf(PastDanger danger, string? subject, string? topic) => PlaceOf(subject) is { } place && PlaceOf(danger.Subject) is { } left
        ? DefectWords.IsIn(place, left) || DefectWords.IsIn(left, place)
        : topic is not null && topic == danger.Topic;

    // Where in a list it stood says nothing of another visit's list, and a place in the list of defects nothing of the boiler.
    private static string? PlaceOf(string? subject)
    {
        var place = subject ?? "";
        for (var at = place.IndexOf('/', StringComparison.Ordinal); at >= 0; at = place.IndexOf('/', at + 1))
        {
            if (at + 1 < place.Length && char.IsAsciiDigit(place[at + 1]))
            {
                place = place[..at];
                break;
            }
        }

        return place is "" or "/defects" ? null : place;
    }
}
