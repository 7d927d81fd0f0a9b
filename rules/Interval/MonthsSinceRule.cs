using Findings;
using Kernel;
using Visits;

namespace Rules.Interval;

/// <summary>A rule that this visit follows the one before, or the installation, within some months. Late is advice: nobody can undo it today.</summary>
public abstract class MonthsSinceRule : VisitRule
{
    protected sealed override string SubjectPointer => "/previousVisit";

    protected abstract Limit Interval(Visit visit, Look look);

    /// <summary>Beyond it a longer interval is an advisory, whoever allows it.</summary>
    protected abstract Limit UsualInterval(Visit visit);

    /// <summary>Does a stored visit count as the one before?</summary>
    protected abstract bool Counts(PastVisit earlier);

    protected sealed override Verdict Assess(Visit visit, Look look)
    {
        look.Note(visit.Record.PreviousVisit?.FinishedAt);
        look.Note(visit.Record.PreviousVisit?.DeemedOn);
        look.Note(visit.Record.Appliance.InstalledOn);
        if (visit.ContradictionOfDates() is { } contradiction)
            return look.Missing(contradiction, "/previousVisit/deemedOn");
        var attended = visit.LastAttended(Counts);
        if ((attended ?? visit.Appliance.InstalledOn) is not { } last)
            return look.Missing($"neither an earlier visit nor the installation is dated", "/previousVisit/finishedAt", "/appliance/installedOn");

        var limit = Interval(visit, look);
        var dueBy = last.AddMonths((int)limit.Max!.Value);
        var since = attended is not null ? "the visit before" : "the installation, since no earlier visit is dated";
        if (visit.Date <= dueBy && UsualInterval(visit) is var usual && visit.Date > last.AddMonths((int)usual.Max!.Value))
        {
            return look.Advisory($"this visit was due by {dueBy}, {limit.Max} months after {since}, which the maker allows by the record and is longer than the usual {usual.Max}")
                .Against(limit).Warn(Cautions.MakerDecides).Advise("Make sure of the maker's interval in its source.");
        }

        return visit.Date <= dueBy
            ? look.Pass($"this visit was due by {dueBy}, {limit.Max} months after {since}").Against(limit)
            : look.Advisory($"this visit is {DayLimits.Days(visit.Date.DayNumber - dueBy.DayNumber)} late: it was due by {dueBy}, {limit.Max} months after {since}")
                .Against(limit).Advise("Tell the responsible person that the interval was exceeded, and note the next date.");
    }
}
