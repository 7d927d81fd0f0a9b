using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using MadeVisits;
using Records.Reading;
using Xunit.Abstractions;

namespace WholeRecords.Tests.Made;

/// <summary>The made visits are records as the reader takes them, with everything in them that there is to be, and what is true of them agrees with what is written.</summary>
public sealed class MadeVisitTests(ITestOutputHelper output)
{
    /// <summary>tests/long/visits sets more.</summary>
    private static readonly int Number = int.TryParse(Environment.GetEnvironmentVariable("VISITS"), CultureInfo.InvariantCulture, out var set) ? set : 2000;

    [Fact]
    public void The_same_seed_gives_the_same_visit()
    {
        Assert.All(Enumerable.Range(0, 50), seed => Assert.Equal(Text(VisitGenerator.Make(seed)), Text(VisitGenerator.Make(seed))));
        Assert.Equal(50, Enumerable.Range(0, 50).Select(seed => Text(VisitGenerator.Make(seed))).Distinct().Count());

        static string Text(MadeVisit visit) => string.Join('\n', visit.Untruthful.Prepend(visit.Truthful).Select(written => written.Record.ToJsonString()));
    }

    [Fact]
    public void Every_record_is_read_without_a_fault_and_everything_that_can_be_is()
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var seen = new System.Collections.Concurrent.ConcurrentDictionary<object, int>();
        var records = 0;
        Parallel.For(0, Number, seed =>
        {
            var visit = VisitGenerator.Make(seed);
            foreach (var written in visit.Untruthful.Prepend(visit.Truthful))
            {
                var faults = RecordReader.Read(JsonSerializer.SerializeToUtf8Bytes(written.Record)).Faults;
                Assert.True(faults.Count == 0, $"visit {seed} {written.Truth.Lie}: {string.Join("; ", faults.Select(fault => $"{fault.Pointer} {fault.Code}"))}");
                Interlocked.Increment(ref records);
                Count(written.Truth.Lie);
            }

            foreach (var danger in visit.Truthful.Truth.Dangers)
            {
                Count(danger.Kind);
                Count((danger.State, danger.IsHandled));
            }

            Count(visit.World.Engineer.Habit);
            Count(visit.Result);
            Count(visit.Job);
        });
        output.WriteLine($"{Number} visits, {records} records in {clock.Elapsed}");

        IEnumerable<object> everything =
        [
            .. Enum.GetValues<DangerKind>().Cast<object>(), .. Enum.GetValues<Lie>().Cast<object>(), .. Enum.GetValues<Habit>().Cast<object>(),
            (DangerState.PutRight, true), (DangerState.PutRight, false), (DangerState.TakenOutOfUse, true), (DangerState.TakenOutOfUse, false), (DangerState.LeftByRefusal, true),
            (DangerState.LeftByRefusal, false), (DangerState.Standing, false), "carriedOut", "noAccess", "noAccessToAppliance", "refused", "gasOff", "awaitingParts", "stoppedForDanger",
            "annualService", "landlordCheck", "repair", "commissioning",
        ];
        Assert.Empty(everything.Except(seen.Keys));

