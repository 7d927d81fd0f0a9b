using Findings;
using Records;
using Visits.Computations;

namespace Visits.Figures;

/// <summary>What each flue reading says of combustion and efficiency.</summary>
internal static class ReadingFigures
{
    public static void AddTo(Worksheet sheet, HeatInputFigures heatInput)
    {
        foreach (var (subject, reading) in sheet.Visit.Readings ?? [])
            Add(sheet, subject, reading, heatInput);
    }

    private static void Add(Worksheet sheet, string subject, CombustionReading reading, HeatInputFigures heatInput)
    {
        var fuel = sheet.Fuel;
        var co = sheet.Read(reading.CoPpm, subject);
        var co2 = sheet.Read(reading.Co2Percent, subject);
        var o2 = sheet.Read(reading.O2Percent, subject);

        sheet.Add(FlueGasComputations.CoCo2Ratio, subject, [co, co2]);
        _ = sheet.Add(FlueGasComputations.CoAirFree, subject, [co, o2])
            ?? sheet.Add(FlueGasComputations.CoAirFreeFromCo2, subject, [fuel, co, co2], FlueGasComputations.CoAirFree.Name);
        sheet.Add(FlueGasComputations.Co2FromO2, subject, [fuel, o2]);
        sheet.Add(FlueGasComputations.Co2Deviation, subject, [fuel, o2, co2]);
        sheet.Add(FlueGasComputations.FuelFactor, subject, [o2, co2, co]);

        // Excess air from O2, which is measured; most analysers compute CO2 from it.
        Given[] gas = [fuel, reading.O2Percent is not null ? o2 : co2];
        sheet.Add(FlueLossComputations.ExcessAir, subject, gas);
        sheet.Add(FlueLossComputations.FlueDewPoint, subject, gas);

        Given[] point = [.. gas, sheet.Read(reading.FlueTemperatureC, subject), sheet.Read(reading.AirTemperatureC, subject)];
        sheet.Add(FlueLossComputations.FlueLossNet, subject, point);
        sheet.Add(FlueLossComputations.FlueLossGross, subject, point);
        sheet.Add(FlueLossComputations.EfficiencyGross, subject, point);
        var efficiency = sheet.Add(FlueLossComputations.EfficiencyNet, subject, point);
        if (sheet.Visit.Appliance.Condensing == true)
            sheet.Add(FlueLossComputations.CondensatePerKwh, subject, point);
        if (reading.Rate == FiringRate.Maximum && sheet.Visit.Record.GasSupply?.Rate?.AtMaximum == true)
            AddAtMaximum(sheet, subject, point, efficiency, heatInput);
    }

    // The gas was timed at maximum rate, so only such a reading goes with it.
    private static void AddAtMaximum(Worksheet sheet, string subject, Given[] point, Figure? efficiency, HeatInputFigures heatInput)
    {
        sheet.Add(WaterComputations.HeatOutput, subject, [Given.Of("heatInputNetKw", heatInput.Net), Given.Of("efficiencyNetPercent", efficiency)]);
        if (sheet.Visit.Appliance.Condensing == true)
            sheet.Add(FlueLossComputations.CondensateRate, subject, [.. point, Given.Of("heatInputGrossKw", heatInput.Gross)]);
    }
}
