using System.Globalization;
using Findings;
using Visits.Judging;

namespace Kernel.Tests;

/// <summary>No order, culture, time zone or thread reaches an answer.</summary>
public sealed class SameInSameOutTests
{
    private const int Runs = 1000;
    private static readonly string[] Cultures = ["en-GB", "de-DE", "tr-TR", "ar-SA"];
    private static readonly string[] TimeZones = ["UTC", "Europe/London", "America/St_Johns", "Pacific/Kiritimati"];

    [Fact]
    public void A_thousand_runs_give_one_result_hash()
    {
        var record = Samples.Changed(json =>
        {
            json["combustion"]!["readings"]![0]!["coPpm"] = 900;
            json["disturbedJoints"]![0]!["renewed"] = false;
            json["water"]!.AsObject().Remove("vesselPrechargeBar");
        });
        var expected = Samples.Engine.Evaluate(record).ResultHash;
        var engines = Enumerable.Range(1, 8).Select(seed => ComplianceEngine.Start(Samples.Catalogue, Shuffled(seed))).ToList();

        foreach (var (zone, runs) in TimeZones.Zip(Enumerable.Range(0, Runs).Chunk(Runs / TimeZones.Length)))
        {
            var hashes = InZone(zone, () => runs.AsParallel().WithDegreeOfParallelism(8)
                .Select(run => InCulture(Cultures[run % Cultures.Length], () => engines[run % engines.Count].Evaluate(record).ResultHash))
                .ToHashSet(StringComparer.Ordinal));
            Assert.Equal([expected], hashes);
        }
    }

    [Fact]
    public void The_hash_is_that_of_the_judgement_and_not_of_the_record_id()
    {
        var other = Samples.Engine.Evaluate(Samples.Changed(json => json["recordId"] = "HB-0002"));
        var example = Samples.Engine.Evaluate(Samples.Example);
        Assert.Equal(example.ResultHash, other.ResultHash);
        Assert.NotEqual(example.InputHash, other.InputHash);
    }

    [Fact]
    public void Two_judgements_that_differ_have_two_hashes() => Assert.NotEqual(
        Samples.Engine.Evaluate(Samples.Example).ResultHash,
        Samples.Engine.Evaluate(Samples.Changed(json => json["disturbedJoints"]![0]!["renewed"] = false)).ResultHash);

    /// <summary>What the visit calls for and what became of a danger are part of the judgement.</summary>
    [Fact]
    public void Duties_situation_and_what_waits_are_in_the_hash()
    {
        var said = Samples.Engine.Evaluate(Samples.Changed(json => json["combustion"]!["readings"]![0]!["coPpm"] = 900));
        var situation = said.Situation!;
        Evaluation[] others =
        [
            said with { Duties = [.. said.Duties.Skip(1)] },
            said with { Situation = null },
            said with { Situation = new Situation { Dangers = situation.Dangers, State = DangerState.PutRight, Handled = situation.Handled, Open = situation.Open, Appliance = situation.Appliance } },
            said with { Due = [] },
            said with { Deferrals = [new Deferral { Part = "safetyDevices", Weight = Weight.Must, On = said.AsOf }] },
            said with { Closing = new Closing { Allowed = said.Closing.Allowed, BlockedBy = said.Closing.BlockedBy, ClosesAs = "check" } },
        ];
        Assert.Equal(said.ResultHash, Kernel.Engine.Hashes.OfResult(said));
        Assert.All(others, other => Assert.NotEqual(said.ResultHash, Kernel.Engine.Hashes.OfResult(other)));
    }

    private static List<IComplianceRule> Shuffled(int seed)
    {
        var rules = Samples.Catalogue.Rules.ToArray();
        new Random(seed).Shuffle(rules);
        return [.. rules];
    }

    private static T InCulture<T>(string name, Func<T> run)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
        try
        {
            return run();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static T InZone<T>(string name, Func<T> run)
    {
        var before = Environment.GetEnvironmentVariable("TZ");
        Environment.SetEnvironmentVariable("TZ", name);
        TimeZoneInfo.ClearCachedData();
        try
        {
            Assert.Equal(name, TimeZoneInfo.Local.Id);
            return run();
        }
        finally
        {
            Environment.SetEnvironmentVariable("TZ", before);
            TimeZoneInfo.ClearCachedData();
        }
    }
}
