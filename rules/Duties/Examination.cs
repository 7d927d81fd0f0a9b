using Calculations;
using Records;
using Rules.Combustion;
using Visits;

namespace Rules.HeatInput;

/// <summary>
/// What of operating pressure, heat input and combustion was examined. The law (GSIUR 26(9)(c) and (ca)) lets the first two stand for
/// each other, and combustion for both where neither can reasonably be had.
/// </summary>
internal static class Examination
{
    /// <summary>An operating pressure of the appliance itself is recorded.</summary>
    public static bool HasOperatingPressure(this Visit visit) =>
        (visit.Record.GasSupply?.ApplianceInletMbar ?? visit.Record.GasSupply?.BurnerMbar) is not null;

    /// <summary>Any pressure of the supply is recorded: a gauge was on it.</summary>
    public static bool HasAnyPressure(this Visit visit) => visit.HasOperatingPressure()
        || (visit.Record.GasSupply?.MeterOperatingMbar ?? visit.Record.GasSupply?.MeterStandingMbar) is not null;

    /// <summary>The gas was timed long enough at a meter that can be read, at maximum, warm, with the other appliances off.</summary>
    public static bool? GasRateCounts(this Visit visit)
    {
        if (visit.Record.GasSupply?.Rate is not { } rate)
            return null;

        bool? isWarm = rate.WarmMinutes is { } warm ? visit.Limits[LimitIds.GasRateWarmMinutes].Allows(warm) : null;
        // An imperial dial is timed over whole turns, however long they take.
        bool? isLong = rate.Seconds is { } seconds
            ? rate.VolumeFt3 is not null || visit.Limits[LimitIds.GasRateSeconds].Allows(seconds)
            : null;
        return isLong & isWarm & rate.AtMaximum & rate.OtherAppliancesOff & visit.Record.GasSupply.MeterDisplayWorks;
    }

    /// <summary>A heat input that counts is recorded.</summary>
    public static bool HasHeatInput(this Visit visit) => visit.MeasuredGrossKw is not null && visit.GasRateCounts() == true;

    /// <summary>
    /// Deviation of the measured heat input from the figure it is held against, %; null while something of it is absent, or a range rating
    /// stands without the plate or above it.
    /// </summary>
    public static decimal? DeviationPercent(this Visit visit, InputBasis? basis)
    {
        if (visit.Appliance.RatedInputKw is not { } rated || visit.MeasuredGrossKw is not { } gross || basis is null
            || visit.Appliance.RangeRatedInputKw > rated)
        {
            return null;
        }

        var plate = visit.Appliance.RangeRatedInputKw ?? rated;

        var measured = basis == InputBasis.Net ? Calculations.HeatInput.NetKw(gross, visit.GasFamily) : gross;
        return (measured - plate) / plate * 100;
    }

    /// <summary>The heat input is that of the plate; a measurement that does not count says nothing.</summary>
    public static bool? HeatInputIsRight(this Visit visit) =>
        visit.GasRateCounts() == true && visit.DeviationPercent(visit.Appliance.RatedInputBasis) is { } deviation
            ? visit.Limits[LimitIds.HeatInputDeviation].Allows(deviation)
            : null;

    /// <summary>Every flue reading after the work shows a CO/CO2 ratio within its limit.</summary>
    public static bool? BurnsRight(this Visit visit)
    {
        var readings = visit.ReadingsAfterWork?.ToList() ?? [];
        if (readings.Count == 0 || visit.ProductsReachTheAirInlet())
            return null;

        var limit = visit.RatioLimit();
        return readings.Aggregate((bool?)true, (right, reading) => right & IsRight(reading.Value));

        // What looks like air can be wrong and cannot be right.
        bool? IsRight(CombustionReading reading) => reading is { Stage: not null, CoPpm: { } co, Co2Percent: > 0 and { } co2 }
            ? limit.Allows(FlueGas.Ratio(co, co2)) ? visit.MemberThatShowsAir(reading) is null ? true : null : false
            : null;
    }

    /// <summary>Combustion, and nothing else, was examined and is right.</summary>
    public static bool CombustionStandsIn(this Visit visit) =>
        visit.NeitherPressureNorHeatInput() && visit.BurnsRight() == true;

    /// <summary>Only combustion can show how the appliance burns its gas: nothing else was examined.</summary>
    public static bool NeitherPressureNorHeatInput(this Visit visit) => !visit.HasOperatingPressure() && !visit.HasHeatInput();

    /// <summary>Why neither pressure nor heat input could be had; null when nothing is stated.</summary>
    public static string? StatedReason(this Visit visit) =>
        visit.Record.Combustion?.PressureAndRateNotPracticableReason is { } reason && !string.IsNullOrWhiteSpace(reason) ? reason : null;
}
