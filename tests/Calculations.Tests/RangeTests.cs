namespace Calculations.Tests;

/// <summary>Every formula answers up to the ends of its stated range and refuses what lies beyond.</summary>
public class RangeTests
{
    private static readonly CombustionAir Air = CombustionAir.Of(20.95);
    private static readonly CombustionAir Moist = CombustionAir.Of(20.95, 2, 0.04);
    private static readonly FlueProducts Products = Stoichiometry.Burn(FuelGas.G20, Air, 1.25);

    /// <summary>An input: how to call with it, its range, and whether each end belongs to it.</summary>
    private sealed record Input(Func<double, object?> Call, double Min, double Max, bool MinBelongs = true, bool MaxBelongs = true);

    private static readonly Dictionary<string, Input> Inputs = new(StringComparer.Ordinal)
    {
        ["Ratio coPpm"] = new(x => FlueGas.Ratio((decimal)x, 9), 0, 1e6),
        ["Ratio co2Percent"] = new(x => FlueGas.Ratio(1, (decimal)x), 0, 100, MinBelongs: false),
        ["Co2FromO2 o2Percent"] = new(x => FlueGas.Co2FromO2Percent((decimal)x, GasFamily.Propane, 20.9m), 0, 20.9),
        ["Co2FromO2 o2InAirPercent"] = new(x => FlueGas.Co2FromO2Percent(5, GasFamily.Propane, (decimal)x), 20, 22),
        ["O2FromCo2 co2Percent"] = new(x => FlueGas.O2FromCo2Percent((decimal)x, GasFamily.Propane, 20.9m), 0, 13.72),
        ["O2FromCo2 o2InAirPercent"] = new(x => FlueGas.O2FromCo2Percent(5, GasFamily.Propane, (decimal)x), 20, 22),
        ["CoAirFree coPpm"] = new(x => FlueGas.CoAirFreePpm((decimal)x, 5, 20.9m), 0, 1e6),
        ["CoAirFree o2Percent"] = new(x => FlueGas.CoAirFreePpm(1, (decimal)x, 20.9m), 0, 20.9, MaxBelongs: false),
        ["CoAirFree o2InAirPercent"] = new(x => FlueGas.CoAirFreePpm(1, 5, (decimal)x), 20, 22),
        ["CoAirFreeFromCo2 coPpm"] = new(x => FlueGas.CoAirFreeFromCo2Ppm((decimal)x, 5, GasFamily.Butane), 0, 1e6),
        ["CoAirFreeFromCo2 co2Percent"] = new(x => FlueGas.CoAirFreeFromCo2Ppm(1, (decimal)x, GasFamily.Butane), 0, 14.02, MinBelongs: false),
        ["FuelFactor o2Percent"] = new(x => FlueGas.FuelFactor((decimal)x, 9, 0, 20.9m), 0, 20.9),
        ["FuelFactor co2Percent"] = new(x => FlueGas.FuelFactor(5, (decimal)x, 0, 20.9m), 0, 25, MinBelongs: false),
        ["FuelFactor coPpm"] = new(x => FlueGas.FuelFactor(5, 9, (decimal)x, 20.9m), 0, 100_000),
        ["FuelFactor o2InAirPercent"] = new(x => FlueGas.FuelFactor(5, 9, 0, (decimal)x), 20, 22),
        ["ExpectedFuelFactor o2InAirPercent"] = new(x => FlueGas.ExpectedFuelFactor(GasFamily.NaturalGas, (decimal)x), 20, 22),

        ["FuelGas fraction"] = new(x => FuelGas.Of((GasComponent.Methane, x), (GasComponent.Nitrogen, 1 - x)), 0, 1),
        ["FuelGas sum"] = new(x => FuelGas.Of((GasComponent.Methane, 0.5), (GasComponent.Nitrogen, x - 0.5)), 0.9999, 1.0001),
        ["CombustionAir oxygen"] = new(x => CombustionAir.Of(x), 20, 22),
        ["CombustionAir water"] = new(x => CombustionAir.Of(20.95, x), 0, 10),
        ["CombustionAir carbon dioxide"] = new(x => CombustionAir.Of(20.95, 0, x), 0, 1),
        ["Burn excessAirRatio"] = new(x => Stoichiometry.Burn(FuelGas.G20, Air, x), 1, 1000),
        ["ExcessAirRatioFromO2 o2Percent"] = new(x => Stoichiometry.ExcessAirRatioFromO2(FuelGas.G20, Air, x), 0, 20.95, MaxBelongs: false),
        ["ExcessAirRatioFromCo2 co2Percent"] = new(
            x => Stoichiometry.ExcessAirRatioFromCo2(FuelGas.G20, Air, x), 0, Stoichiometry.Co2MaxPercent(FuelGas.G20, Air), MinBelongs: false),
        ["ExcessAirRatioFromO2 o2Percent in moist air"] = new(x => Stoichiometry.ExcessAirRatioFromO2(FuelGas.G20, Moist, x), 0, 20.95, MaxBelongs: false),
        ["ExcessAirRatioFromCo2 co2Percent in moist air"] = new(
            x => Stoichiometry.ExcessAirRatioFromCo2(FuelGas.G20, Moist, x), 0.04, Stoichiometry.Co2MaxPercent(FuelGas.G20, Moist), MinBelongs: false),
        ["CalorificValue pressureKPa"] = new(
            x => CalorificValue.Of(FuelGas.G20, Iso6976.Edition2016, ReferenceTemperature.Celsius15, ReferenceTemperature.Celsius15, x), 90, 110),

        ["Siegert flueC"] = new(x => FlueLoss.SiegertFromCo2Percent(x, 20, 9, GasFamily.Butane), 20, 400),
        ["Siegert airC"] = new(x => FlueLoss.SiegertFromO2Percent(160, x, 5, GasFamily.Butane, 21), -20, 50),
        ["Siegert o2Percent"] = new(x => FlueLoss.SiegertFromO2Percent(160, 20, x, GasFamily.Butane, 21), 0, 18),
        ["Siegert o2InAirPercent"] = new(x => FlueLoss.SiegertFromO2Percent(160, 20, 5, GasFamily.Butane, x), 20, 22),
        ["Siegert co2Percent"] = new(x => FlueLoss.SiegertFromCo2Percent(160, 20, x, GasFamily.Butane), 1.5, 15),
        ["Bs845 flueC"] = new(x => FlueLoss.Bs845GrossPercent(FuelGas.G20, x, 20, 9), 20, 400),
        ["Bs845 co2Percent"] = new(x => FlueLoss.Bs845GrossPercent(FuelGas.G20, 160, 20, x), 1.5, 15),
        ["CarbonMonoxide dryFlueGas"] = new(x => FlueLoss.CarbonMonoxidePercentNet(FuelGas.G20, x, 10), 0, 1000),
        ["CarbonMonoxide coPpm"] = new(x => FlueLoss.CarbonMonoxidePercentNet(FuelGas.G20, 10, x), 0, 100_000),
        ["FlueBalance excessAirRatio"] = new(x => FlueBalance.Of(FuelGas.G20, Air, x, 60, 20), 1, 10),
        ["FlueBalance flueC"] = new(x => FlueBalance.Of(FuelGas.G20, Air, 1.2, x, 0), 5, 370),
        ["FlueBalance airC"] = new(x => FlueBalance.Of(FuelGas.G20, Air, 1.2, 60, x), -20, 50),
        ["FlueBalance airC below flueC"] = new(x => FlueBalance.Of(FuelGas.G20, Air, 1.2, 30, x), -20, 30),
        ["FlueBalance pressurePa"] = new(x => FlueBalance.Of(FuelGas.G20, Air, 1.2, 60, 20, x), 80_000, 110_000),
        ["CondensateKgPerHour grossKw"] = new(x => FlueBalance.Of(FuelGas.G20, Air, 1.2, 30, 20).CondensateKgPerHour(x), 0, 100_000),
        ["SaturationPressure celsius"] = new(x => DewPoint.SaturationPressurePa(x), DewPoint.TripleC, DewPoint.CriticalC),
        ["SaturationC vapourPa"] = new(x => DewPoint.SaturationC(x), DewPoint.SaturationPressurePa(DewPoint.TripleC), 22.064e6),
        ["OfFlueGasC pressurePa"] = new(x => DewPoint.OfFlueGasC(Products, x), 80_000, 110_000),

        ["MetricRate volumeM3"] = new(x => HeatInput.MetricRateM3PerHour((decimal)x, 120), 0, 100, MinBelongs: false),
        ["MetricRate seconds"] = new(x => HeatInput.MetricRateM3PerHour(1, (decimal)x), 0, 86_400, MinBelongs: false),
        ["ImperialRate volumeFt3"] = new(x => HeatInput.ImperialRateFt3PerHour((decimal)x, 120), 0, 3500, MinBelongs: false),
        ["ImperialRate seconds"] = new(x => HeatInput.ImperialRateFt3PerHour(1, (decimal)x), 0, 86_400, MinBelongs: false),
        ["GrossKw rate"] = new(x => HeatInput.GrossKw((decimal)x, 39), 0, 10_000, MinBelongs: false),
        ["GrossKw cv"] = new(x => HeatInput.GrossKw(1, (decimal)x), 10, 150),
        ["ImperialGrossKw rate"] = new(x => HeatInput.ImperialGrossKw((decimal)x, 1040), 0, 350_000, MinBelongs: false),
        ["ImperialGrossKw cv"] = new(x => HeatInput.ImperialGrossKw(1, (decimal)x), 250, 4000),
        ["NetKw grossKw"] = new(x => HeatInput.NetKw((decimal)x, GasFamily.NaturalGas), 0, 100_000),
        ["GrossKwFromNet netKw"] = new(x => HeatInput.GrossKwFromNet((decimal)x, GasFamily.NaturalGas), 0, 100_000),
        ["ToReferenceVolume meterC"] = new(x => GasRate.ToReferenceVolume((decimal)x, 21, 1000), -20, 50),
        ["ToReferenceVolume gauge"] = new(x => GasRate.ToReferenceVolume(15, (decimal)x, 1000), 0, 2000),
        ["ToReferenceVolume barometer"] = new(x => GasRate.ToReferenceVolume(15, 21, (decimal)x), 800, 1100),
        ["AltitudeDeduction heightM"] = new(x => GasRate.AltitudeDeductionMbar((decimal)x), -50, 250),
        ["PressureConversion gauge"] = new(x => GasRate.PressureConversion((decimal)x, 50), 0, 2000),
        ["PressureConversion heightM"] = new(x => GasRate.PressureConversion(21, (decimal)x), -50, 250),
        ["BilledCv daily"] = new(x => GasRate.BilledCvMjPerM3([39m, (decimal)x]), 10, 150),
        ["EnergyKwh volumeM3"] = new(x => GasRate.EnergyKwh((decimal)x, 1, 39), 0, 1e9),
        ["EnergyKwh conversion"] = new(x => GasRate.EnergyKwh(1, (decimal)x, 39), 0.8, 4),
        ["EnergyKwh cv"] = new(x => GasRate.EnergyKwh(1, 1, (decimal)x), 10, 150),
        ["ForHeatInput kw"] = new(x => GasRate.ForHeatInput((decimal)x, 39), 0, 100_000),
        ["ForHeatInput cv"] = new(x => GasRate.ForHeatInput(24, (decimal)x), 10, 150),

        ["Pipe boreMm"] = new(x => InstallationVolume.PipeM3PerM((decimal)x), 4, 200),
        ["TotalM3 length"] = new(x => InstallationVolume.TotalM3(GasMeter.None, [((decimal)x, 0.001m)]), 0, 1000),
        ["TotalM3 m3PerM"] = new(x => InstallationVolume.TotalM3(GasMeter.None, [(1, (decimal)x)]), 0, 0.04),
        ["LitrePerHour volumeM3"] = new(x => LeakRate.LitrePerHour(x, 1, 120), 0, 100, MinBelongs: false),
        ["LitrePerHour dropMbar"] = new(x => LeakRate.LitrePerHour(0.01, x, 120), -100, 100),
        ["LitrePerHour seconds"] = new(x => LeakRate.LitrePerHour(0.01, 1, x), 0, 86_400, MinBelongs: false),
        ["LitrePerHour atmosphere"] = new(x => LeakRate.LitrePerHour(0.01, 1, 120, x), 800, 1100),
        ["MolPerSecond volumeM3"] = new(x => LeakRate.MolPerSecond(x, 1e5, 20, 1e5, 20, 60), 0, 100, MinBelongs: false),
        ["MolPerSecond startPa"] = new(x => LeakRate.MolPerSecond(1, x, 20, 1e5, 20, 60), 0, 1e6, MinBelongs: false),
        ["MolPerSecond startC"] = new(x => LeakRate.MolPerSecond(1, 1e5, x, 1e5, 20, 60), -40, 100),
        ["MolPerSecond endPa"] = new(x => LeakRate.MolPerSecond(1, 1e5, 20, x, 20, 60), 0, 1e6, MinBelongs: false),
        ["MolPerSecond endC"] = new(x => LeakRate.MolPerSecond(1, 1e5, 20, 1e5, x, 60), -40, 100),
        ["MolPerSecond seconds"] = new(x => LeakRate.MolPerSecond(1, 1e5, 20, 1e5, 20, x), 0, 86_400, MinBelongs: false),
        ["CompensatedDrop start"] = new(x => LeakRate.CompensatedDropMbar(x, 15, 20, 15), 0, 2000),
        ["CompensatedDrop startC"] = new(x => LeakRate.CompensatedDropMbar(20, x, 20, 15), -40, 100),
        ["CompensatedDrop end"] = new(x => LeakRate.CompensatedDropMbar(20, 15, x, 15), 0, 2000),
        ["CompensatedDrop endC"] = new(x => LeakRate.CompensatedDropMbar(20, 15, 20, x), -40, 100),
        ["CompensatedDrop atmosphere"] = new(x => LeakRate.CompensatedDropMbar(20, 15, 20, 15, x), 800, 1100),
        ["TemperatureDrift gauge"] = new(x => LeakRate.TemperatureDriftMbar(x, 15, 16), 0, 2000),
        ["TemperatureDrift startC"] = new(x => LeakRate.TemperatureDriftMbar(20, x, 16), -40, 100),
        ["TemperatureDrift endC"] = new(x => LeakRate.TemperatureDriftMbar(20, 15, x), -40, 100),
        ["TemperatureDrift atmosphere"] = new(x => LeakRate.TemperatureDriftMbar(20, 15, 16, x), 800, 1100),

        ["StaticHead heightM"] = new(x => ExpansionVessel.StaticHeadBar((decimal)x), 0, 200),
        ["HighestWorking reliefBar"] = new(x => ExpansionVessel.HighestWorkingBar((decimal)x), 1, 10),
        ["ExpansionFromTenC maxFlowC"] = new(x => ExpansionVessel.ExpansionFromTenC((decimal)x), 10, 110),
        ["TradeVolume expansion"] = new(x => ExpansionVessel.TradeVolumeLitre((decimal)x, 100, 1, 2.7m), 0, 0.1, MinBelongs: false),
        ["TradeVolume systemLitre"] = new(x => ExpansionVessel.TradeVolumeLitre(0.03m, (decimal)x, 1, 2.7m), 0, 100_000, MinBelongs: false),
        ["TradeVolume coldFillBar"] = new(x => ExpansionVessel.TradeVolumeLitre(0.03m, 100, (decimal)x, 12), 0, 10),
        ["TradeVolume finalBar"] = new(x => ExpansionVessel.TradeVolumeLitre(0.03m, 100, 1, (decimal)x), 1, 20, MinBelongs: false),
        ["Reserve systemLitre"] = new(x => ExpansionVessel.ReserveLitre((decimal)x), 0, 100_000, MinBelongs: false),
        ["VolumeWithReserve expansionLitre"] = new(x => ExpansionVessel.VolumeWithReserveLitre((decimal)x, 3, 1, 2.5m), 0, 10_000, MinBelongs: false),
        ["VolumeWithReserve reserveLitre"] = new(x => ExpansionVessel.VolumeWithReserveLitre(3, (decimal)x, 1, 2.5m), 0, 1000),
        ["VolumeWithReserve finalBar"] = new(x => ExpansionVessel.VolumeWithReserveLitre(3, 3, 1, (decimal)x), 1, 20, MinBelongs: false),
        ["ReserveFill vesselLitre"] = new(x => ExpansionVessel.ReserveFillBar((decimal)x, 0, 1), 0, 10_000, MinBelongs: false),
        ["ReserveFill reserveLitre"] = new(x => ExpansionVessel.ReserveFillBar(12, (decimal)x, 1), 0, 12, MaxBelongs: false),
        ["ReserveFill prechargeBar"] = new(x => ExpansionVessel.ReserveFillBar(12, 3, (decimal)x), 0, 10),
        ["Acceptance finalBar"] = new(x => ExpansionVessel.AcceptanceLitre(12, 0.5m, 1, (decimal)x), 1, 20, MinBelongs: false),
        ["Final vesselLitre"] = new(x => ExpansionVessel.FinalBar((decimal)x, 1, 1, 0), 0, 10_000, MinBelongs: false),
        ["Final prechargeBar"] = new(x => ExpansionVessel.FinalBar(12, (decimal)x, 1, 2), 0, 10),
        ["Final coldFillBar"] = new(x => ExpansionVessel.FinalBar(12, 1, (decimal)x, 2), 0, 10),
        ["Final expansionLitre"] = new(x => ExpansionVessel.FinalBar(12, 1, 1, (decimal)x), 0, 12, MaxBelongs: false),
        ["Density celsius"] = new(x => WaterProperties.DensityKgPerM3(x), 0, 110),
        ["HeatCapacity celsius"] = new(x => WaterProperties.HeatCapacityKjPerKgK(x), 5, 110),
        ["HeatKw kgPerSecond"] = new(x => WaterSide.HeatKw(x, 70, 50), 0, 1000),
        ["HeatKw flowC"] = new(x => WaterSide.HeatKw(1, x, 50), 50, 110),
        ["HeatKw returnC"] = new(x => WaterSide.HeatKw(1, 110, x), 5, 110),
        ["FlowKgPerSecond heatKw"] = new(x => WaterSide.FlowKgPerSecond(x, 70, 50), 0, 100_000),
        ["FlowKgPerSecond flowC"] = new(x => WaterSide.FlowKgPerSecond(24, x, 50), 50, 110, MinBelongs: false),
        ["LitrePerMinute kgPerSecond"] = new(x => WaterSide.LitrePerMinute(x, 60), 0, 1000),

        ["Effectiveness transferUnits"] = new(x => HeatExchange.CounterflowEffectiveness(x, 0.5), 0, 100),
        ["Effectiveness capacityRatio"] = new(x => HeatExchange.CounterflowEffectiveness(3, x), 0, 1),
        ["TransferUnits gasInC"] = new(x => HeatExchange.TransferUnits(x, 60, 50), 60, 2200, MinBelongs: false),
        ["TransferUnits flueC"] = new(x => HeatExchange.TransferUnits(1600, x, 50), 50, 600, MinBelongs: false),
        ["TransferUnits returnC"] = new(x => HeatExchange.TransferUnits(1600, 150, x), 5, 110),
        ["ExchangerReading flueC"] = new(x => ExchangerReading.From((decimal)x, 50, 100), 5, 600),
        ["ExchangerReading returnC"] = new(x => ExchangerReading.From(60, (decimal)x, 100), 5, 110),
        ["ExchangerReading loadPercent"] = new(x => ExchangerReading.From(60, 50, (decimal)x), 0, 120, MinBelongs: false),
        ["FreeArea netInputKw"] = new(x => AirSupply.FreeAreaCm2((decimal)x), 0, 70),
        ["FreeArea cm2PerKw"] = new(x => AirSupply.FreeAreaCm2(20, (decimal)x), 0, 50, MinBelongs: false),
        ["FreeArea deductedKw"] = new(x => AirSupply.FreeAreaCm2(20, 5, (decimal)x), 0, 70),
        ["VentFlow freeAreaCm2"] = new(x => AirSupply.FlowM3PerHour(x, 4), 0, 10_000),
        ["VentFlow pressurePa"] = new(x => AirSupply.FlowM3PerHour(65, x), 0, 100),
        ["VentFlow dischargeCoefficient"] = new(x => AirSupply.FlowM3PerHour(65, 4, x), 0.1, 1),
        ["VentFlow airKgPerM3"] = new(x => AirSupply.FlowM3PerHour(65, 4, 0.61, x), 0.9, 1.5),
        ["CombustionAir netInputKw"] = new(x => AirSupply.CombustionAirM3PerHour(FuelGas.G20, Air, x, 1.5), 0, 100_000),
        ["Draught heightM"] = new(x => Draught.PressurePa(x, 10, 80), 0, 200),
        ["Draught outsideC"] = new(x => Draught.PressurePa(5, x, 80), -40, 50),
        ["Draught flueC"] = new(x => Draught.PressurePa(5, 10, x), -40, 600),
        ["Draught pressurePa"] = new(x => Draught.PressurePa(5, 10, 80, x), 60_000, 110_000),
        ["CoPpm roomM3"] = new(x => RoomAir.CoPpm(x, 0.001, 1, 1), 0, 100_000, MinBelongs: false),
        ["CoPpm coM3PerHour"] = new(x => RoomAir.CoPpm(30, x, 1, 1), 0, 100),
        ["CoPpm airChanges"] = new(x => RoomAir.CoPpm(30, 0.001, x, 1), 0, 100),
        ["CoPpm hours"] = new(x => RoomAir.CoPpm(30, 0.001, 1, x), 0, 1000),
        ["CoPpm startPpm"] = new(x => RoomAir.CoPpm(30, 0.001, 1, 1, x), 0, 100_000),
        ["SteadyCoPpm airChanges"] = new(x => RoomAir.SteadyCoPpm(30, 0.001, x), 0, 100, MinBelongs: false),
        ["HoursToCoPpm coM3PerHour"] = new(x => RoomAir.HoursToCoPpm(30, x, 1, 0), 0, 100, MinBelongs: false),
        ["HoursToCoPpm coPpm"] = new(x => RoomAir.HoursToCoPpm(100, 0.006, 1, x), 0, 60, MaxBelongs: false),
        ["MgPerM3 coPpm"] = new(x => RoomAir.MgPerM3(x, 20), 0, 1e6),
        ["MgPerM3 celsius"] = new(x => RoomAir.MgPerM3(1, x), -40, 50),
        ["MgPerM3 pressurePa"] = new(x => RoomAir.MgPerM3(1, 20, x), 60_000, 110_000),

        ["OfReading absoluteLimit"] = new(x => Uncertainty.OfReading(1, x, 1, 1), 0, double.MaxValue),
        ["OfReading relativeLimitPercent"] = new(x => Uncertainty.OfReading(1, 1, x, 1), 0, 100),
        ["OfReading resolution"] = new(x => Uncertainty.OfReading(1, 1, 1, x), 0, double.MaxValue),
        ["Combined uncertainty"] = new(x => Uncertainty.Combined(values => values[0], [new(1, x)]), 0, double.MaxValue),
        ["OfRatio coPpm"] = new(x => Uncertainty.OfRatio(new(x, 1), new(9, 0.1)), 0, 1e6),
        ["OfRatio uCo"] = new(x => Uncertainty.OfRatio(new(1, x), new(9, 0.1)), 0, double.MaxValue),
        ["OfRatio co2Percent"] = new(x => Uncertainty.OfRatio(new(1, 1), new(x, 0.1)), 0, 100, MinBelongs: false),
        ["OfRatio uCo2"] = new(x => Uncertainty.OfRatio(new(1, 1), new(9, x)), 0, double.MaxValue),
        ["Conformity uncertainty"] = new(x => Conformity.AtMost(new(1, x), 2), 0, double.MaxValue, MinBelongs: false),
        ["Conformity limit"] = new(x => Conformity.AtLeast(new(0, 1), x), double.MinValue, double.MaxValue),
        ["Conformity value"] = new(x => Conformity.AtMost(new(x, 1), 0), double.MinValue, double.MaxValue),
        ["Conformity lower limit"] = new(x => Conformity.Between(new(0, 1), x, 2), double.MinValue, 2),

        ["SampleSize population"] = new(x => Inspection.SampleSize(Whole(x), 1, 95), 1, 1e6),
        ["SampleSize tolerable"] = new(x => Inspection.SampleSize(100, Whole(x), 95, 2), 3, 100),
        ["SampleSize confidence"] = new(x => Inspection.SampleSize(100, 2, (decimal)x), 0, 99.9999, MinBelongs: false),
        ["SampleSize allowed"] = new(x => Inspection.SampleSize(100, 20, 95, Whole(x)), 0, 10),
        ["SampleSizeOfUnlimited share"] = new(x => Inspection.SampleSizeOfUnlimited((decimal)x, 95), 0.1, 100),
        ["SampleSizeOfUnlimited confidence"] = new(x => Inspection.SampleSizeOfUnlimited(5, (decimal)x), 0, 99.9999, MinBelongs: false),
        ["SampleSizeOfUnlimited allowed"] = new(x => Inspection.SampleSizeOfUnlimited(5, 95, Whole(x)), 0, 10),
        ["UpperBound population"] = new(x => Inspection.UpperBound(Whole(x), 1, 0, 95), 1, 1e6),
        ["UpperBound visited"] = new(x => Inspection.UpperBound(20_000, Whole(x), 0, 95), 1, 10_000),
        ["UpperBound visited of few"] = new(x => Inspection.UpperBound(20, Whole(x), 0, 95), 1, 20),
        ["UpperBound found"] = new(x => Inspection.UpperBound(200, 32, Whole(x), 95), 0, 32),
        ["CountOfShare population"] = new(x => Inspection.CountOfShare(Whole(x), 5), 1, 1e6),
        ["CountOfShare share"] = new(x => Inspection.CountOfShare(100, (decimal)x), 0, 100, MinBelongs: false),
        ["Hypergeometric population"] = new(x => Hypergeometric.AtMost(Whole(x), 0, 0, 0), 0, 1e6),
        ["Hypergeometric faulty"] = new(x => Hypergeometric.AtMost(50, Whole(x), 10, 2), 0, 50),
        ["Hypergeometric drawn"] = new(x => Hypergeometric.AtMost(50, 10, Whole(x), 2), 0, 50),
        ["ChiSquareAtLeast value"] = new(x => ChanceTails.ChiSquareAtLeast(x, 9), 0, 1e6),
        ["ChiSquareAtLeast degrees"] = new(x => ChanceTails.ChiSquareAtLeast(16, Whole(x)), 1, 1000),
        ["PoissonAtLeast count"] = new(x => ChanceTails.PoissonAtLeast(Whole(x), 2), 0, 1000),
        ["PoissonAtLeast mean"] = new(x => ChanceTails.PoissonAtLeast(2, x), 0, 1e6),
        ["PoissonAtLeast mean of none"] = new(x => ChanceTails.PoissonAtLeast(0, x), 0, 1e6),
        ["Adjusted chance"] = new(x => FalseDiscovery.Adjusted([0.5, x]), 0, 1),
    };

