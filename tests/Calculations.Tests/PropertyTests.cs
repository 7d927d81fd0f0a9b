using CsCheck;

namespace Calculations.Tests;

/// <summary>What holds for every input, tried on many.</summary>
public class PropertyTests
{
    private static readonly CombustionAir Air = CombustionAir.Of(20.95);

    private static readonly Gen<GasFamily> Families = Gen.Enum<GasFamily>();

    private static readonly Gen<double> ExcessAirRatios = Gen.Double[1, 4];

    private static readonly Gen<FuelGas> Fuels = Gen.Double[0.01, 1].Array[6].Select(weights => FuelGas.Of(
        [.. new[] { GasComponent.Methane, GasComponent.Propane, GasComponent.NButane, GasComponent.Hydrogen, GasComponent.Nitrogen, GasComponent.CarbonDioxide }
            .Zip(weights, (component, weight) => (component, weight / weights.Sum()))]));

    [Fact]
    public void Dilution_leaves_the_ratio_unchanged() =>
        Gen.Select(Gen.Int[0, 2000], Gen.Int[10, 110], Gen.Int[1, 20]).Sample((coPpm, co2Tenths, parts) =>
        {
            var whole = FlueGas.Ratio(coPpm, co2Tenths / 10m);
            var diluted = FlueGas.Ratio((decimal)coPpm / parts, co2Tenths / 10m / parts);
            Assert.Equal(whole, diluted, 15);
        });

    [Fact]
    public void Carbon_dioxide_falls_in_a_straight_line_as_oxygen_rises() =>
        Gen.Select(Families, Gen.Int[0, 2095], Gen.Int[0, 2095]).Sample((gas, a, b) =>
        {
            decimal Co2(decimal hundredths) => FlueGas.Co2FromO2Percent(hundredths / 100m, gas, OxygenInAir.PhysicalPercent);
            Assert.Equal((Co2(a) + Co2(b)) / 2, Co2((a + b) / 2m), 20);
            Assert.Equal(a / 100m, FlueGas.O2FromCo2Percent(Co2(a), gas, OxygenInAir.PhysicalPercent), 20);
        });

    [Fact]
    public void Short_and_full_stoichiometry_agree_on_carbon_dioxide() =>
        Gen.Select(Families, ExcessAirRatios).Sample((gas, ratio) =>
        {
            var flueGas = Stoichiometry.Burn(FuelGas.Of(gas), Air, ratio);
            var co2 = FlueGas.Co2FromO2Percent((decimal)flueGas.O2DryPercent, gas, OxygenInAir.PhysicalPercent);
            Assert.Equal(flueGas.Co2DryPercent, (double)co2, 0.005);
        });

    [Fact]
    public void Every_atom_that_enters_the_flame_leaves_it() =>
        Gen.Select(Fuels, ExcessAirRatios, Gen.Double[0, 3]).Sample((fuel, ratio, waterPercent) =>
        {
            var air = CombustionAir.Of(20.95, waterPercent);
            var gas = Stoichiometry.Burn(fuel, air, ratio);
            double Atoms(Func<Atoms, int> of) => fuel.Mean(component => of(component.Atoms()));
            Assert.Equal(Atoms(a => a.Carbon), gas.CarbonDioxide, 1e-12);
            Assert.Equal(Atoms(a => a.Hydrogen) + 2 * gas.Air * air.Water, 2 * gas.Water, 1e-9);
            Assert.Equal(Atoms(a => a.Oxygen) + gas.Air * (2 * air.Oxygen + air.Water), 2 * gas.CarbonDioxide + gas.Water + 2 * gas.Oxygen, 1e-9);
            Assert.Equal(Atoms(a => a.Nitrogen) + 2 * gas.Air * air.Nitrogen, 2 * gas.Nitrogen, 1e-9);
        });

    [Fact]
    public void Excess_air_found_from_oxygen_or_carbon_dioxide_is_the_excess_air_supplied() =>
        Gen.Select(Fuels, ExcessAirRatios, Gen.Double[0, 3], Gen.Double[0, 0.1]).Sample((fuel, ratio, waterPercent, co2InAirPercent) =>
        {
            var air = CombustionAir.Of(20.95, waterPercent, co2InAirPercent);
            var gas = Stoichiometry.Burn(fuel, air, ratio);
            Assert.Equal(ratio, Stoichiometry.ExcessAirRatioFromO2(fuel, air, gas.O2DryPercent), 1e-9);
            Assert.Equal(ratio, Stoichiometry.ExcessAirRatioFromCo2(fuel, air, Math.Min(gas.Co2DryPercent, Stoichiometry.Co2MaxPercent(fuel, air))), 1e-9);
        });

    [Fact]
    public void Loss_rises_with_flue_temperature_and_with_excess_air() =>
        Gen.Select(Families, Gen.Double[1, 3], Gen.Double[60, 250], Gen.Double[0.01, 1], Gen.Double[1, 50]).Sample((gas, ratio, flueC, moreAir, moreHeat) =>
        {
            double Loss(double r, double t) => 100 - FlueBalance.Of(FuelGas.Of(gas), Air, r, t, 20).NetPercent;
            Assert.True(Loss(ratio, flueC + moreHeat) > Loss(ratio, flueC));
            Assert.True(Loss(ratio + moreAir, flueC) > Loss(ratio, flueC));
        });

    [Fact]
    public void No_efficiency_on_gross_calorific_value_reaches_a_hundred() =>
        Gen.Select(Families, Gen.Double[1, 3], Gen.Double[20, 250]).Sample((gas, ratio, flueC) =>
            Assert.InRange(FlueBalance.Of(FuelGas.Of(gas), Air, ratio, flueC, 20).GrossPercent, 50, 100));

