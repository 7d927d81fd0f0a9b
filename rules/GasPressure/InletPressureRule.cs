using Findings;
using Kernel;
using Rules.Duties;
using Rules.HeatInput;
using Visits;

namespace Rules.GasPressure;

[Id(RuleIds.InletPressure), Topic(Topics.GasPressure), Cites("GSIUR-1998", "26(9)(c)"), Cites("EN-437")]
[Title("The operating pressure at the appliance inlet is at least the maker's, or within the default band where the maker gives none")]
[Why("Too little pressure under load upsets ignition and flame; too much pushes in more gas than the burner is built for. Either can lie behind poor combustion that cleaning will not cure.")]
[Serves(Part.Pressure)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.FlueGasCo2, LimitIds.FlueGasO2,
    LimitIds.InletPressure, LimitIds.InletPressureRange, LimitIds.HeatInputDeviation, LimitIds.GasRateSeconds, LimitIds.GasRateWarmMinutes,
    LimitIds.CalibrationMonths, LimitIds.CoPpm, LimitIds.MaximumRateLoad)]
[Coverage(Coverage.MayUnderReport, "without the maker's lowest pressure the general band decides")]
public sealed class InletPressureRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply/applianceInletMbar";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.GasSupply?.ApplianceInletMbar) is not { } pressure)
            return visit.NoPressure(look, "the operating pressure at the appliance inlet", "/gasSupply/applianceInletMbar");

        var doubt = look.DoubtOf(visit, visit.Record.GasSupply?.ApplianceInletMbar);
        var standard = visit.Limits[LimitIds.InletPressure];
        var tested = visit.Limits[LimitIds.InletPressureRange];
        var band = BandOf(visit, look, standard);
        FormattableString found = $"the appliance inlet shows {pressure} mbar in operation";

        if (band.Allows(pressure))
        {
            if (!standard.Allows(pressure))
                return look.Advisory($"{found}, which the maker's {band.Min} mbar allows and the default of {standard.Min} mbar does not").Against(band, pressure, doubt);

            return pressure < visit.Lookup.ProfileLimits?.InletPressureMbarMin
                ? look.Advisory($"{found}, which the record's {band.Min} mbar of the maker allows and the {visit.Lookup.ProfileLimits.InletPressureMbarMin} mbar of the stored profile do not")
                    .Against(band, pressure, doubt)
                : look.Pass($"{found}, within {band.Min} to {band.Max} mbar").Against(band, pressure, doubt);
        }

        // Too much pressure, or so far from nominal that no liquefied-gas appliance is tested there.
        if (pressure > tested.Max || (!visit.BurnsNaturalGas && pressure < tested.Min))
            return look.Unsafe($"{found}, outside {tested.Min} to {tested.Max} mbar, the range in which appliances are tested")
                .Against(tested, pressure, doubt).ToBeReported(visit).Warn(Cautions.MakerDecides);
        return pressure < band.Min
            ? Low($"{found}, below {band.Min} mbar", visit, look).Against(band, pressure, doubt)
            : look.Advisory($"{found}, above {band.Max} mbar").Against(band, pressure, doubt).ToBeReported(visit);
    }

    /// <summary>No pressure alone makes a boiler unsafe: rate and burn decide.</summary>
    private static Verdict Low(FormattableString found, Visit visit, Look look) => (visit.HeatInputIsRight() & visit.BurnsRight()) switch
    {
        true => look.Advisory($"{found}; heat input and combustion are right").Warn(Cautions.MakerDecides)
            .Advise("Look for the cause (supply, pipework, filter, valves) and ask the maker; a pressure outside the meter's band goes to the gas emergency provider first."),
        false => look.Unsafe($"{found}, and the heat input or the combustion is out of limit as well").Warn(Cautions.CarbonMonoxide)
            .Advise("Do not leave the boiler in use. Find the cause in supply, pipework, filter or valves, and measure again."),
        null => look.Missing($"{found}; whether that is dangerous hangs on heat input and combustion, which the record does not both show in a way that counts",
                Unknown(visit))
            .Warn(Cautions.CarbonMonoxide),
    };

    private static List<string> Unknown(Visit visit)
    {
        List<string> unknown = [];
        if (visit.HeatInputIsRight() is null)
            unknown.Add("/gasSupply/rate");
        if (visit.BurnsRight() is null)
            unknown.Add("/combustion/readings");
        return unknown;
    }

    /// <summary>The maker's lowest pressure with the default's highest. One below the default counts only when its source is named.</summary>
    private static Limit BandOf(Visit visit, Look look, Limit standard) =>
        look.Note(visit.Maker.InletPressureMbarMin) is { } lowest && visit.MakersSourceOf(static maker => maker.InletPressureMbarMin) is var source
        && (lowest >= standard.Min || !string.IsNullOrWhiteSpace(source))
            ? LimitSheet.Maker(lowest, standard.Max, standard.Unit, source)
            : standard;
}
