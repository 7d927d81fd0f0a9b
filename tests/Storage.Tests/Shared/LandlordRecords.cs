using System.Text;
using System.Text.Json.Nodes;
using Findings;
using Records.Reading;

namespace Storage.Tests.Shared;

/// <summary>Records that a landlord has to keep, or may let go.</summary>
internal static class LandlordRecords
{
    public static readonly DateTimeOffset Before = new(2028, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static async Task Save(Database database, int number, string serial, string? use, string day, string jobType = "annualService")
    {
        var bytes = Record(serial, use, day, jobType);
        var record = RecordReader.Read(bytes).Record!;
        var evaluation = Scratch.Evaluation(number) with { Closing = Scratch.Rules.Evaluate(record).Closing };
        Assert.True(await new EvaluationStore(database, Scratch.Rules.Law).SaveAsync(Scratch.A, record, bytes, evaluation, Include.All, default));
    }

    public static byte[] Record(string serial, string? use, string day, string jobType)
    {
        var json = JsonNode.Parse(Scratch.Posted)!;
        json["appliance"]!["serialNumber"] = serial;
        json["jobType"] = jobType;
        json["startedAt"] = $"{day}T09:25:00+01:00";
        json["finishedAt"] = $"{day}T10:25:00+01:00";
        if (use is null)
            json["premises"]!.AsObject().Remove("use");
        else
            json["premises"]!["use"] = use;
        return Encoding.UTF8.GetBytes(json.ToJsonString());
    }
}
