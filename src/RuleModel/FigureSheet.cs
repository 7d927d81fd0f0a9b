using Calculations;
using Findings;
using ServiceRecords;

namespace RuleModel;

/// <summary>Every number that the service works out from a record, with its working.</summary>
public static class FigureSheet
{
    /// <summary>The figures of <paramref name="visit"/>; one whose inputs are absent or out of its range is left out.</summary>
    public static IReadOnlyList<Figure> Of(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return [.. (visit.Readings ?? []).SelectMany(OfReading), .. OfHeatInput(visit)];
    }

    private static IEnumerable<Figure> OfReading(Subject<CombustionReading> subject)
    {
        var (pointer, reading) = subject;
        if (reading is { CoPpm: { } co, Co2Percent: > 0 and { } co2 })
        {
            yield return new Figure
            {
                Name = "coCo2Ratio",
                Subject = pointer,
                Value = FlueGas.Ratio(co, co2),
                Unit = "1",
                Formula = "CO in ppm / (CO2 in % x 10000)",
                Inputs = [$"{pointer}/coPpm", $"{pointer}/co2Percent"],
                Source = "BS 7967, definition of the CO/CO2 ratio",
            };
        }
    }

    private static IEnumerable<Figure> OfHeatInput(Visit visit)
    {
        if (visit.MeasuredGrossKw is not { } gross)
            yield break;

        var volume = visit.Record.GasSupply!.Rate!.VolumeM3 is null ? "volumeFt3" : "volumeM3";
        IReadOnlyList<string> inputs =
            [$"/gasSupply/rate/{volume}", "/gasSupply/rate/seconds", "/gasSupply/rate/calorificValueMjPerM3"];
        yield return new Figure
        {
            Name = "heatInputGross",
            Subject = "/gasSupply/rate",
            Value = gross,
            Unit = "kW",
            Formula = "3600 x volume / time x calorific value / 3.6, no correction for temperature and pressure",
            Inputs = inputs,
            Source = "definition",
        };
        yield return new Figure
        {
            Name = "heatInputNet",
            Subject = "/gasSupply/rate",
            Value = HeatInput.NetKw(gross, visit.GasFamily),
            Unit = "kW",
            Formula = "gross heat input / ratio of gross to net calorific value",
            Inputs = [.. inputs, "/appliance/fuel"],
            Constants = [$"gross to net = {WireText.Of(visit.GasFamily.GrossToNet())}"],
            Source = "ratio of gross to net calorific value as the trade rounds it",
        };
    }
}
