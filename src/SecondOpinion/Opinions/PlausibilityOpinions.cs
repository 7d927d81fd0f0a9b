using Calculations;
using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class PlausibilityOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("appliance-modified", c => On("/appliance/modified", Modified(c))),
        ("flow-above-return", c => On("/water", c.Record.Water?.FlowTemperatureC - c.Record.Water?.ReturnTemperatureC is { } rise ? Pass(rise >= 0) : Outcome.Missing)),
        ("concerns-agree", c => Each(c.Record.Defects, "/defects", defect => defect.Concerns is null or DefectConcern.ThisAppliance ? null : Agrees(!IsConcernDenied(c, defect)))),
        ("condensing-agrees", Condensing),
        ("flue-type-agrees", c => At("/appliance/flueType", c.IsOpenFlued() is not null, () =>
            Agrees(c.IsOpenFlued() == true || c.Record.Flue is null or { SpillageTestPassed: null, FlowTestPassed: null }))),
        ("plate-fuel", c => On("/appliance/plateFuel", PlateFuel(c))),
        ("premises-use-agrees", c => At("/premises/use", c.Record.Premises?.Use is not null, () =>
            Agrees(!(c.Record.Premises!.Use == PremisesUse.OwnerOccupied && (c.IsLandlordCheck() || c.Record.Paperwork is { LandlordName: true } or { LandlordAddress: true }))))),
        ("pressure-finer-than-gauge", c => On("/gasSupply", Pressures(c))),
        ("system-type-agrees", c => At("/water/systemType", c.Record.Water?.SystemType is not null, () =>
            Agrees(c.Record.Water is { SystemType: WaterSystemType.Sealed } or { VesselPrechargeBar: null, ColdFillBar: null }))),
        ("tightness-finer-than-gauge", c => Each(c.Record.TightnessTests, "/tightnessTests", Test)),
        ("tightness-test-dated", c => Each(c.Record.TightnessTests, "/tightnessTests", test => test.TestedOn > c.Day() ? Outcome.Missing : Outcome.Pass)),
        ("visit-long-enough", c => If(c.Record.JobType == JobType.AnnualService, "", () => LongEnough(c))),
    ];

    // Duties 9: with a place of this record it is of this boiler; a supply has gas and pipes only; and a boiler left off, or a job stopped, for a danger had one of its own.
    private static bool IsConcernDenied(Case c, Defect defect) =>
        !string.IsNullOrEmpty(defect.Subject)
        || (defect.Concerns == DefectConcern.Supply && defect.Topic is not (null or Topics.Tightness or Topics.Joints or Topics.GasPressure or Topics.Electrical or Topics.UnsafeSituation))
        || (defect.Concerns == DefectConcern.OtherAppliance && (c.Record.Appliance.LeftOffBecause == LeftOffReason.Danger || c.Record.Work?.Result == WorkResult.StoppedForDanger)
            && !PlacedDefect.Of(c).Any(own => own is { IsDangerous: true, IsOfThisBoiler: true }));

    private static Outcome Modified(Case c) => c.Record.Appliance.Modified switch
    {
        null => Outcome.Missing,
        false => Outcome.Pass,
        true => Given(c.Record.MakerLimits?.DecisionReference) ? Outcome.Advisory : Outcome.Unsafe,
    };

    private static Outcome PlateFuel(Case c)
    {
        var appliance = c.Record.Appliance;
        return appliance.PlateFuel is not { } plate || appliance.Fuel is null ? Outcome.Missing
            : plate == appliance.Fuel ? Outcome.Pass
            : Outcome.Unsafe;
    }

    // What is colder than its dew point condenses, whatever the plate says.
    private static IEnumerable<Opinion> Condensing(Case c)
    {
        var aboveDewPoint = (c.Record.Combustion?.Readings ?? []).Where(reading => reading.Stage != WorkStage.BeforeWork)
            .Select(reading => (double?)reading.FlueTemperatureC - DewPointC(c, reading)).OfType<double>().ToList();
        var isSaid = c.Record.Appliance.Condensing;
        return At("/appliance/condensing", isSaid == true || (isSaid == false && aboveDewPoint.Count > 0), () => Agrees(isSaid == true || aboveDewPoint.TrueForAll(kelvin => kelvin >= 0)));
    }

    /// <summary>Dew point of the flue gas of a reading with dry air; null where fuel or CO2 is absent, or no such flue gas can be.</summary>
    private static double? DewPointC(Case c, CombustionReading reading)
    {
        if (reading.Co2Percent is not > 0 || c.Record.Appliance.Fuel is not { } fuel)
            return null;
        var (gas, air) = (FuelGas.Of(Gas(fuel)), CombustionAir.Of((double)OxygenInAir.PhysicalPercent));
        var co2 = (double)reading.Co2Percent.Value;
        if (co2 > Stoichiometry.Co2MaxPercent(gas, air) || Stoichiometry.ExcessAirRatioFromCo2(gas, air, co2) is not (<= MostAir and var ratio))
            return null;
        var products = Stoichiometry.Burn(gas, air, ratio);
        return products.WaterPercent / 100 * Atmosphere > DewPoint.SaturationPressurePa(DewPoint.TripleC) ? DewPoint.OfFlueGasC(products) : null;
    }

    private const double Atmosphere = 101_325;

    /// <summary>Air for each part that is needed, beyond which the figures of flue gas say nothing.</summary>
    private const double MostAir = 10;

    private static GasFamily Gas(Fuel fuel) => fuel switch
    {
        Fuel.NaturalGas => GasFamily.NaturalGas,
        Fuel.Propane => GasFamily.Propane,
        _ => GasFamily.Butane,
    };

    // The finest listed gauge must be able to show every pressure; which one was used is not recorded.
    private static Outcome Pressures(Case c)
    {
        if (c.Record.Instruments is not { } instruments)
            return Outcome.Missing;

        var step = instruments.Where(one => one is { Kind: InstrumentKind.PressureGauge, Resolution: > 0 }).Min(gauge => gauge.Resolution);
        var supply = c.Record.GasSupply;
        return Pass(step is { } finest && new[] { supply?.MeterStandingMbar, supply?.MeterOperatingMbar, supply?.ApplianceInletMbar, supply?.BurnerMbar }
            .All(pressure => IsShown(pressure, finest)));
    }

    private static Outcome? Test(TightnessTest test) => test switch
    {
        { Gauge: PressureGaugeKind.Water } => Outcome.NotApplicable,
        { Gauge: null } or { GaugeResolutionMbar: null } => Outcome.Missing,
        _ => Pass(new[] { test.LetByPressureMbar, test.LetByRiseMbar, test.TestPressureMbar, test.DropMbar, test.PipeworkOnlyMovementMbar }
            .All(pressure => IsShown(pressure, test.GaugeResolutionMbar.Value))),
    };

    private static bool IsShown(decimal? value, decimal step) => value is null || value % step == 0;

    // The exchanger's work and the run before the reading follow one another.
    private static Outcome LongEnough(Case c)
    {
        var minutes = c.Record.HeatExchanger?.MinutesSpent + c.Record.Combustion?.SettledMinutes;
        return c.Record.StartedAt is { } start && minutes is { } work
            ? Pass((decimal)(c.Record.FinishedAt.Value - start.Value).Ticks >= work * TimeSpan.TicksPerMinute)
            : Outcome.Missing;
    }
}
