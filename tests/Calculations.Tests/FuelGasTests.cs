namespace Calculations.Tests;

public class FuelGasTests
{
    [Theory]
    [InlineData(ReferenceTemperature.Celsius0, 0)]
    [InlineData(ReferenceTemperature.Celsius15, 15)]
    [InlineData(ReferenceTemperature.Fahrenheit60, 15.55)]
    [InlineData(ReferenceTemperature.Celsius20, 20)]
    [InlineData(ReferenceTemperature.Celsius25, 25)]
    public void A_reference_temperature_is_what_its_name_says(ReferenceTemperature temperature, double celsius) =>
        Assert.Equal(celsius, Iso6976.Celsius(temperature));

    [Fact]
    public void Fractions_that_nearly_sum_to_one_are_scaled_to_do_so() =>
        Assert.Equal(1, FuelGas.Of((GasComponent.Methane, 0.5), (GasComponent.Nitrogen, 0.50009)).Mean(_ => 1), 1e-15);

    // ISO 6976: hydrogen alone has a negative summation factor. 2016 table A.3; 1995 from memory.
    [Theory]
    [InlineData(ReferenceTemperature.Celsius0, -0.01, -0.0040)]
    [InlineData(ReferenceTemperature.Celsius15, -0.01, -0.0048)]
    [InlineData(ReferenceTemperature.Fahrenheit60, -0.01, null)]
    [InlineData(ReferenceTemperature.Celsius20, -0.01, -0.0051)]
    public void Hydrogen_lowers_the_summation_factor_of_a_mixture(ReferenceTemperature volume, double edition2016, double? edition1995)
    {
        Assert.Equal(edition2016, Iso6976.Edition2016.SummationFactor(GasComponent.Hydrogen, volume));
        if (edition1995 is { } factor)
        {
            Assert.Equal(factor, Iso6976.Edition1995.SummationFactor(GasComponent.Hydrogen, volume));
        }
    }
}
