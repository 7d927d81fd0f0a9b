namespace Rules;

/// <summary>The id of every limit in limits.json.</summary>
public static class LimitIds
{
    public const string CoCo2Ratio = "co-co2-ratio";
    public const string CoCo2RatioCeiling = "co-co2-ratio-ceiling";
    public const string CoPpm = "co-ppm";
    public const string AirInletO2 = "air-inlet-o2";
    public const string AirInletCo2 = "air-inlet-co2";
    public const string SettledMinutes = "settled-minutes";
    public const string Co2FromO2Deviation = "co2-from-o2-deviation";
    public const string AmbientCo = "ambient-co";
    public const string AmbientCoCeiling = "ambient-co-ceiling";
    public const string TightnessScopeVolume = "tightness-scope-volume";
    public const string TightnessScopePipe = "tightness-scope-pipe";
    public const string TightnessScopeSupply = "tightness-scope-supply";
    public const string LetByPressure = "let-by-pressure";
    public const string LetByMinutes = "let-by-minutes";
    public const string LetByRise = "let-by-rise";
    public const string TightnessTestPressure = "tightness-test-pressure";
    public const string TightnessLowPressure = "tightness-low-pressure";
    public const string TightnessStabilisationMinutes = "tightness-stabilisation-minutes";
    public const string TightnessDurationMinutes = "tightness-duration-minutes";
    public const string PerceptibleMovementWater = "perceptible-movement-water";
    public const string PerceptibleMovementElectronic = "perceptible-movement-electronic";
    public const string TightnessTablePipe = "tightness-table-pipe";
    public const string PermittedDropEdition3None28 = "permitted-drop-edition-3-none-28";
    public const string PermittedDropEdition3None35 = "permitted-drop-edition-3-none-35";
    public const string PermittedDropEdition3U628 = "permitted-drop-edition-3-u6-28";
    public const string PermittedDropEdition3U635 = "permitted-drop-edition-3-u6-35";
    public const string PermittedDropEdition3U1628 = "permitted-drop-edition-3-u16-28";
    public const string PermittedDropEdition3U1635 = "permitted-drop-edition-3-u16-35";
    public const string MeterOperatingPressure = "meter-operating-pressure";
    public const string MeterStandingPressure = "meter-standing-pressure";
    public const string MeterStandingPressureCeiling = "meter-standing-pressure-ceiling";
    public const string InletPressureLoss = "inlet-pressure-loss";
    public const string InletPressure = "inlet-pressure";
    public const string InletPressureRange = "inlet-pressure-range";
    public const string BurnerPressureDeviation = "burner-pressure-deviation";
    public const string HeatInputDeviation = "heat-input-deviation";
    public const string HeatInputDeviationWide = "heat-input-deviation-wide";
    public const string BasisMixUpDeviation = "basis-mix-up-deviation";
    public const string GasRateSeconds = "gas-rate-seconds";
    public const string GasRateWarmMinutes = "gas-rate-warm-minutes";
    public const string CalorificValue = "calorific-value";
    public const string StripDownMinutes = "strip-down-minutes";
    public const string StripDownCleaningMinutes = "strip-down-cleaning-minutes";
    public const string ElectrodeGap = "electrode-gap";
    public const string ColdFill = "cold-fill";
    public const string HotPressure = "hot-pressure";
    public const string PrechargeOverColdFill = "precharge-over-cold-fill";
    public const string ReliefMargin = "relief-margin";
    public const string DomesticScopeInput = "domestic-scope-input";
    public const string CalibrationMonths = "calibration-months";
    public const string CopyToOccupierDays = "copy-to-occupier-days";
    public const string ServiceIntervalMonths = "service-interval-months";
    public const string ReportableDays = "reportable-days";
}
