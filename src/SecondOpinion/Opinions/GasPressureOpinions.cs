using Records;
using static SecondOpinion.Say;

namespace SecondOpinion.Opinions;

/// <summary>Pressures of the supply and at the appliance.</summary>
internal static class GasPressureOpinions
{
    private const string ShutOff = "/appliance/shutOffAtInlet";
    private const string Inlet = "/gasSupply/applianceInletMbar";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("burner-pressure", one => [Burner(one)]),
        ("inlet-pressure", one => [InletPressure(one)]),
        ("inlet-pressure-loss", one => [Loss(one)]),
        ("meter-operating-pressure", one => [MeterOperating(one)]),
        ("meter-standing-pressure", one => [MeterStanding(one)]),
        ("part-for-this-gas", one => Each("/partsFitted", one.Record.PartsFitted, (part, at) => Part(one, part, at))),
        ("regulator-seal", one => [RegulatorSeal(one)]),
        ("shut-off-at-inlet", one => [one.IsNewBoiler() switch { true => Yes(one.Record.Appliance.ShutOffAtInlet, Missing(ShutOff)), false => NotApplicable(), null => Missing() }]),
        ("test-points-closed", one => [TestPoints(one)]),
    ];

    private static Opinion Burner(Case one)
    {
        const string At = "/gasSupply/burnerMbar";
        if (one.Record.MakerLimits?.BurnerPressureMbar is not { } makers || makers == 0)
            return NotApplicable();
        if (one.Record.GasSupply?.BurnerMbar is not { } measured)
            return Advisory(At);
        return Math.Abs(measured - makers) * 100 <= 5 * makers ? Pass(At) : Advisory(At);
    }

    private static Opinion InletPressure(Case one)
    {
        if (one.Record.GasSupply?.ApplianceInletMbar is not { } inlet)
            return Examination.NotMeasured(one, Inlet);
        if (one.Record.Appliance.Fuel is not { } fuel)
            return Missing(Inlet);
        var (least, most, lowest, highest) = fuel switch
        {
            // No figure makes a low pressure of natural gas unsafe by itself: rate and burn decide.
            Fuel.NaturalGas => (17m, 25m, decimal.MinValue, 25m),
            Fuel.Propane => (32m, 42m, 25m, 45m),
            _ => (23m, 33m, 20m, 35m),
        };
        if (inlet > highest)
            return AtRisk(Inlet);

        var makers = one.Record.MakerLimits?.InletPressureMbarMin is { } own && (own >= least || one.Record.MakerLimits.Source is not null) ? own : least;
        if (inlet < makers)
            return inlet < lowest ? AtRisk(Inlet) : Low(one);
        return (inlet < least || inlet > most ? Advisory(Inlet) : Pass(Inlet)).IfSure(Sureness.OfGauge(one, "applianceInletMbar", inlet), inlet, makers, most);
    }

    private static Opinion Low(Case one) => (Examination.RateIsRight(one), Examination.BurnIsRight(one)) switch
    {
        (false, _) or (_, false) => AtRisk(Inlet),
        (true, true) => Advisory(Inlet),
        _ => Missing(Inlet),
    };

    private static Opinion Loss(Case one)
    {
        var supply = one.Record.GasSupply;
        if (one.Record.Appliance.Fuel is not { } fuel)
            return Missing();
        var isNatural = fuel == Fuel.NaturalGas;
        if (!isNatural && supply?.MeterKind == MeterKind.None)
            return NotApplicable();
        if (!isNatural && supply?.MeterKind is null)
            return Missing();
        if (supply?.MeterOperatingMbar is not { } meter || supply.ApplianceInletMbar is not { } inlet)
            return Examination.NotMeasured(one, Inlet);
        var (loss, most) = (meter - inlet, isNatural ? 1 : 2.5m);
        var uncertainty = double.Hypot(
            Sureness.OfGauge(one, "meterOperatingMbar", meter) ?? double.NaN, Sureness.OfGauge(one, "applianceInletMbar", inlet) ?? double.NaN);
        return (loss >= 0 && loss <= most ? Pass(Inlet) : Advisory(Inlet)).IfSure(double.IsNaN(uncertainty) ? null : uncertainty, loss, null, most);
    }

    private static Opinion MeterOperating(Case one)
    {
        const string At = "/gasSupply/meterOperatingMbar";
        var supply = one.Record.GasSupply;
        if (one.Record.Appliance.Fuel is not { } fuel)
            return Missing();
        if (fuel != Fuel.NaturalGas)
            return NotApplicable();
        if (supply?.MeterOperatingMbar is not { } pressure)
            return Examination.NotMeasured(one, At);
        if (pressure is < 18.5m or > 23)
            return Examination.BurnIsRight(one) == false ? AtRisk(At) : Advisory(At);
        return Yes(supply.OthersAtHalfLoad, Advisory(At)).IfSure(Sureness.OfGauge(one, "meterOperatingMbar", pressure), pressure, 18.5m, 23);
    }

    /// <summary>Gas at rest stands at least as high as gas that flows. Too high is said first; of liquefied gas nobody has to read it, and no figure makes it unsafe.</summary>
    private static Opinion MeterStanding(Case one)
    {
        const string At = "/gasSupply/meterStandingMbar";
        if (one.Record.Appliance.Fuel is not { } fuel)
            return Missing();
        var supply = one.Record.GasSupply;
        if (supply?.MeterStandingMbar is not { } standing)
            return fuel == Fuel.NaturalGas ? Examination.NotMeasured(one, At) : NotApplicable();
        var most = fuel switch { Fuel.NaturalGas => 25, Fuel.Propane => 45, _ => 35 };
        if (standing > most)
            return fuel == Fuel.NaturalGas && standing > 30 ? AtRisk(At) : Advisory(At);
        return standing <= 0 || supply.MeterOperatingMbar > standing
            ? Missing(At)
            : Pass(At).IfSure(Sureness.OfGauge(one, "meterStandingMbar", standing), standing, null, most);
    }

    private static Opinion Part(Case one, FittedPart part, string at) => (one.Record.Appliance.Fuel, part.ForFuel) switch
    {
        (null, _) => Missing(at),
        (_, null) => IsMadeForOneGas(part.Kind) ? Missing(at) : NotApplicable(at),
        var (fuel, made) => made == fuel ? Pass(at) : AtRisk(at),
    };

    /// <summary>Gas flows through it or burns at it; a part of unknown kind may be one of these.</summary>
    private static bool IsMadeForOneGas(PartKind? kind) => kind is null or PartKind.Other
        or PartKind.GasValve or PartKind.Injector or PartKind.Burner or PartKind.GasSeal or PartKind.Regulator;

    private static Opinion RegulatorSeal(Case one)
    {
        const string At = "/gasSupply/regulatorSealIntact";
        // It is the conveyor's or supplier's to seal again (14(5)-(7)): told of it, somebody sees to it.
        var isMadeKnown = PlacedDefect.Of(one).Any(defect => defect is { Is.Concerns: DefectConcern.Supply, IsOfThisBoiler: false, IsMadeKnownElsewhere: true }
            && defect.IsAtOrOf(At, Findings.Topics.GasPressure));
        return Yes(one.Record.GasSupply?.RegulatorSealIntact, isMadeKnown ? Advisory(At) : AtRisk(At));
    }

    private static Opinion TestPoints(Case one)
    {
        const string At = "/gasSupply/testPointsClosed";
        return one.Record.GasSupply switch
        {
            { TestPointsClosed: false } => Dangerous(At),
            { TestPointsClosed: true, TestPointsLeakChecked: true } => Pass(At),
            _ => Missing(At),
        };
    }
}
