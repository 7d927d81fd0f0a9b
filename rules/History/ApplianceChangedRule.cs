using Findings;
using Kernel;
using Visits;
using Wire;

namespace Rules.History;

[Id(RuleIds.ApplianceChanged), Topic(Topics.Plausibility), CommonPractice]
[Title("A serial number stays with one maker, one model and one fuel")]
[Why("Where one serial number appears with two makes, models or fuels, a record is wrong or a conversion went unrecorded. The history and limits of another boiler may then be applied to this one.")]
[Serves(Part.WhereRecorded)]
[Coverage(Coverage.MayOverReport, "two makers may have given the same number")]
public sealed class ApplianceChangedRule : VisitRule
{
    protected override string SubjectPointer => "/appliance";

    protected override Verdict Assess(Visit visit, Look look)
    {
        var before = visit.Earlier.FirstOrDefault(earlier => earlier.Fuel is not null);
        if (visit.OfAnotherMaker is { } other && !(other.FinishedAt < before?.FinishedAt))
        {
            return look.Lacks(visit.Record.Appliance.Maker, out _)
                ? look.Missing($"on {other.Date} a maker was recorded for this serial number, and now none is")
                : Changed(look.Advisory($"on {other.Date} the serial number was recorded for another maker's appliance"));
        }

        if (before is null)
            return look.NotApplicable($"no earlier visit with this serial number is known");

        look.Note(visit.Record.Appliance.Maker);
        if (before.Fuel != WireNames.Of(visit.Fuel) && visit.Record.PartsFitted?.Any(part => part.ForFuel == visit.Fuel) != true)
            return Changed(look.Advisory($"on {before.Date} another fuel was recorded, and no part for {visit.Fuel} was fitted on this visit"));
        if (look.Note(visit.Record.Appliance.Model) is { } model && before.Model is { } modelBefore && !IsSame(model, modelBefore))
            return Changed(look.Advisory($"on {before.Date} another model was recorded under this serial number"));

        return look.Pass($"nothing in maker, model and fuel contradicts the visit of {before.Date}");
    }

    private static Verdict Changed(Verdict verdict) => verdict.Advise("Read the data plate again, and correct the record that is wrong.");

    private static bool IsSame(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);
}
