using System.Globalization;
using Records;

namespace Jobs.Looks;

/// <summary>What of one record is compared with others.</summary>
internal sealed class LookFacts
{
    private static readonly (string Name, Func<CombustionReading, decimal?> Of)[] Quantities =
    [
        ("coPpm", reading => reading.CoPpm),
        // Most analysers work one of these out from the other.
        ("co2Percent", reading => reading.Co2Percent ?? reading.O2Percent),
        ("flueTemperatureC", reading => reading.FlueTemperatureC),
    ];

    public required LookRecord Record { get; init; }

    public required string? Engineer { get; init; }

    /// <summary>Fuel, maker and model: readings of like appliances are alike.</summary>
    public required string Like { get; init; }

    /// <summary>Which appliance; null where no serial number says so.</summary>
    public required string? Appliance { get; init; }

    /// <summary>Where; null where it is not known.</summary>
    public required string? Place { get; init; }

    public required DateTimeOffset? Started { get; init; }

    public required IReadOnlyList<string> Analysers { get; init; }

    /// <summary>Each value by what it is, such as "maximum coPpm", after the work.</summary>
    public required IReadOnlyList<(string What, decimal Value)> Values { get; init; }

    /// <summary>The values by the analyser that took them.</summary>
    public required IReadOnlyList<(string Analyser, string Quantity, decimal Value)> Readings { get; init; }

    /// <summary>The work that takes time by the record's own words, in minutes.</summary>
    public required decimal WorkMinutes { get; init; }

    public static LookFacts Of(string evaluationId, ServiceRecord record)
    {
        string[] analysers = [.. (record.Instruments ?? []).Where(instrument => instrument.Kind == InstrumentKind.FlueGasAnalyser).Select(instrument => instrument.SerialNumber).OfType<string>().Distinct(StringComparer.Ordinal)];
        var readings = (record.Combustion?.Readings ?? []).Where(reading => reading.Stage == WorkStage.AfterWork).ToList();
        var appliance = record.Appliance;
        var serial = appliance.SerialNumber is { } number ? $"{appliance.Maker} {number}" : null;
        return new LookFacts
        {
            Record = new LookRecord { Evaluation = evaluationId, RecordId = record.RecordId, FinishedAt = record.FinishedAt.Value.ToUniversalTime() },
            Engineer = record.Engineer?.LicenceNumber,
            Like = $"{appliance.Fuel} {appliance.Maker} {appliance.Model}",
            Appliance = serial,
            Place = record.Premises?.Reference ?? serial,
            Started = record.StartedAt?.Value,
            Analysers = analysers,
            Values = [.. readings.OrderBy(reading => reading.Rate).SelectMany((reading, index) => Of(reading).Select(value => (string.Create(CultureInfo.InvariantCulture, $"{reading.Rate}{index} {value.Name}"), value.Value)))],
            Readings = [.. readings.SelectMany(reading => Of(reading).Select(value => (Analyser: reading.Instrument ?? (analysers is [var only] ? only : null), value.Name, value.Value)))
                .Where(reading => reading.Analyser is not null).Select(reading => (reading.Analyser!, reading.Name, reading.Value))],
            WorkMinutes = (record.HeatExchanger?.MinutesSpent ?? 0) + (record.Combustion?.SettledMinutes ?? 0),
        };
    }

    private static IEnumerable<(string Name, decimal Value)> Of(CombustionReading reading) =>
        Quantities.Select(quantity => (quantity.Name, Value: quantity.Of(reading))).Where(value => value.Value is not null).Select(value => (value.Name, value.Value!.Value));
}
