using static Rules.Tests.FigureRecords;

namespace Rules.Tests;

/// <summary>The figures of the example record and of records near it, against values worked out here another way.</summary>
public sealed class FigureValueTests
{
    private const string AtMaximum = "/combustion/readings/0";
    private const string AtMinimum = "/combustion/readings/1";

    [Theory]
    // Arithmetic on the record's numbers; the formulas are definitions.
    [InlineData("coCo2Ratio", AtMaximum, 96 / 92_000.0, 1e-12)]
    [InlineData("coAirFree", AtMaximum, 96 * 20.9 / 16.4, 1e-9)]
    [InlineData("co2FromO2", AtMaximum, 11.70 * 16.45 / 20.95, 1e-9)]
    [InlineData("co2DeviationFromO2", AtMaximum, 9.2 - 11.70 * 16.45 / 20.95, 1e-9)]
    [InlineData("fuelFactor", AtMaximum, (20.9 - 4.5 + 0.0048) / 9.2096, 1e-9)]
    [InlineData("supplyPressureLoss", "/gasSupply/applianceInletMbar", 0.7, 1e-12)]
    [InlineData("gasRate", "/gasSupply/rate", 3600 * 0.0883 / 120, 1e-12)]
    [InlineData("heatInputGross", "/gasSupply/rate", 2.649 * 39.2 / 3.6, 1e-9)]
    [InlineData("heatInputNet", "/gasSupply/rate", 2.649 * 39.2 / 3.6 / 1.11, 1e-9)]
    [InlineData("heatInputDeviation", "/gasSupply/rate", (2.649 * 39.2 / 3.6 / 1.11 / 26 - 1) * 100, 1e-9)]
    [InlineData("leakRate", "/tightnessTests/0", 0, 0)]
    [InlineData("dropOfOneKelvin", "/tightnessTests/0", (1013.25 + 20.4) / 288.15, 1e-7)]
    [InlineData("staticHead", "/water", 5 * 1000 * 9.80665 / 1e5, 1e-9)]
    [InlineData("exchangerApproach", AtMaximum, 12, 0)]
    [InlineData("calibrationAge", "/instruments/0", 29 + 30 + 31 + 30 + 31 + 31 + 14, 0)]
    // Methane: air 2/0.2095 = 9.54654, dry 8.54654 mol a mol; 1 + f dry / (air (xO2 - f)).
    [InlineData("excessAir", AtMaximum, 100 * 0.045 * 8.54654 / (9.54654 * 0.1645), 1e-4)]
    // IAPWS-IF97: 55.66 C at an air ratio of 1.2 and 54.88 C at 1.25, methane in dry air; straight between, at 1.2449.
    [InlineData("flueDewPoint", AtMaximum, 55.66 - 0.78 * 0.898, 0.02)]
    // Flue gas a mol of methane: 1 CO2, 2 H2O, 9.3947 N2, 0.4898 O2; mean molar heat near 40 C 37.9, 33.65, 29.12, 29.45 J/(mol K)
    // (from memory); 42 K; net 802.55 kJ/mol (ISO 6976:2016, 25 C). Above the dew point nothing condenses.
    [InlineData("flueLossNet", AtMaximum, 100 * 0.042 * (37.9 + 2 * 33.65 + 9.3947 * 29.12 + 0.4898 * 29.45) / 802.55, 0.005)]
    [InlineData("condensatePerKwh", AtMaximum, 0, 0)]
    [InlineData("condensateRate", AtMaximum, 0, 0)]
    // At 52 C water's vapour pressure is 0.1363 bar (steam table): 11.2257 dry mol carry 1.744 of the 2 mol; gross 890.58 kJ/mol.
    [InlineData("condensatePerKwh", AtMinimum, (2 - 11.2257 * 0.1363 / (1.01325 - 0.1363)) * 0.018015 / (890.58 / 3600), 1e-4)]
    // IAPWS-IF97 expansion from 10 C: 2.871 % at 80 C, 3.209 % at 85 C; straight between, at 82 C.
    [InlineData("waterExpansion", "/water", 60 * (0.02871 + 0.4 * 0.00338), 0.005)]
    [InlineData("vesselVolumeNeeded", "/water", 60 * 0.03006 * 3.7 / 1.5, 0.02)]
    [InlineData("vesselVolumeWithReserve", "/water", (60 * 0.03006 + 3) * 3.5 / 1.5, 0.02)]
    [InlineData("vesselAcceptance", "/water", 12 * 2.0 / 2.2 * 1.5 / 3.7, 1e-9)]
    [InlineData("finalPressure", "/water", 2.2 * 10.9091 / (10.9091 - 60 * 0.03006) - 1, 0.001)]
    // Heat capacity 4.18 kJ/(kg K), density at 48 C 0.9890 kg/L (steam tables).
    [InlineData("waterFlow", "/water", 60 * 25 / (4.18 * 17) / 0.9890, 0.03)]
    [InlineData("exchangerTransferUnits", AtMaximum, 4.8624, 1e-4)] // ln(1552 / 12)
    public void A_figure_of_the_example_record_is_what_it_is_by_hand(string name, string subject, double expected, double tolerance) =>
        Assert.Equal(expected, (double)FiguresOf(Example()).Only(name, subject).Value!.Value, tolerance);

