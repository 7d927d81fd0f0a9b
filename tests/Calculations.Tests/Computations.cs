namespace Calculations.Tests;

/// <summary>How each named computation of the vectors is reached.</summary>
internal static class Computations
{
    private const double KjPerMmbtu = 1_055_055.853;

    public static IReadOnlyDictionary<string, Func<Vector, double>> ByName { get; } = new Dictionary<string, Func<Vector, double>>(StringComparer.Ordinal)
    {
        ["combustion.ratio"] = v => (double)FlueGas.Ratio(v.Exact("coPpm"), v.Exact("co2Percent")),
        ["combustion.co2FromO2"] = v => (double)FlueGas.Co2FromO2Percent(v.Exact("o2Percent"), v.Choice<GasFamily>("gas"), v.Exact("o2InAirPercent")),
        ["combustion.o2FromCo2"] = v => (double)FlueGas.O2FromCo2Percent(v.Exact("co2Percent"), v.Choice<GasFamily>("gas"), v.Exact("o2InAirPercent")),
        ["combustion.coAirFree"] = v => (double)FlueGas.CoAirFreePpm(v.Exact("coPpm"), v.Exact("o2Percent"), v.Exact("o2InAirPercent")),
        ["combustion.coAirFreeFromCo2"] = v => (double)FlueGas.CoAirFreeFromCo2Ppm(v.Exact("coPpm"), v.Exact("co2Percent"), v.Choice<GasFamily>("gas")),
        ["combustion.fuelFactor"] = v => (double)FlueGas.FuelFactor(v.Exact("o2Percent"), v.Exact("co2Percent"), v.Exact("coPpm"), v.Exact("o2InAirPercent")),
        ["combustion.expectedFuelFactor"] = v => (double)FlueGas.ExpectedFuelFactor(v.Choice<GasFamily>("gas"), v.Exact("o2InAirPercent")),

        ["stoichiometry.air"] = v => Stoichiometry.TheoreticalAir(v.Gas(), v.Air()),
        ["stoichiometry.airSupplied"] = v => v.Products().Air,
        ["stoichiometry.dry"] = v => v.Products().Dry,
        ["stoichiometry.wet"] = v => v.Products().Wet,
        ["stoichiometry.co2Max"] = v => Stoichiometry.Co2MaxPercent(v.Gas(), v.Air()),
        ["stoichiometry.excessAirFromO2"] = v => 100 * (RatioFromO2(v) - 1),
        ["stoichiometry.excessAirFromCo2"] = v => 100 * (Stoichiometry.ExcessAirRatioFromCo2(v.Gas(), v.Air(), v.Number("co2Percent")) - 1),
        ["stoichiometry.co2Wet"] = v => 100 * v.Products().CarbonDioxide / v.Products().Wet,
        ["stoichiometry.o2Wet"] = v => 100 * v.Products().Oxygen / v.Products().Wet,
        ["stoichiometry.waterWet"] = v => v.Products().WaterPercent,
        ["stoichiometry.nitrogen"] = v => v.Products().Nitrogen,
        ["stoichiometry.oxygen"] = v => v.Products().Oxygen,
        ["stoichiometry.water"] = v => v.Products().Water,
        ["stoichiometry.carbonDioxide"] = v => v.Products().CarbonDioxide,
        ["stoichiometry.o2Dry"] = v => v.Products().O2DryPercent,
        ["stoichiometry.co2PerMmbtu"] = v => Stoichiometry.Burn(v.Gas(), CombustionAir.Of(20.95), 1).CarbonDioxide * 44.0095e-3 * KjPerMmbtu / CalorificValue.Of(v.Gas()).GrossKjPerMol,
        ["stoichiometry.dryPerMmbtu"] = v => Stoichiometry.Burn(v.Gas(), v.Air(), 1).Dry / CalorificValue.Of(v.Gas()).GrossKjPerMol * KjPerMmbtu * 0.0240554 / 0.028316847,

        ["gas.molarMass"] = v => Properties(v).KgPerKmol,
        ["gas.z"] = v => Properties(v).CompressionFactor,
        ["gas.grossMolar"] = v => Properties(v).GrossKjPerMol,
        ["gas.grossMass"] = v => Properties(v).GrossMjPerKg,
        ["gas.netMass"] = v => Properties(v).NetMjPerKg,
        ["gas.gross"] = v => Properties(v).GrossMjPerM3,
        ["gas.grossIdeal"] = v => Properties(v).GrossMjPerM3 * Properties(v).CompressionFactor,
        ["gas.net"] = v => Properties(v).NetMjPerM3,
        ["gas.density"] = v => Properties(v).KgPerM3,
        ["gas.relativeDensity"] = v => Properties(v).RelativeDensity,
        ["gas.grossWobbe"] = v => Properties(v).GrossWobbeMjPerM3,
        ["gas.netWobbe"] = v => Properties(v).NetWobbeMjPerM3,

        ["flue.siegertFromO2"] = v => FlueLoss.SiegertFromO2Percent(v.Number("flueC"), v.Number("airC"), v.Number("o2Percent"), v.Choice<GasFamily>("gas"), v.Number("o2InAirPercent")),
        ["flue.siegertFromCo2"] = v => FlueLoss.SiegertFromCo2Percent(v.Number("flueC"), v.Number("airC"), v.Number("co2Percent"), v.Choice<GasFamily>("gas")),
        ["flue.sensibleNet"] = v => Balance(v, RatioFromO2(v)).SensibleLossPercentNet,
        ["flue.grossEfficiency"] = v => Balance(v, RatioFromO2(v)).GrossPercent,
        ["flue.netEfficiency"] = v => Balance(v, v.Number("excessAirRatio")).NetPercent,
        ["flue.grossEfficiencyAtRatio"] = v => Balance(v, v.Number("excessAirRatio")).GrossPercent,
        ["flue.condensed"] = v => Balance(v, v.Number("excessAirRatio")).CondensedPercent,
        ["flue.condensatePerKwhGross"] = v => Balance(v, v.Number("excessAirRatio")).CondensateKgPerKwhGross,
        ["flue.latentNet"] = v => FlueBalance.Of(v.Gas(), CombustionAir.Of(20.95), 1.25, 80, 20).LatentPercentNet,
        ["flue.mostCondensate"] = MostCondensate,
        ["flue.bs845K1Gross"] = v => FlueLoss.Bs845K1(v.Gas()).Gross,
        ["flue.bs845K1Net"] = v => FlueLoss.Bs845K1(v.Gas()).Net,
        ["flue.bs845Gross"] = v => FlueLoss.Bs845GrossPercent(v.Gas(), v.Number("flueC"), v.Number("airC"), v.Number("co2Percent")),
        ["flue.coLossNet"] = v => FlueLoss.CarbonMonoxidePercentNet(v.Gas(), v.Products().Dry, v.Number("coPpm")),
        ["flue.coLossGross"] = v => FlueLoss.CarbonMonoxidePercentNet(v.Gas(), v.Products().Dry, v.Number("coPpm")) / Balance25(v.Gas()).GrossPerNet,

        ["dew.saturationPressure"] = v => DewPoint.SaturationPressurePa(v.Number("celsius")),
        ["dew.saturationTemperature"] = v => DewPoint.SaturationC(v.Number("pascal")),
        ["dew.flue"] = v => DewPoint.OfFlueGasC(v.Products()),

        ["heatInput.metricRate"] = v => (double)HeatInput.MetricRateM3PerHour(v.Exact("volumeM3"), v.Exact("seconds")),
        ["heatInput.imperialRate"] = v => (double)HeatInput.ImperialRateFt3PerHour(v.Exact("volumeFt3"), v.Exact("seconds")),
        ["heatInput.grossKw"] = v => (double)HeatInput.GrossKw(v.Exact("rateM3PerHour"), v.Exact("cvMjPerM3")),
        ["heatInput.imperialGrossKw"] = v => (double)HeatInput.ImperialGrossKw(v.Exact("rateFt3PerHour"), v.Exact("cvBtuPerFt3")),
        ["heatInput.netKw"] = v => (double)HeatInput.NetKw(v.Exact("grossKw"), v.Choice<GasFamily>("gas")),
        ["heatInput.grossFromNet"] = v => (double)HeatInput.GrossKwFromNet(v.Exact("netKw"), v.Choice<GasFamily>("gas")),
        ["gasRate.toReference"] = v => (double)GasRate.ToReferenceVolume(v.Exact("meterC"), v.Exact("gaugeMbar"), v.Exact("barometerMbar")),
        ["gasRate.altitudeDeduction"] = v => (double)GasRate.AltitudeDeductionMbar(v.Exact("heightM")),
        ["gasRate.pressureConversion"] = v => (double)GasRate.PressureConversion(v.Exact("gaugeMbar"), v.Exact("heightM")),
        ["gasRate.energy"] = v => (double)GasRate.EnergyKwh(v.Exact("volumeM3"), v.Exact("conversion"), v.Exact("cvMjPerM3")),
        ["gasRate.billedCv"] = v => (double)GasRate.BilledCvMjPerM3([.. v.Numbers("daily").Select(cv => (decimal)cv)]),
        ["gasRate.forHeatInput"] = v => (double)GasRate.ForHeatInput(v.Exact("kw"), v.Exact("cvMj")),

        ["volume.pipe"] = v => (double)InstallationVolume.PipeM3PerM(v.Exact("boreMm")),
        ["volume.copper"] = v => (double)InstallationVolume.CopperM3PerM((int)v.Number("outsideMm")),
        ["volume.total"] = v => (double)InstallationVolume.TotalM3(v.Choice<GasMeter>("meter"), v.Inputs["pipes"].EnumerateArray().Select(pipe => (pipe[0].GetDecimal(), pipe[1].GetDecimal()))),
        ["leak.litrePerHour"] = v => LeakRate.LitrePerHour(v.Number("volumeM3"), v.Number("dropMbar"), v.Number("seconds"), v.Number("atmosphereMbar")),
        ["leak.molPerSecond"] = v => LeakRate.MolPerSecond(v.Number("volumeM3"), v.Number("startPa"), v.Number("startC"), v.Number("endPa"), v.Number("endC"), v.Number("seconds")),
        ["leak.drift"] = v => LeakRate.TemperatureDriftMbar(v.Number("gaugeMbar"), v.Number("startC"), v.Number("endC"), v.Number("atmosphereMbar")),
        ["leak.compensatedDrop"] = v => LeakRate.CompensatedDropMbar(v.Number("startMbar"), v.Number("startC"), v.Number("endMbar"), v.Number("endC"), v.Number("atmosphereMbar")),

        ["vessel.expansion"] = v => (double)ExpansionVessel.ExpansionFromTenC(v.Exact("flowC")),
        ["vessel.staticHead"] = v => (double)ExpansionVessel.StaticHeadBar(v.Exact("heightM")),
        ["vessel.lowestPrecharge"] = v => (double)ExpansionVessel.LowestPrechargeBar(v.Exact("heightM")),
        ["vessel.highestWorking"] = v => (double)ExpansionVessel.HighestWorkingBar(v.Exact("reliefBar")),
        ["vessel.tradeVolume"] = v => (double)ExpansionVessel.TradeVolumeLitre(v.Exact("expansion"), v.Exact("systemLitre"), v.Exact("fillBar"), v.Exact("finalBar")),
        ["vessel.reserve"] = v => (double)ExpansionVessel.ReserveLitre(v.Exact("systemLitre")),
        ["vessel.withReserve"] = v => (double)ExpansionVessel.VolumeWithReserveLitre(v.Exact("expansionLitre"), v.Exact("reserveLitre"), v.Exact("prechargeBar"), v.Exact("finalBar")),
        ["vessel.reserveFill"] = v => (double)ExpansionVessel.ReserveFillBar(v.Exact("vesselLitre"), v.Exact("reserveLitre"), v.Exact("prechargeBar")),
        ["vessel.final"] = v => (double)ExpansionVessel.FinalBar(v.Exact("vesselLitre"), v.Exact("prechargeBar"), v.Exact("fillBar"), v.Exact("expansionLitre")),
        ["vessel.acceptance"] = v => (double)ExpansionVessel.AcceptanceLitre(v.Exact("vesselLitre"), v.Exact("prechargeBar"), v.Exact("fillBar"), v.Exact("finalBar")),
        ["water.density"] = v => WaterProperties.DensityKgPerM3(v.Number("celsius")),
        ["water.expansionFromZero"] = v => WaterProperties.DensityKgPerM3(0) / WaterProperties.DensityKgPerM3(v.Number("celsius")),
        ["water.heatCapacity"] = v => WaterProperties.HeatCapacityKjPerKgK(v.Number("celsius")),
        ["waterSide.flow"] = v => WaterSide.FlowKgPerSecond(v.Number("kw"), v.Number("flowC"), v.Number("returnC")),
        ["waterSide.heat"] = v => WaterSide.HeatKw(v.Number("kgPerSecond"), v.Number("flowC"), v.Number("returnC")),
        ["waterSide.litrePerMinute"] = v => WaterSide.LitrePerMinute(v.Number("kgPerSecond"), v.Number("celsius")),

        ["exchanger.effectiveness"] = v => HeatExchange.CounterflowEffectiveness(v.Number("transferUnits"), v.Number("capacityRatio")),
        ["exchanger.transferUnits"] = v => HeatExchange.TransferUnits(v.Number("gasInC"), v.Number("flueC"), v.Number("returnC")),
        ["ventilation.freeArea"] = v => (double)AirSupply.FreeAreaCm2(v.Exact("netKw"), v.Exact("cm2PerKw"), v.Exact("deductedKw")),
        ["ventilation.flow"] = v => AirSupply.FlowM3PerHour(v.Number("areaCm2"), v.Number("pascal"), v.Number("cd"), v.Number("kgPerM3")),
        ["ventilation.combustionAir"] = v => AirSupply.CombustionAirM3PerHour(v.Gas(), v.Air(), v.Number("netKw"), v.Number("excessAirRatio")),
        ["draught"] = v => Draught.PressurePa(v.Number("heightM"), v.Number("outsideC"), v.Number("flueC"), v.Number("pascal")),
        ["room.co"] = v => RoomAir.CoPpm(v.Number("roomM3"), v.Number("coM3PerHour"), v.Number("airChanges"), v.Number("hours"), v.Number("startPpm")),
        ["room.steady"] = v => RoomAir.SteadyCoPpm(v.Number("roomM3"), v.Number("coM3PerHour"), v.Number("airChanges")),
        ["room.hoursTo"] = v => RoomAir.HoursToCoPpm(v.Number("roomM3"), v.Number("coM3PerHour"), v.Number("airChanges"), v.Number("coPpm")),
        ["room.mgPerM3"] = v => RoomAir.MgPerM3(v.Number("coPpm"), v.Number("celsius")),

        ["uncertainty.concentration"] = v => Uncertainty.Combined(x => 1000 * x[0] * x[1] / x[2], Inputs(v)),
        ["uncertainty.mixture"] = v => Uncertainty.Combined(x => Enumerable.Range(0, x.Count / 2).Sum(i => x[i] * x[i + x.Count / 2]), Inputs(v)),
        ["uncertainty.reading"] = v => Uncertainty.OfReading(v.Number("reading"), v.Number("absolute"), v.Number("relativePercent"), v.Number("resolution")),
        ["uncertainty.ratio"] = v => Uncertainty.OfRatio(new(v.Number("coPpm"), v.Number("uCo")), new(v.Number("co2Percent"), v.Number("uCo2"))),
        ["conformity.atMost"] = v => Conformity.AtMost(new(v.Number("reading"), v.Number("u")), v.Number("limit")),
        ["conformity.atLeast"] = v => Conformity.AtLeast(new(v.Number("reading"), v.Number("u")), v.Number("limit")),
        ["conformity.between"] = v => Conformity.Between(new(v.Number("reading"), v.Number("u")), v.Number("lower"), v.Number("upper")),

        ["trend.score"] = v => MannKendall.Score(v.Numbers("values")),
        ["trend.riseProbability"] = v => MannKendall.ProbabilityOfRise(v.Numbers("values")),
        ["trend.slope"] = v => TheilSen.Slope([.. v.Numbers("x").Zip(v.Numbers("y"))]),
        ["readings.riseProbability"] = v => TwoReadings.ProbabilityOfRise(new(v.Number("earlier"), v.Number("uEarlier")), new(v.Number("later"), v.Number("uLater"))),

        ["inspection.size"] = v => Inspection.SampleSize(v.Whole("population"), v.Whole("tolerable"), v.Exact("confidencePercent"), v.Whole("allowed")),
        ["inspection.sizeOfUnlimited"] = v => Inspection.SampleSizeOfUnlimited(v.Exact("tolerablePercent"), v.Exact("confidencePercent"), v.Whole("allowed")),
        ["inspection.upperBound"] = v => Inspection.UpperBound(v.Whole("population"), v.Whole("visited"), v.Whole("found"), v.Exact("confidencePercent")),
        ["inspection.countOfShare"] = v => Inspection.CountOfShare(v.Whole("population"), v.Exact("sharePercent")),
        ["hypergeometric.atMost"] = v => Hypergeometric.AtMost(v.Whole("population"), v.Whole("faulty"), v.Whole("drawn"), v.Whole("found")),
        ["chance.chiSquare"] = v => ChanceTails.ChiSquareAtLeast(v.Number("value"), v.Whole("degreesOfFreedom")),
        ["chance.poisson"] = v => ChanceTails.PoissonAtLeast(v.Whole("count"), v.Number("mean")),
        ["falseDiscovery.count"] = v => FalseDiscovery.Adjusted(v.Numbers("values")).Count(chance => chance <= v.Number("rate")),
    };

