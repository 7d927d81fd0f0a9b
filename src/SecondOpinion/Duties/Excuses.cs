using System.Text.Json;
using Records;

namespace SecondOpinion.Duties;

/// <summary>What the reasons of a record excuse, by the table of reasons.</summary>
internal sealed class Excuses(Visit visit)
{
    /// <summary>By reason, contradicted, or null where nothing on record excuses the member.</summary>
    public DutyState? Of(DutyKind kind, DutyWeight weight, string pointer)
    {
        DutyState? best = null;
        foreach (var said in visit.Record.Work?.NotDone ?? [])
        {
            if (said is not { What: { } what, Because: { } because } || !(Pages.IsWithin(pointer, what) || Pages.IsWithin(what, pointer)))
                continue;
            var rows = ReasonTable.InForce.Rows.Where(row => Fits(row, kind, weight, because, what, pointer)).ToList();
            if (rows.Any(row => row.IsContradicted(visit.One)))
                return DutyState.Contradicted;
            if (rows.Any(row => row.Needs.All(need => Needs.IsMet(visit, need))) && !IsBanned(kind, weight, because, pointer))
                best = DutyState.ByReason;
        }

        return best;
    }

    public bool IsAnyContradicted => (visit.Record.Work?.NotDone ?? []).Any(said => said is { What: { } what, Because: { } because }
        && ReasonTable.InForce.Rows.Any(row => row.Because == because && row.What.Any(pattern => Pages.Meets(what, pattern)) && row.IsContradicted(visit.One)));

    private bool Fits(Reason row, DutyKind kind, DutyWeight weight, NotDoneReason because, string what, string pointer) =>
        row.Because == because && row.Duty == Name(kind) && (weight == DutyWeight.Should || row.Weight == DutyWeight.Must)
        && row.What.Any(pattern => Pages.Meets(what, pattern) || Pages.Meets(pointer, pattern))
        && IsOfItem(row.Where, what)
        && row.LeftInUse switch { CountsInUse.Only => visit.IsInUse, CountsInUse.Not => visit.IsLeftOff, _ => true }
        && (row.Fuels is null || (visit.Record.Appliance.Fuel is { } fuel && row.Fuels.Contains(fuel)))
        && row.Jobs?.Contains(visit.Record.JobType) != false
        && !row.NotJobs.Contains(visit.Record.JobType)
        && !(row.Source.Contains("(ca)", StringComparison.Ordinal) && MayAnalysisNotStandIn);

    /// <summary>The law of the day or of the place knows no 26(9)(ca).</summary>
    private bool MayAnalysisNotStandIn => ReasonTable.InForce.Never.Any(ban => ban.Jurisdiction == visit.Record.Jurisdiction || visit.One.AsOf < ban.Before);

    /// <summary>Is the item meant one of the kind that the row names? Of a list that lacks the item nothing more is known.</summary>
    private bool IsOfItem(IReadOnlyDictionary<string, string>? where, string what)
    {
        if (where is null)
            return true;
        var item = string.Join('/', what.Split('/').Take(what.StartsWith("/combustion/", StringComparison.Ordinal) ? 4 : 3));
        return where.All(one => visit.Pages.Text($"{item}/{one.Key}") == one.Value);
    }

    private bool IsBanned(DutyKind kind, DutyWeight weight, NotDoneReason because, string pointer) => ReasonTable.InForce.Never.Any(ban =>
        ban.Because?.Contains(because) != false
        && ban.Duties?.Contains(Name(kind), StringComparer.Ordinal) != false
        && ban.What?.Any(pattern => Pages.Meets(pointer, pattern)) != false
        && (ban.Where is null || IsOfItem(ban.Where, pointer))
        && (ban.Weight is null || ban.Weight == weight)
        && (ban.LeftInUse is null or CountsInUse.Either || (ban.LeftInUse == CountsInUse.Only) == visit.IsInUse)
        && ban.Jurisdiction is null && ban.Before is null
        && (ban.Unless is null || !Needs.IsMet(visit, ban.Unless)));

    private static string Name(DutyKind kind) => JsonNamingPolicy.CamelCase.ConvertName(kind.ToString());
}
