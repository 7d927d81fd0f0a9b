using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.FlueGasSuitsFlue), Topic(Topics.Flue), CommonPractice]
[Title("The flue gas is no hotter than the maker allows for the flue")]
[Why("Flues of plastic soften and part at temperatures that a scaled or badly set boiler can reach. Out of sight a parted joint lets combustion products into the building.")]
[Coverage(Coverage.MayUnderReport, "only readings after the work are judged, and only where the maker's maximum is recorded")]
public sealed class FlueGasSuitsFlueRule : VisitRule
{
    protected override string SubjectPointer => "/flue/material";

    protected override bool? Applies(Visit visit) => visit.Maker.FlueTemperatureCMax is not null && Hottest(visit) is not null;

    protected override Verdict Assess(Visit visit, Look look)
    {
        var limit = LimitSheet.Maker(null, look.Note(visit.Maker.FlueTemperatureCMax), "Cel", visit.MakersSourceOf(static maker => maker.FlueTemperatureCMax));
        var hottest = Hottest(visit)!.Value;
        return limit.Allows(hottest)
            ? look.Pass($"the flue gas leaves at {hottest} degrees Celsius, at most the maker's {limit.Max}").Against(limit, hottest)
            : TooHot(visit, look, $"the flue gas leaves at {hottest} degrees Celsius, more than the maker's {limit.Max}").Against(limit, hottest)
                .Warn(Cautions.CarbonMonoxide).Advise("Find out why the flue gas is so hot, look over every joint of the flue, and read the flue again.");
    }

    private static Verdict TooHot(Visit visit, Look look, FormattableString found)
    {
        var material = look.Note(visit.Record.Flue?.Material);
        if (material == FlueMaterial.Metal)
            return look.Advisory($"{found}; a flue of metal bears it");
        if (visit.HasDefectOf(Topics.Flue, "/flue"))
            return look.Advisory($"{found}; a defect of the flue is recorded");

        return material is null
            ? look.Missing($"{found}, and the record does not say what the flue is made of", "/flue/material")
            : look.Missing($"{found}, the flue is of plastic, and no defect of it is recorded", "/defects");
    }

    private static decimal? Hottest(Visit visit) => visit.ReadingsAfterWork?.Max(reading => reading.Value.FlueTemperatureC);
}
