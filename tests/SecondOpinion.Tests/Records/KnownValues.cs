namespace SecondOpinion.Tests.Records;

/// <summary>Values that matter to a member beyond the limits in its unit, because a rule works with something derived from it.</summary>
internal static class KnownValues
{
    /// <summary>Whose law the rules hold.</summary>
    public static IReadOnlyList<string> Jurisdictions { get; } = ["GB-ENG", "GB-WLS", "GB-SCT"];

    public static IReadOnlyDictionary<string, decimal[]> Numbers { get; } = new Dictionary<string, decimal[]>(StringComparer.Ordinal)
    {
        ["/appliance/ratedInputKw"] = [5, 5.1m, 5.55m, 7, 7.1m, 12.7m, 13, 14, 14.1m, 15.54m, 26, 28.86m, 30, 32, 32.1m, 70, 70.1m, 77.7m, 120],
        ["/appliance/rangeRatedInputKw"] = [18, 26, 26.1m, 28.86m, 30],
        ["/appliance/ratedOutputKw"] = [25, 24],
        ["/combustion/readings/*/coPpm"] = [0, 12, 96, 350, 351, 368, 369, 400, 736, 737, 900],
        ["/combustion/readings/*/co2Percent"] = [0, 8.4m, 8.5m, 8.9m, 9.2m, 9.8m, 9.9m, 10.5m],
        ["/combustion/readings/*/o2Percent"] = [3.9m, 4.5m, 5.0m, 5.3m, 20, 20.9m, 21],
        ["/combustion/readings/*/statedRatio"] = [0, 0.0009m, 0.001m, 0.0010m, 0.0011m, 0.00104m, 0.0012m],
        ["/combustion/readings/*/statedEfficiencyPercent"] = [88, 93, 97.5m, 99, 105],
        ["/combustion/readings/*/flueTemperatureC"] = [20, 47, 48, 52, 54, 55, 56, 59, 60, 62, 63, 64, 120],
        ["/combustion/readings/*/airTemperatureC"] = [10, 18, 60],
        ["/combustion/readings/*/loadPercent"] = [30, 49, 50, 100],
        ["/makerLimits/coCo2RatioMax"] = [0.001m, 0.004m, 0.0041m, 0.006m, 0.008m, 0.04m],
        ["/makerLimits/coPpmMax"] = [90, 200, 350, 351, 500],
        ["/makerLimits/co2PercentMin"] = [0, 5, 8.5m, 9.2m, 9.3m],
        ["/makerLimits/co2PercentMax"] = [9.1m, 9.2m, 9.8m, 11, 11.7m, 11.8m],
        ["/makerLimits/inletPressureMbarMin"] = [15, 17, 18, 18.1m, 20.1m, 20.2m],
        ["/makerLimits/burnerPressureMbar"] = [0, 10],
        ["/makerLimits/electrodeGapMmMin"] = [2.5m, 3, 3.1m],
        ["/makerLimits/electrodeGapMmMax"] = [3.9m, 4, 5],
        ["/makerLimits/flueTemperatureCMax"] = [51, 52, 59, 60, 80],
        ["/electrical/earthOhm"] = [0.5m, 1, 1.1m, 15.99m, 16, 16.01m, 200, 200.01m, 1668],
        ["/makerLimits/serviceIntervalMonths"] = [6, 12, 24],
        ["/gasSupply/burnerMbar"] = [9.4m, 9.5m, 10, 10.5m, 10.6m],
        ["/gasSupply/applianceInletMbar"] = [17.9m, 18, 19.7m, 19.8m, 20.1m, 20.8m, 20.9m],
        ["/gasSupply/rate/volumeM3"] = [0, 0.06m, 0.0750m, 0.0792m, 0.081m, 0.0883m, 0.09m, 0.0909m, 0.091m, 0.0945m, 0.0946m, 0.099m, 0.0991m, 0.105m],
        ["/gasSupply/rate/volumeFt3"] = [0, 1, 3],
        ["/gasSupply/rate/seconds"] = [38, 119, 120],
        ["/gasSupply/rate/calorificValueMjPerM3"] = [35.3m, 38.76m, 39.2m, 40, 95],
        ["/gasSupply/meterStandingMbar"] = [0, 20.7m, 20.8m, 22.5m, 36, 38],
        ["/tightnessTests/*/dropMbar"] = [-0.3m, -0.2m, -0.26m, 0, 0.2m, 0.21m, 0.25m, 0.26m, 1, 1.1m, 2, 2.1m, 2.5m, 2.6m, 4, 4.1m, 8, 8.1m],
        ["/tightnessTests/*/pipeworkOnlyMovementMbar"] = [-0.3m, 0, 0.2m, 0.21m, 0.25m, 0.26m],
        ["/tightnessTests/*/permittedDropMbar"] = [0, 1, 2, 4, 4.1m, 18.5m, 18.6m],
        ["/tightnessTests/*/letByRiseMbar"] = [-0.25m, -0.2m, -0.1m, 0, 0.01m],
        ["/tightnessTests/*/letByPressureMbar"] = [6.99m, 7, 8, 10, 10.01m, 18.5m, 18.51m, 36.8m, 36.81m],
        ["/tightnessTests/*/testPressureMbar"] = [17.9m, 18, 19.9m, 20, 20.4m, 21, 21.1m, 28, 37],
        ["/tightnessTests/*/gaugeResolutionMbar"] = [0.01m, 0.1m, 0.2m, 0.25m, 0.5m, 1, 1.1m],
        ["/tightnessTests/*/largestPipeMm"] = [22, 28, 29, 35, 36],
        ["/ventilation/freeAreaCm2"] = [0, 85.4m, 85.5m, 94, 95, 120, 130, 142.5m],
        ["/ventilation/highFreeAreaCm2"] = [129, 130, 200, 240, 260, 500],
        ["/ventilation/lowFreeAreaCm2"] = [130, 259, 260, 399, 400, 480, 520, 1000],
        ["/ventilation/otherOpenFluedNetKw"] = [0, 5, 44, 50],
        ["/premises/airPermeabilityM3PerHM2"] = [3, 5, 5.1m, 8],
        ["/flue/terminalHeightMm"] = [900, 1999, 2000, 2300],
        ["/flue/terminalClearances/*/distanceMm"] = [74, 75, 149, 150, 299, 300, 599, 600, 1199, 1200, 1499, 1500, 1999, 2000],
        ["/ambientCo/beforePpm"] = [0, 1, 6, 7, 9, 10, 11, 30, 31],
        ["/ambientCo/runningPeakPpm"] = [0, 3, 4, 9, 10, 13, 30, 31],
        ["/ambientCo/afterPpm"] = [0, 3, 4, 9, 10, 13, 30, 31],
        ["/instruments/*/accuracies/*/absolute"] = [0, 0.05m, 0.2m, 0.3m, 3, 10, 20],
        ["/instruments/*/accuracies/*/relativePercent"] = [0, 1, 5, 20, 101],
        ["/instruments/*/accuracies/*/resolution"] = [0, 0.01m, 0.1m, 1],
        ["/burner/electrodeGapMm"] = [2.4m, 2.5m, 2.9m, 3, 3.1m, 3.9m, 4, 4.1m, 5, 5.1m],
        ["/water/coldFillBar"] = [0.9m, 1, 1.2m, 1.5m, 1.6m],
        ["/water/vesselPrechargeBar"] = [0.4m, 0.5m, 0.7m, 1, 1.2m, 1.4m, 1.5m],
        ["/water/staticHeadM"] = [0, 5, 10, 11],
        ["/water/vesselVolumeL"] = [2, 4, 5, 8, 12],
        ["/water/systemVolumeL"] = [20, 60, 120],
        ["/water/hotBar"] = [1.5m, 2.5m, 2.6m, 2.7m, 2.71m],
        ["/water/reliefSettingBar"] = [1, 2.5m, 3, 3.1m, 20],
    };

