using Findings;
using Kernel;
using Records;
using Visits;
using Visits.Computations;

namespace Rules.Plausibility;

[Id(RuleIds.CondensingAgrees), Topic(Topics.Plausibility), CommonPractice]
[Title("The flue gas of a boiler that is recorded as not condensing is not colder than its dew point")]
[Why("Below its dew point flue gas condenses, whatever the boiler was made for. Taken for one that does not condense, a boiler is asked nothing of its trap, and products come into the room through a dry one.")]
[Coverage(Coverage.MayOverReport, "air drawn in at the probe cools the sample, and moist combustion air lifts the dew point a little")]
public sealed class CondensingAgreesRule : VisitRule
{
    protected override string SubjectPointer => "/appliance/condensing";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Appliance.Condensing) is not { } condenses)
            return look.NotApplicable($"the record does not say whether the boiler condenses");
        if (condenses)
            return look.Pass($"the boiler is recorded as condensing");

        var isCompared = false;
        foreach (var (_, reading) in visit.ReadingsAfterWork ?? [])
        {
            if (reading.FlueTemperatureC is not { } flue || DewPointOf(reading, visit) is not { } dewPoint)
                continue;
            if (flue < dewPoint)
            {
                return look.Missing($"the boiler is recorded as not condensing, and its flue gas leaves at {flue} C, colder than its dew point of {dewPoint:0.0} C", look.Subject).Contradicting(Part.Plate, Part.Trap)
                    .Warn(Cautions.CarbonMonoxide).Advise("See on the data plate and in the maker's instructions whether the boiler condenses, and whether it has a trap.");
            }

            isCompared = true;
        }

        return isCompared
            ? look.Pass($"the boiler is recorded as not condensing, and its flue gas is nowhere colder than its dew point")
            : look.NotApplicable($"no reading after the work shows flue temperature and CO2 together");
    }

    private static decimal? DewPointOf(CombustionReading reading, Visit visit)
    {
        if (reading.Co2Percent is not { } co2)
            return null;

        var dewPoint = FlueLossComputations.FlueDewPoint;
        var values = dewPoint.Complete(new Dictionary<string, object>(StringComparer.Ordinal) { ["fuel"] = visit.GasFamily, ["co2Percent"] = co2 });
        return dewPoint.FaultsOf(values).Count == 0 ? dewPoint.NumberOf(values) : null;
    }
}
