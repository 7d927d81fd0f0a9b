namespace Calculations.Tests;

public class ReadingTests
{
    [Theory]
    [InlineData(GasFamily.NaturalGas)]
    [InlineData(GasFamily.Propane)]
    [InlineData(GasFamily.Butane)]
    public void Readings_of_a_fuel_fall_into_its_own_band_of_fuel_factors(GasFamily gas)
    {
        var (low, high) = FlueGas.FuelFactorBand(gas);
        var co2Percent = FlueGas.Co2FromO2Percent(5, gas, OxygenInAir.FieldPercent);

        Assert.InRange(FlueGas.FuelFactor(5, co2Percent, 40, OxygenInAir.FieldPercent), low, high);
        Assert.InRange(FlueGas.ExpectedFuelFactor(gas, OxygenInAir.FieldPercent), low, high);
    }

    [Fact]
    public void Propane_measured_as_natural_gas_falls_out_of_the_band()
    {
        var (low, high) = FlueGas.FuelFactorBand(GasFamily.NaturalGas);
        var co2Percent = FlueGas.Co2FromO2Percent(5, GasFamily.Propane, OxygenInAir.FieldPercent);

        Assert.NotInRange(FlueGas.FuelFactor(5, co2Percent, 0, OxygenInAir.FieldPercent), low, high);
    }

    [Fact]
    public void Air_that_leaks_in_between_the_two_readings_shows_in_the_fuel_factor() =>
        Assert.NotInRange(FlueGas.FuelFactor(9, 9.2m, 0, OxygenInAir.FieldPercent), 1.600m, 1.836m);

    [Theory]
    [InlineData(null, 50.0, 100.0)]
    [InlineData(62.0, null, 100.0)]
    [InlineData(62.0, 50.0, null)]
    public void A_flue_temperature_without_return_temperature_and_load_is_not_comparable(double? flueC, double? returnC, double? loadPercent) =>
        Assert.Null(ExchangerReading.From((decimal?)flueC, (decimal?)returnC, (decimal?)loadPercent));

    [Fact]
    public void A_comparable_reading_keeps_what_was_recorded_and_gives_the_approach()
    {
        var reading = ExchangerReading.From(62.5m, 50, 80)!;

        Assert.Equal((62.5m, 50m, 80m, 12.5m), (reading.FlueC, reading.ReturnC, reading.LoadPercent, reading.ApproachK));
    }

    [Fact]
    public void Condensate_follows_the_heat_input()
    {
        var efficiency = FlueBalance.Of(FuelGas.G20, CombustionAir.Of(20.95), 1.25, 40, 20);

        // 0.0831 kg/kWh (own recomputation) at 24 kW gross.
        Assert.Equal(2.0, efficiency.CondensateKgPerHour(24), 0.01);
    }

    [Fact]
    public void A_fuel_that_forms_no_water_condenses_none() =>
        Assert.Equal(0, FlueBalance.Of(FuelGas.Of((GasComponent.CarbonMonoxide, 1)), CombustionAir.Of(20.95), 1.2, 20, 20).CondensedPercent);
}