    public static IReadOnlyDictionary<string, string[]> Texts { get; } = new Dictionary<string, string[]>(StringComparer.Ordinal)
    {
        ["/tightnessTests/*/edition"] = ["3", "3", "4", "4", "5"],
        ["/instruments/*/serialNumber"] = ["FA-1", "FA-2", "PG-1", "TH-1"],
        ["/instruments/*/standard"] = ["EN 50379-3", "BS EN 50379-3", "BS 7927", "EN 50379-2", "none"],
        ["/combustion/readings/*/instrument"] = ["FA-1", "FA-2", "PG-1"],
        ["/instruments/*/accuracies/*/quantity"] = ["coPpm", "co2Percent", "o2Percent", "afterPpm", "applianceInletMbar", "dropMbar"],
        ["/coAlarm/standard"] = ["EN 50291-1", "BS EN 50291-1", "EN 50291-2", "none"],
        ["/defects/*/topic"] = ["combustion", "tightness", "flue", "joints", "gasPressure", "heatInput", "heatExchanger", "water", "electrical", "ambientAir", "ventilation"],
        ["/work/notDone/*/what"] = ["/gasSupply/rate", "/gasSupply/applianceInletMbar", "/combustion/readings", "/heatExchanger/inspected", "/heatExchanger/cleaned", "/flue/visualOk", "/flue/caseSealChecked", "/condensate/trapRefilled", "/safetyDevices", "/safetyDevices/0/tested", "/safetyDevices/-1", "a note"],
        ["/work/withdrawn/*/what"] = ["/combustion/readings/0/coPpm", "/ambientCo/runningPeakPpm"],
        ["/defects/*/subject"] = ["", "/disturbedJoints/0", "/combustion/readings/0", "/tightnessTests/0", "/safetyDevices/0", "/flue", "/flue/visualOk", "/gasSupply", "/ambientCo", "/flue/supportsOk", "/escape", "/electrical", "/appliance"],
    };
}