    [Fact]
    public void Loss_and_efficiency_make_a_hundred_on_either_calorific_value()
    {
        var figures = FiguresOf(Example());
        decimal Value(string name) => figures.Only(name, AtMinimum).Value!.Value;

        Assert.Equal(100, (double)(Value("flueLossNet") + Value("efficiencyNet")), 1e-6);
        Assert.Equal(100, (double)(Value("flueLossGross") + Value("efficiencyGross")), 1e-6);
        Assert.Equal(890.58 / 802.55, (double)(Value("efficiencyNet") / Value("efficiencyGross")), 1e-4); // ISO 6976:2016, methane, 25 C
    }

    [Fact]
    public void A_drop_has_its_leak_rate_and_under_edition_3_its_permitted_drop()
    {
        var figures = FiguresOf(Example(("/tightnessTests/0/dropMbar", "1"), ("/tightnessTests/0/edition", "\"3\"")));

        Assert.Equal(1000 * 0.012 / 1013.25 * 30, (double)figures.Only("leakRate").Value!.Value, 1e-8);
        Assert.Equal(4m, figures.Only("permittedDrop").Value); // IGEM/UP/1B edition 3, U6 up to 28 mm; figure from memory
        Assert.DoesNotContain(FiguresOf(Example()), figure => figure.Name == "permittedDrop");
    }

    [Fact]
    public void With_a_meter_temperature_the_heat_input_is_corrected_besides()
    {
        var figures = FiguresOf(Example(("/gasSupply/rate/meterTemperatureC", "5")));

        var gross = 2.649 * 39.2 / 3.6;
        Assert.Equal(gross, (double)figures.Only("heatInputGross").Value!.Value, 1e-9);
        Assert.Equal(gross * 288.15 / 278.15 * (1013.25 + 20.8) / 1013.25, (double)figures.Only("heatInputGrossCorrected").Value!.Value, 1e-9);
    }

    [Fact]
    public void An_imperial_meter_gives_the_same_rate()
    {
        var figures = FiguresOf(Example(("/gasSupply/rate/volumeM3", ""), ("/gasSupply/rate/volumeFt3", "1"), ("/gasSupply/rate/seconds", "36")));

        Assert.Equal(100 * 0.028316846592, (double)figures.Only("gasRate").Value!.Value, 1e-9);
        Assert.Contains("/gasSupply/rate/volumeFt3", figures.Only("heatInputGross").Inputs);
    }

    [Fact]
    public void An_open_flue_has_its_vent_area()
    {
        var figures = FiguresOf(Example(
            ("/appliance/flueType", "\"openFlued\""), ("/ventilation/otherOpenFluedNetKw", "0"), ("/ventilation/throughInnerRooms", "true")));

        Assert.Equal(5 * (26 - 7) * 1.5m, figures.Only("openFlueVentArea").Value); // BS 5440-2: 5 cm2/kW net above 7 kW
    }

    [Fact]
    public void A_landlords_check_has_its_dates()
    {
        // Regulation 36A: counted on 20 September 2025, checked on 14 September 2026.
        var figures = FiguresOf(Example(("/jobType", "\"landlordCheck\"")));

        Assert.Equal(new DateOnly(2026, 9, 20), figures.Only("landlordDeadline").Date);
        Assert.Equal(new DateOnly(2026, 7, 21), figures.Only("landlordWindowStart").Date);
        Assert.Equal(new DateOnly(2026, 9, 20), figures.Only("landlordCountedOn").Date);
        Assert.Equal(new DateOnly(2027, 9, 20), figures.Only("landlordNextDeadline").Date);
    }

    [Fact]
    public void Without_an_earlier_check_the_dates_run_from_installation_and_from_today()
    {
        var figures = FiguresOf(Example(("/jobType", "\"landlordCheck\""), ("/previousVisit", "")));

        Assert.Equal(new DateOnly(2022, 6, 2), figures.Only("landlordDeadline").Date);
        Assert.Equal(new DateOnly(2027, 9, 14), figures.Only("landlordNextDeadline").Date);
        Assert.DoesNotContain(figures, figure => figure.Name == "landlordWindowStart");
    }

    [Fact]
    public void Without_O2_the_figures_rest_on_CO2()
    {
        var figures = FiguresOf(Example(("/combustion/readings/0/o2Percent", "")));

        Assert.Contains(AtMaximum + "/co2Percent", figures.Only("excessAir", AtMaximum).Inputs);
        Assert.Equal(96 * 11.70 / 9.2, (double)figures.Only("coAirFree", AtMaximum).Value!.Value, 1e-9);
    }
}