    private static GasProperties Properties(Vector v) => CalorificValue.Of(
        v.Gas(),
        v.Number("edition") == 2016 ? Iso6976.Edition2016 : Iso6976.Edition1995,
        Reference(v.Inputs["combustion"].GetString()!),
        Reference(v.Inputs["volume"].GetString()!),
        101.325);

    private static ReferenceTemperature Reference(string name) => name switch
    {
        "0" => ReferenceTemperature.Celsius0,
        "15" => ReferenceTemperature.Celsius15,
        "60F" => ReferenceTemperature.Fahrenheit60,
        "20" => ReferenceTemperature.Celsius20,
        "25" => ReferenceTemperature.Celsius25,
        _ => throw new InvalidOperationException($"Unknown reference temperature {name}."),
    };

    private static double RatioFromO2(Vector v) => Stoichiometry.ExcessAirRatioFromO2(v.Gas(), v.Air(), v.Number("o2Percent"));

    private static FlueEfficiency Balance(Vector v, double excessAirRatio) =>
        FlueBalance.Of(v.Gas(), v.Air(), excessAirRatio, v.Number("flueC"), v.Number("airC"));

    private static FlueEfficiency Balance25(FuelGas fuel) => FlueBalance.Of(fuel, CombustionAir.Of(20.95), 1, 20, 20);

    private static double MostCondensate(Vector v)
    {
        var cold = FlueBalance.Of(v.Gas(), CombustionAir.Of(20.95), 1, 20, 20);
        return cold.CondensateKgPerKwhGross / cold.CondensedPercent * 100;
    }

    private static Measured[] Inputs(Vector v) =>
        [.. v.Numbers("values").Zip(v.Numbers("uncertainties"), (value, uncertainty) => new Measured(value, uncertainty))];
}
