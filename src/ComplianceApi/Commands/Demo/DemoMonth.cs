using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace ComplianceApi.Commands.Demo;

/// <summary>
/// A month of records of an invented landlord, Saltmarsh Row Homes, with boilers of invented makers. Nothing in it is a real person,
/// firm, boiler or reading. The same month every time.
/// </summary>
public static class DemoMonth
{
    private static readonly DateTimeOffset FirstDay = new(2026, 9, 1, 8, 0, 0, TimeSpan.FromHours(1));

    private static readonly (string Maker, string Model, decimal NetInputKw)[] Boilers =
        [("Quillback", "Tarn 25", 26.0m), ("Fernhollow", "Beck 30", 31.0m), ("Marlpit", "Rill 18", 18.6m)];

    /// <summary>Each record as posted, with the situation that it was made for.</summary>
    /// <param name="exampleRecord">A clean record, which each situation changes.</param>
    public static IEnumerable<(DemoSituation Situation, byte[] Json)> Records(byte[] exampleRecord)
    {
        var random = new Random(20260901);
        var situations = DemoSituations.All.SelectMany(situation => Enumerable.Repeat(situation, situation.Count)).ToArray();
        random.Shuffle(situations);
        foreach (var (index, situation) in situations.Index())
        {
            var record = JsonNode.Parse(exampleRecord)!.AsObject();
            GiveIdentity(record, index, random);
            Measure(record, random);
            situation.Change(record);
            yield return (situation, JsonSerializer.SerializeToUtf8Bytes(record));
        }
    }

    private static void GiveIdentity(JsonObject record, int index, Random random)
    {
        var start = FirstDay.AddDays(index * 30 / 200).AddMinutes(random.Next(0, 9) * 50);
        record["recordId"] = $"DEMO-{index + 1:0000}";
        record["startedAt"] = Text(start);
        record["finishedAt"] = Text(start.AddMinutes(85));
        record["premises"]!["reference"] = $"SALTMARSH-{index + 1:000}";

        var readings = record["combustion"]!["readings"]!;
        readings[0]!["takenAt"] = Text(start.AddMinutes(65));
        readings[1]!["takenAt"] = Text(start.AddMinutes(72));

        var day = DateOnly.FromDateTime(start.DateTime);
        record["previousVisit"]!["deemedOn"] = Text(day.AddMonths(-12).AddDays(random.Next(2, 12)));
        record["previousVisit"]!["finishedAt"] = Text(start.AddMonths(-12).AddDays(2));
        record["paperwork"]!["nextDueOn"] = Text(day.AddMonths(12));

        var engineer = random.Next(1, 5);
        record["engineer"]!["licenceNumber"] = $"700000{engineer}";
        record["engineer"]!["businessNumber"] = "600000";
        var appliance = record["appliance"]!;
        var boiler = Boilers[random.Next(Boilers.Length)];
        appliance["serialNumber"] = $"DEMO-BOILER-{index + 1:000}";
        appliance["maker"] = boiler.Maker;
        appliance["model"] = boiler.Model;
        appliance["ratedInputKw"] = boiler.NetInputKw;
        appliance["ratedOutputKw"] = decimal.Round(boiler.NetInputKw * 0.96m, 1);
    }

    /// <summary>Readings as a well-set boiler gives them: CO2 and O2 agree, the gas rate fits the plate.</summary>
    private static void Measure(JsonObject record, Random random)
    {
        foreach (var (reading, highestCo) in record["combustion"]!["readings"]!.AsArray().Zip([120, 30]))
        {
            var co2 = 8.7m + random.Next(0, 9) / 10m;
            reading!["co2Percent"] = co2;
            reading["o2Percent"] = decimal.Round(20.95m * (1 - co2 / 11.70m), 1);
            reading["coPpm"] = random.Next(5, highestCo);
        }

        var netKw = record["appliance"]!["ratedInputKw"]!.GetValue<decimal>() * (0.97m + random.Next(0, 5) / 100m);
        record["gasSupply"]!["rate"]!["volumeM3"] = decimal.Round(netKw * 1.11m * 3.6m / 39.2m / 3600m * 120m, 4);
    }

    private static string Text(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
