using Records;

namespace SecondOpinion.Opinions;

/// <summary>What was examined under regulation 26(9)(c), and whether rate and burn are right. Null: the record leaves it open.</summary>
internal static class Examination
{
    /// <summary>A reason of the table why neither pressure nor rate could be had, which nothing on record contradicts. Free text decides nothing.</summary>
    public static bool HasReason(Case one) => HasReasonFor(one, "/gasSupply/rate") && HasReasonFor(one, "/gasSupply/applianceInletMbar");

    /// <summary>An operating pressure at the appliance or its burner.</summary>
    public static bool PressureExamined(Case one) => one.Record.GasSupply is { ApplianceInletMbar: not null } or { BurnerMbar: not null };

    /// <summary>A rate timed as it must be, all figures there.</summary>
    public static bool HeatInputExamined(Case one) =>
        MeasuredKw(one, InputBasis.Gross) is not null
        && HeatInputOpinions.IsProperlyTimed(one) == true;

    /// <summary>
    /// Combustion in place of both, regulation 26(9)(ca): neither was examined, a reason of the table for each, which nothing on record
    /// contradicts, and an analysis that shows something.
    /// </summary>
    public static bool MayAnalysisStandIn(Case one) =>
        !PressureExamined(one) && !HeatInputExamined(one)
        && !ReasonTable.InForce.Never.Any(ban => ban.Jurisdiction == one.Record.Jurisdiction || one.AsOf < ban.Before)
        && HasReason(one) && IsAnalysisGood(one);

    private static bool HasReasonFor(Case one, string member) => one.Record.Work?.NotDone?.Any(said => said.What == member
        && ReasonTable.InForce.Rows.Any(row => row.Duty == "examineAfterWork" && row.Because == said.Because && row.What.Contains(member, StringComparer.Ordinal)
            && !row.NotJobs.Contains(one.Record.JobType) && !row.IsContradicted(one))) == true;

    /// <summary>
    /// At every rate at which the boiler burns, in limit and with some carbon monoxide, which a dead cell never shows; by an analyser in date,
    /// with stage and time. One reading that is not so spoils it.
    /// </summary>
    private static bool IsAnalysisGood(Case one)
    {
        var readings = (one.Record.Combustion?.Readings ?? []).Where(reading => reading.Stage != WorkStage.BeforeWork).ToList();
        var isSingleRate = one.Record.Appliance is { Condensing: false } or { BurnerKind: BurnerKind.Atmospheric };
        return !CombustionOpinions.ProductsAtInlet(one)
            && readings.Exists(reading => reading.Rate == FiringRate.Maximum && !(reading.LoadPercent < 50))
            && (isSingleRate || readings.Exists(reading => reading.Rate == FiringRate.Minimum))
            && readings.TrueForAll(reading => reading is { Stage: WorkStage.AfterWork, TakenAt: not null, CoPpm: > 0 }
                && (reading.Rate == FiringRate.Minimum || reading.CoPpm <= CombustionOpinions.LimitOf(one, one.Record.MakerLimits?.CoPpmMax, 350)) && !CombustionOpinions.IsAir(reading) && CombustionOpinions.RatioOf(reading) <= CombustionOpinions.RatioLimitUnderCeiling(one) && IsByAnalyserInDate(one, reading));
    }

    /// <summary>A reading that names no analyser is of the only one listed.</summary>
    private static bool IsByAnalyserInDate(Case one, CombustionReading reading)
    {
        var analysers = (one.Record.Instruments ?? []).Where(instrument => instrument.Kind == InstrumentKind.FlueGasAnalyser).ToList();
        var its = reading.Instrument is { } serial ? analysers.Find(analyser => analyser.SerialNumber == serial) : analysers is [var only] ? only : null;
        return its is not null && its.CalibratedOn <= one.AsOf && (its.CalibrationDueOn ?? its.CalibratedOn?.AddMonths((int)one.Limit("calibration-months")!.Max!)) >= one.AsOf;
    }

    /// <summary>Opinion on a measurement that is absent, at its place: whatever else was examined, it is missing, save where the law has the analysis stand in.</summary>
    public static Opinion NotMeasured(Case one, string at) => MayAnalysisStandIn(one) ? Say.NotApplicable(at) : Say.Missing(at);

    /// <summary>
    /// Measured heat input in kW on the basis asked for. A volume of more than a commercial meter's, or a calorific value that no fuel gas
    /// has (town gas had 18 MJ/m3, butane has 122; from memory), is a slip of the pen and no measurement.
    /// </summary>
    public static decimal? MeasuredKw(Case one, InputBasis basis)
    {
        if (one.Record.GasSupply?.Rate is not { Seconds: { } seconds, CalorificValueMjPerM3: { } calorific } rate)
            return null;
        var volume = rate.VolumeM3 ?? (rate.VolumeFt3 * 0.028316846592m);
        if (volume is not (> 0 and <= 100) || volume / seconds * 3600 > 2000 || calorific is < 10 or > 150)
            return null;
        var gross = volume / seconds * calorific * 1000;
        return basis == InputBasis.Gross ? gross : gross / Facts.GrossOverNet(one.Record.Appliance.Fuel);
    }

    /// <summary>Deviation in per cent of the measured input from what the boiler is set to.</summary>
    public static decimal? DeviationPercent(Case one)
    {
        var appliance = one.Record.Appliance;
        return appliance.RatedInputBasis is { } basis ? (MeasuredKw(one, basis) - TargetKw(appliance)) / TargetKw(appliance) * 100 : null;
    }

    /// <summary>What the boiler is set to: its plate, or a range rating that does not exceed it.</summary>
    public static decimal? TargetKw(Appliance appliance) =>
        appliance.RangeRatedInputKw > appliance.RatedInputKw || appliance.RatedInputKw is null ? null : appliance.RangeRatedInputKw ?? appliance.RatedInputKw;

    /// <summary>Is the heat input within its tolerance, by a measurement that counts?</summary>
    public static bool? RateIsRight(Case one)
    {
        if (!HeatInputExamined(one))
            return null;
        return DeviationPercent(one) is { } deviation ? deviation is >= -10 and <= 5 : null;
    }

    /// <summary>Is every ratio after the work within the limit?</summary>
    public static bool? BurnIsRight(Case one)
    {
        if (CombustionOpinions.ProductsAtInlet(one))
            return null;
        var readings = (one.Record.Combustion?.Readings ?? []).Where(reading => reading.Stage != WorkStage.BeforeWork).ToList();
        var ratios = readings
            .Select(reading => reading.Stage is null ? null : CombustionOpinions.RatioOf(reading))
            .ToList();
        if (ratios.Any(ratio => ratio > CombustionOpinions.RatioLimitUnderCeiling(one)))
            return false;
        return ratios.Count == 0 || ratios.Contains(null) || readings.Exists(CombustionOpinions.IsAir) ? null : true;
    }
}