    public static TheoryData<string> Names => [.. Inputs.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_range_ends_where_the_docstring_says(string name)
    {
        var input = Inputs[name];

        Assert.NotNull(input.Call(Inside(input.Min, input.MinBelongs, +1)));
        Assert.NotNull(input.Call(Inside(input.Max, input.MaxBelongs, -1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => input.Call(Outside(input.Min, input.MinBelongs, -1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => input.Call(Outside(input.Max, input.MaxBelongs, +1)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_formula_takes_what_is_not_a_number(string name)
    {
        try
        {
            var answer = Inputs[name].Call(double.NaN);
            Assert.Fail($"{name} answered {answer}.");
        }
        catch (Exception refusal) when (refusal is ArgumentOutOfRangeException or OverflowException)
        {
            // A decimal input cannot even be made of NaN (overflow).
        }
    }

    [Fact]
    public void The_refusal_names_the_input_and_its_range()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => FlueGas.Ratio(96, 0));

        Assert.Equal("co2Percent", refusal.ParamName);
        Assert.StartsWith("co2Percent must be above 0 and at most 100.", refusal.Message, StringComparison.Ordinal);
        Assert.StartsWith(
            "celsius must be from 0 to 110.",
            Assert.Throws<ArgumentOutOfRangeException>(() => WaterProperties.DensityKgPerM3(-1)).Message,
            StringComparison.Ordinal);
        Assert.StartsWith(
            "o2Percent must be at least 0 and below 20.9.",
            Assert.Throws<ArgumentOutOfRangeException>(() => FlueGas.CoAirFreePpm(1, 20.9m, 20.9m)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_a_fuel_a_component_a_meter_or_a_size_is_refused()
    {
        const GasFamily NoFuel = (GasFamily)9;
        const ReferenceTemperature NoTemperature = (ReferenceTemperature)9, C15 = ReferenceTemperature.Celsius15;
        var ethane = FuelGas.Of((GasComponent.Ethane, 1));
        Action[] calls =
        [
            () => NoFuel.GrossToNet(),
            () => NoFuel.Co2MaxPercent(),
            () => FuelGas.Of(NoFuel),
            () => FlueGas.FuelFactorBand(NoFuel),
            () => FlueLoss.SiegertFromCo2Percent(160, 20, 9, NoFuel),
            () => ((GasComponent)99).Atoms(),
            () => Iso6976.Celsius(NoTemperature),
            () => InstallationVolume.MeterM3((GasMeter)9),
            () => InstallationVolume.CopperM3PerM(42),
            () => GasRate.BilledCvMjPerM3([]),
            () => CalorificValue.Of(ethane, Iso6976.Edition1995, C15, C15, 101.325),
            () => CalorificValue.Of(FuelGas.G20, Iso6976.Edition1995, C15, ReferenceTemperature.Fahrenheit60, 101.325),
            () => CalorificValue.Of(FuelGas.G20, Iso6976.Edition2016, C15, ReferenceTemperature.Celsius25, 101.325),
            () => CalorificValue.Of(FuelGas.G20, Iso6976.Edition2016, NoTemperature, C15, 101.325),
            () => CalorificValue.Of(FuelGas.G20, Iso6976.Edition2016, (ReferenceTemperature)(-1), C15, 101.325),
            () => CalorificValue.Of(
                FuelGas.Of((GasComponent.NHexane, 1)), Iso6976.Edition2016, C15, ReferenceTemperature.Celsius0, 101.325),
            () => FlueBalance.Of(FuelGas.Of((GasComponent.Nitrogen, 1)), Air, 1, 60, 20),
            () => FlueLoss.Bs845K1(FuelGas.Of((GasComponent.Nitrogen, 1))),
            () => AirSupply.CombustionAirM3PerHour(FuelGas.Of((GasComponent.Nitrogen, 1)), Air, 20, 1.5),
        ];

        // A refusal without words would begin with the parameter in brackets.
        Assert.All(calls, call => Assert.Matches("^[A-Za-z]", Assert.Throws<ArgumentOutOfRangeException>(call).Message));
    }

    /// <summary>A whole number a step outside of an end is the next one.</summary>
    private static int Whole(double x) => double.IsNaN(x) ? throw new OverflowException() : (int)Math.Round(x) + Math.Sign(x - Math.Round(x));

    private static double Inside(double end, bool belongs, int inward) => belongs ? end : end + inward * Step(end);

    // Beyond the largest number lies infinity.
    private static double Outside(double end, bool belongs, int outward) =>
        !belongs ? end : Math.Abs(end) == double.MaxValue ? outward * double.PositiveInfinity : end + outward * Step(end);

    private static double Step(double end) => 1e-9 * Math.Max(1, Math.Abs(end));
}