    [Fact]
    public void Siegert_stays_near_the_exact_loss_of_natural_gas() =>
        Gen.Select(Gen.Double[60, 200], Gen.Double[1, 8]).Sample((flueC, o2Percent) =>
        {
            var exact = FlueBalance.Of(FuelGas.G20, Air, Stoichiometry.ExcessAirRatioFromO2(FuelGas.G20, Air, o2Percent), flueC, 20);
            var co2 = (double)FlueGas.Co2FromO2Percent((decimal)o2Percent, GasFamily.NaturalGas, OxygenInAir.PhysicalPercent);
            Assert.Equal(exact.SensibleLossPercentNet, FlueLoss.SiegertFromO2Percent(flueC, 20, o2Percent, GasFamily.NaturalGas, 21), 0.2);
            Assert.Equal(exact.SensibleLossPercentNet, FlueLoss.SiegertFromCo2Percent(flueC, 20, co2, GasFamily.NaturalGas), 0.2);
        });

    [Fact]
    public void Dew_point_and_saturation_pressure_undo_each_other() =>
        Gen.Double[DewPoint.TripleC, DewPoint.CriticalC].Sample(celsius =>
            Assert.Equal(celsius, DewPoint.SaturationC(DewPoint.SaturationPressurePa(celsius)), 1e-7));

    [Fact]
    public void Flue_gas_condenses_below_its_dew_point_only() =>
        Gen.Select(Families, Gen.Double[1, 2], Gen.Double[0.5, 20]).Sample((gas, ratio, distanceK) =>
        {
            var dewPointC = DewPoint.OfFlueGasC(Stoichiometry.Burn(FuelGas.Of(gas), Air, ratio));
            Assert.Equal(0, FlueBalance.Of(FuelGas.Of(gas), Air, ratio, dewPointC + distanceK, 20).CondensedPercent);
            Assert.InRange(FlueBalance.Of(FuelGas.Of(gas), Air, ratio, dewPointC - distanceK, 20).CondensedPercent, 0.1, 100);
        });

    [Fact]
    public void A_drift_of_temperature_alone_is_no_leak() =>
        Gen.Select(Gen.Double[10, 40], Gen.Double[0, 30], Gen.Double[-5, 5]).Sample((startMbar, startC, changeK) =>
        {
            var endMbar = startMbar + LeakRate.TemperatureDriftMbar(startMbar, startC, startC + changeK);
            if (endMbar >= 0)
            {
                Assert.Equal(0, LeakRate.CompensatedDropMbar(startMbar, startC, endMbar, startC + changeK), 1e-9);
            }
        });

    [Fact]
    public void A_vessel_at_its_final_pressure_has_taken_the_expansion() =>
        Gen.Select(Gen.Int[5, 50], Gen.Int[0, 20], Gen.Int[5, 20], Gen.Int[1, 10]).Sample((vessel, prechargeTenths, fillTenths, expansionTenths) =>
        {
            var (precharge, fill, expansion) = (prechargeTenths / 10m, fillTenths / 10m, expansionTenths / 10m);
            var final = ExpansionVessel.FinalBar(vessel, precharge, fill, expansion);
            Assert.Equal(expansion, ExpansionVessel.AcceptanceLitre(vessel, precharge, fill, final), 15);
        });

    [Fact]
    public void Losing_precharge_raises_the_hot_pressure() =>
        Gen.Select(Gen.Int[1, 10], Gen.Int[1, 10]).Sample((highTenths, lostTenths) =>
        {
            var high = highTenths / 10m;
            var low = Math.Max(0, high - lostTenths / 10m);
            Assert.True(ExpansionVessel.FinalBar(12, low, 1, 2) > ExpansionVessel.FinalBar(12, high, 1, 2));
        });

    [Fact]
    public void Water_carries_the_heat_its_flow_was_found_for() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[20, 60], Gen.Double[1, 40]).Sample((heatKw, returnC, rise) =>
            Assert.Equal(heatKw, WaterSide.HeatKw(WaterSide.FlowKgPerSecond(heatKw, returnC + rise, returnC), returnC + rise, returnC), 1e-9));

    [Fact]
    public void Counterflow_effectiveness_is_continuous_at_equal_capacity_flows() =>
        Gen.Double[0, 20].Sample(units => Assert.Equal(
            HeatExchange.CounterflowEffectiveness(units, 1), HeatExchange.CounterflowEffectiveness(units, 1 - 1e-9), 1e-6));

    [Fact]
    public void A_room_reaches_a_concentration_after_the_hours_found() =>
        Gen.Select(Gen.Double[10, 100], Gen.Double[0.001, 0.01], Gen.Double[0.1, 5], Gen.Double[0.01, 0.99]).Sample((room, co, changes, share) =>
        {
            var target = share * RoomAir.SteadyCoPpm(room, co, changes);
            Assert.Equal(target, RoomAir.CoPpm(room, co, changes, RoomAir.HoursToCoPpm(room, co, changes, target)), 1e-6 * target);
        });

    [Fact]
    public void A_room_with_hardly_any_air_change_behaves_as_a_sealed_one() =>
        Gen.Select(Gen.Double[10, 100], Gen.Double[0.1, 10]).Sample((room, hours) =>
            Assert.Equal(RoomAir.CoPpm(room, 0.001, 0, hours, 5), RoomAir.CoPpm(room, 0.001, 1e-7, hours, 5), 1e-3));
}
