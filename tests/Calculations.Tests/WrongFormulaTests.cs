namespace Calculations.Tests;

/// <summary>Formulas that public pages get wrong. Each test fails if the wrong form ever creeps in.</summary>
public class WrongFormulaTests
{
    private static readonly CombustionAir Air = CombustionAir.Of(20.95);

    [Fact]
    public void Draught_is_not_taken_from_the_ratio_of_Celsius_temperatures()
    {
        const double Wrong = 118.73; // 10 m, 10 and 150 C, as two public pages print it

        var right = Draught.PressurePa(10, 10, 150);

        Assert.Equal(40.5, right, 0.5);
        Assert.True(Wrong > 2 * right);
    }

    [Fact]
    public void Siegert_multiplies_its_second_constant_by_the_temperature_difference_once()
    {
        const double Excess = 140;
        var co2 = (double)FlueGas.Co2FromO2Percent(5, GasFamily.NaturalGas, OxygenInAir.PhysicalPercent);
        var wrong = (0.37 + 0.009 * Excess) * Excess / co2;

        var right = FlueLoss.SiegertFromCo2Percent(160, 20, co2, GasFamily.NaturalGas);

        Assert.Equal(7.08, right, 0.02);
        Assert.True(wrong > 3 * right);
    }

    [Fact]
    public void Siegert_has_its_own_constants_for_each_fuel()
    {
        var naturalGas = FlueLoss.SiegertFromCo2Percent(160, 20, 9, GasFamily.NaturalGas);
        var propane = FlueLoss.SiegertFromCo2Percent(160, 20, 9, GasFamily.Propane);

        Assert.NotEqual(naturalGas, propane, 0.1);
        Assert.NotEqual(0.52 * 140 / 9, naturalGas, 0.5);
    }

    [Theory]
    [InlineData(GasFamily.NaturalGas, 1.1097)]
    [InlineData(GasFamily.Propane, 1.0862)]
    [InlineData(GasFamily.Butane, 1.0830)]
    public void Net_efficiency_is_gross_times_the_ratio_of_the_fuels_own_calorific_values(GasFamily gas, double grossPerNet)
    {
        var efficiency = FlueBalance.Of(FuelGas.Of(gas), Air, 1.25, 80, 20);

        Assert.Equal(grossPerNet, efficiency.NetPercent / efficiency.GrossPercent, 5e-4);
        Assert.NotEqual(1 / 0.90, efficiency.NetPercent / efficiency.GrossPercent, 1e-3);
    }

    [Fact]
    public void Oxygen_of_wet_flue_gas_is_not_that_of_dry_flue_gas()
    {
        var flueGas = Stoichiometry.Burn(FuelGas.G20, Air, 1.2);

        Assert.Equal(3.83, flueGas.O2DryPercent, 0.01);
        Assert.Equal(3.21, 100 * flueGas.Oxygen / flueGas.Wet, 0.01);
    }

    [Fact]
    public void Air_free_carbon_monoxide_undoes_dilution_and_not_moisture()
    {
        const decimal UndilutedPpm = 127m;
        var diluted = UndilutedPpm / 2;
        var o2OfDiluted = OxygenInAir.PhysicalPercent / 2;

        Assert.Equal(UndilutedPpm, FlueGas.CoAirFreePpm(diluted, o2OfDiluted, OxygenInAir.PhysicalPercent));
        Assert.Equal(UndilutedPpm, FlueGas.CoAirFreePpm(UndilutedPpm, 0, OxygenInAir.PhysicalPercent));
    }

    [Fact]
    public void Room_air_balances_what_enters_against_what_the_air_change_carries_off()
    {
        const double RoomM3 = 40, CoM3PerHour = 0.00432, AirChanges = 0.27;
        var steadyPpm = RoomAir.SteadyCoPpm(RoomM3, CoM3PerHour, AirChanges);

        Assert.Equal(CoM3PerHour, steadyPpm * 1e-6 * AirChanges * RoomM3, 1e-12);
        Assert.Equal(steadyPpm, RoomAir.CoPpm(RoomM3, CoM3PerHour, AirChanges, 1000), 1e-6);
    }

    [Fact]
    public void Excess_air_is_not_the_short_ratio_of_oxygens()
    {
        const double Short = 20.95 / (20.95 - 5);

        var exact = Stoichiometry.ExcessAirRatioFromO2(FuelGas.G20, Air, 5);

        Assert.Equal(1.2806, exact, 5e-5);
        Assert.Equal(1.3135, Short, 5e-5);
        Assert.NotEqual(21.0 / (21 - 5), exact, 0.01);
    }
}
