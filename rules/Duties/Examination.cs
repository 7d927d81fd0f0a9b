using Calculations;
using Records;
using Rules.Combustion;
using Visits;

namespace Rules.Duties;

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

    /// <summary>
    /// Why neither could reasonably be had, in words; null where <c>work.notDone</c> does not give for each of them a reason that counts, or no
    /// analysis is good enough to stand for both.
    /// </summary>
    public static string? WhyNeither(this Visit visit) => visit.NeitherPressureNorHeatInput() && visit.HasGoodAnalysis()
        && Reasons.WordsFor(visit, "/gasSupply/applianceInletMbar", Part.PressureOrRate) is { } pressure
        && Reasons.WordsFor(visit, "/gasSupply/rate", Part.PressureOrRate) is { } rate
            ? $"for the pressure {pressure}, for the rate {rate}"
            : null;

    /// <summary>
    /// A flue reading after the work was taken at maximum rate, and every one is within its limits, says when it was taken, shows carbon monoxide
    /// at all, and was taken with an analyser in date: an analysis on which alone a boiler can be judged.
    /// </summary>
    public static bool HasGoodAnalysis(this Visit visit) => visit.BurnsRight() == true && visit.StatedAt(FiringRate.Maximum).Any()
        && visit.ReadingsAfterWork!.All(reading => reading.Value is { CoPpm: > 0, TakenAt: not null } && visit.IsWithinMaximumLimits(reading.Value)
            && !visit.DeniesItsRate(reading.Value) && visit.IsByAnAnalyserInDate(reading.Value));

    // Where the reading does not name its analyser it may be any that is listed.
    private static bool IsByAnAnalyserInDate(this Visit visit, CombustionReading reading)
    {
        var analysers = (visit.Instruments ?? []).Select(instrument => instrument.Value)
            .Where(instrument => instrument.Kind == InstrumentKind.FlueGasAnalyser && (string.IsNullOrWhiteSpace(reading.Instrument) || instrument.SerialNumber == reading.Instrument)).ToList();
        var months = (int)visit.Limits[LimitIds.CalibrationMonths].Max!.Value;
        return analysers.Count > 0 && analysers.All(analyser =>
            !(analyser.CalibratedOn > visit.Date) && (analyser.CalibrationDueOn ?? analyser.CalibratedOn?.AddMonths(months)) >= visit.Date);
    }
}