        void Count(object? what) => seen.AddOrUpdate(what ?? "truthful", 1, (_, count) => count + 1);
    }

    [Fact]
    public void What_is_true_agrees_with_what_is_written()
    {
        foreach (var visit in Enumerable.Range(0, Math.Min(Number, 2000)).Select(VisitGenerator.Make))
        {
            var (record, truth) = visit.Truthful;
            Assert.Null(truth.Lie);
            var dealtWith = truth.Dangers.Count(danger => danger.IsSeen && danger.State != DangerState.Standing);
            Assert.Equal(dealtWith, record.At("/defects")!.AsArray().Count);
            if (visit.Result is "carriedOut" or "stoppedForDanger")
                Assert.Equal(truth.Dangers.Any(danger => danger.State == DangerState.TakenOutOfUse), !record.Is("/appliance/stateOnLeaving", "inUse"));
            Assert.True(truth.Written.All(truth.Examined.Contains));
            Assert.All(truth.Dangers, danger => Assert.False(danger is { IsSeen: false, IsHandled: true }));
            Assert.All(visit.Untruthful, lie => Assert.Equal(truth.Dangers.Count > 0, lie.Truth.HasUnhandledDanger));
        }
    }

    /// <summary>What was measured again shows by itself that the danger is gone: a test by its stage, a reading by its time (duties 4). It owes no time of a second look.</summary>
    [Fact]
    public void A_danger_that_was_measured_again_is_handled_without_the_time_of_a_second_look()
    {
        var measured = Enumerable.Range(0, 6000).Select(VisitGenerator.Make)
            .SelectMany(visit => visit.Truthful.Truth.Dangers.Where(danger => danger.IsSeen).SelectMany(danger => DefectsOf(visit, danger).Select(defect => (danger, defect, visit.Seed))))
            .Where(one => (string?)one.defect["action"] == "rectified" && one.defect["reexaminedAt"] is null && IsMeasured((string)one.defect["subject"]!)).ToList();
        Assert.NotEmpty(measured);
        Assert.All(measured, one => Assert.True(one.danger.IsHandled, $"visit {one.Seed}"));

        static IEnumerable<JsonNode> DefectsOf(MadeVisit visit, TrueDanger danger) => visit.Truthful.Record.At("/defects")!.AsArray().OfType<JsonNode>().Where(defect => (string?)defect["subject"] == danger.Subject);
        static bool IsMeasured(string subject) => subject.StartsWith("/tightnessTests", StringComparison.Ordinal) || subject.StartsWith("/combustion/readings", StringComparison.Ordinal);
    }

    /// <summary>Ranges in which an ordinary boiler lies (common practice, no source); of a sound one the ratio is below 0.004.</summary>
    [Fact]
    public void Values_are_those_of_boilers()
    {
        var sound = Enumerable.Range(0, Math.Min(Number, 2000)).Select(VisitGenerator.Make).Where(visit => visit.Truthful.Truth.Dangers.Count == 0).ToList();
        Assert.InRange(sound.Count / (double)Math.Min(Number, 2000), 0.78, 0.88);
        foreach (var record in sound.Select(visit => visit.Truthful.Record))
        {
            foreach (var reading in record.At("/combustion/readings") as JsonArray ?? [])
            {
                var (co, co2) = (reading!["coPpm"]!.GetValue<decimal>(), reading["co2Percent"]!.GetValue<decimal>());
                Assert.InRange(co2, 4.5m, 11.5m);
                Assert.InRange(co / (co2 * 10_000), 0, 0.004m);
                Assert.InRange(reading["o2Percent"]!.GetValue<decimal>(), 2.5m, 13);
            }

            if (record.At("/gasSupply/applianceInletMbar") is { } inlet)
                Assert.InRange(inlet.GetValue<decimal>(), record.Is("/appliance/fuel", "propane") ? 34 : 18, record.Is("/appliance/fuel", "propane") ? 39 : 22);
            if (record.At("/electrical/earthOhm") is { } earth)
                Assert.InRange(earth.GetValue<decimal>(), 0, 1);
        }
    }

    [Fact]
    public void The_years_of_an_appliance_follow_each_other_and_a_danger_stays_until_it_is_put_right()
    {
        foreach (var years in Enumerable.Range(0, 200).Select(seed => ApplianceHistory.Make(seed, 8)))
        {
            Assert.Equal(8, years.Count);
            Assert.Single(years.Select(visit => visit.World.Boiler.SerialNumber).Distinct());
            var starts = years.Select(visit => visit.Truthful.Record.At("/startedAt")!.GetValue<string>()).ToList();
            Assert.Equal(starts.Order(StringComparer.Ordinal), starts);
            foreach (var (before, after) in years.Zip(years.Skip(1)))
                Assert.Subset(after.Truthful.Truth.Dangers.Select(danger => danger.Kind).ToHashSet(), before.Truthful.Truth.Dangers.Where(danger => danger.State != DangerState.PutRight).Select(danger => danger.Kind).ToHashSet());
        }
    }
}
