using Findings;
using Records;
using Visits.Computations;

namespace Visits.Figures;

/// <summary>Heat input as metered.</summary>
/// <param name="Gross">On gross calorific value.</param>
/// <param name="Net">On net calorific value.</param>
internal sealed record HeatInputFigures(Figure? Gross, Figure? Net);

/// <summary>Gas rate, heat input and supply pressure.</summary>
internal static class GasRateFigures
{
    private const string Subject = "/gasSupply/rate";

    public static HeatInputFigures AddTo(Worksheet sheet)
    {
        var visit = sheet.Visit;
        sheet.Add(GasRateComputations.PressureLoss, "/gasSupply/applianceInletMbar",
            [sheet.Read(visit.Record.GasSupply?.MeterOperatingMbar), sheet.Read(visit.Record.GasSupply?.ApplianceInletMbar)]);

        var seconds = sheet.Read(visit.Record.GasSupply?.Rate?.Seconds);
        var rate = visit.Record.GasSupply?.Rate?.VolumeM3 is not null
            ? sheet.Add(GasRateComputations.GasRateM3, Subject, [sheet.Read(visit.Record.GasSupply?.Rate?.VolumeM3), seconds])
            : sheet.Add(GasRateComputations.GasRateFt3, Subject, [sheet.Read(visit.Record.GasSupply?.Rate?.VolumeFt3), seconds], GasRateComputations.GasRateM3.Name);

        // A gas rate that no boiler could have gives no heat input, as in the rules.
        var metered = Given.Of("gasRateM3PerHour", visit.MeasuredGrossKw is null ? null : rate);
        var calorificValue = sheet.Read(visit.Record.GasSupply?.Rate?.CalorificValueMjPerM3);
        var gross = sheet.Add(GasRateComputations.HeatInputGross, Subject, [metered, calorificValue]);
        var net = sheet.Add(GasRateComputations.HeatInputNet, Subject, [sheet.Fuel, Given.Of("heatInputGrossKw", gross)]);

        sheet.Add(GasRateComputations.HeatInputCorrected, Subject,
        [
            metered, calorificValue,
            sheet.Read(visit.Record.GasSupply?.Rate?.MeterTemperatureC), sheet.Read(visit.Record.GasSupply?.MeterOperatingMbar),
        ]);
        AddDeviation(sheet, visit.Appliance.RatedInputBasis switch { InputBasis.Net => net, InputBasis.Gross => gross, _ => null });
        return new HeatInputFigures(gross, net);
    }

    private static void AddDeviation(Worksheet sheet, Figure? measured)
    {
        var visit = sheet.Visit;
        var plate = visit.Appliance.RangeRatedInputKw is not null
            ? sheet.Read(visit.Record.Appliance.RangeRatedInputKw)
            : sheet.Read(visit.Record.Appliance.RatedInputKw);
        sheet.Add(GasRateComputations.HeatInputDeviation, Subject, [Given.Of("measuredKw", measured), plate.As("plateKw").Exact]);
    }
}
