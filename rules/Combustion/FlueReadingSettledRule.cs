using Findings;
using Kernel;
using Visits;

namespace Rules.Combustion;

[Id(RuleIds.FlueReadingSettled), Topic(Topics.Combustion), CommonPractice]
[Title("The boiler has run steadily for long enough before the flue is read")]
[Why("Just after lighting, the figures are still moving as burner and exchanger warm up. A reading taken then can blame a good burner or excuse a bad one.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Uses(LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.SettledMinutes)]
[Coverage(Coverage.MayOverReport, "some boilers settle sooner")]
public sealed class FlueReadingSettledRule : AnalysisRule
{
    protected override Verdict Judge(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Combustion?.SettledMinutes, out var minutes))
            return look.Missing();

        var limit = visit.Limits[LimitIds.SettledMinutes];
        return (limit.Allows(minutes)
            ? look.Pass($"the boiler ran {minutes} minutes before the reading, at least {limit.Min}")
            : look.Advisory($"the boiler ran {minutes} minutes before the reading, less than {limit.Min}")
                .Advise("Let the boiler settle at maximum rate and read the flue again.")).Against(limit, minutes);
    }
}
