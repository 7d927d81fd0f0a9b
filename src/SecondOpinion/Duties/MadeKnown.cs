using Records;

namespace SecondOpinion.Duties;

/// <summary>Defects told to the responsible person and, where different, the owner; neither to be had: the supplier or the conveyor.</summary>
internal static class MadeKnown
{
    public static IEnumerable<Owed> Of(Visit visit)
    {
        foreach (var (place, defect) in visit.Defects.Index())
        {
            var isTold = DefectPlace.IsOfThisBoiler(visit, defect) ? IsTold(visit, defect) : DangerElsewhere.IsTold(visit, defect) ? true : null;
            yield return visit.Must(DutyKind.MadeKnown, $"/defects/{place}/told", isTold, "26(9), 34(3)");
        }
    }

    /// <summary>Null: nobody is named, or not everybody that has to be.</summary>
    public static bool? IsTold(Visit visit, Defect defect)
    {
        var told = defect.Told ?? [];
        var isOwner = told.Any(one => one is ToldParty.Owner or ToldParty.LandlordOrAgent);
        var isResponsible = told.Contains(ToldParty.ResponsiblePerson);
        var isElsewhere = visit.Record.Appliance.Fuel switch
        {
            Fuel.NaturalGas => told.Contains(ToldParty.Transporter),
            Fuel.Propane or Fuel.Butane => told.Contains(ToldParty.Supplier),
            // Whose gas it is, nobody says.
            _ => told.Contains(ToldParty.Transporter) && told.Contains(ToldParty.Supplier),
        };
        return visit.Record.Premises?.Use switch
        {
            PremisesUse.OwnerOccupied => isResponsible || isOwner || isElsewhere,
            _ => (isResponsible && isOwner) || (isOwner && defect.Permission == Consent.NobodyPresent) || (defect.Permission == Consent.NobodyPresent && isElsewhere),
        } ? true : null;
    }
}
