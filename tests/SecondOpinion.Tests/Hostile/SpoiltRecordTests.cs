using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Findings;
using Records.Reading;
using SecondOpinion.Tests.Records;
using Wire;
using Xunit.Abstractions;

namespace SecondOpinion.Tests.Hostile;

/// <summary>
/// Spoilt records through the reader and the rules: whatever comes, it is read or its faults are named, and of what is read nothing is
/// passed that the second opinion does not pass. tests/long/hostile spoils a million; SPOILT_RECORDS says how many, SPOILT_FROM after how many others.
/// </summary>
public sealed class SpoiltRecordTests(ITestOutputHelper output)
{
    private const int PlainRun = 6_000;
    private const int Seed = 7_000_000;

    [Fact]
    public void No_spoilt_record_breaks_the_reader_or_the_rules_or_is_passed_against_the_second_opinion()
    {
        var records = Setting("SPOILT_RECORDS") ?? PlainRun;
        var from = Setting("SPOILT_FROM") ?? 0;
        var outcomes = new ConcurrentDictionary<OverallOutcome, int>();
        var watch = Stopwatch.StartNew();
        var comparison = new Comparison();
        var broken = new ConcurrentBag<string>();
        var (taken, refused) = (0, 0);
        Parallel.For(from, from + records, number =>
        {
            var bytes = Mutator.Spoil(RecordGenerator.Make(Seed + number).Json, new Dice(Seed + number));
            try
            {
                var read = RecordReader.Read(bytes, KnownValues.Jurisdictions);
                if (read.Record is { } record)
                {
                    Interlocked.Increment(ref taken);
                    var outcome = comparison.Judge(new GeneratedRecord(number, [new Change("the whole record", JsonValue.Create(Encoding.UTF8.GetString(bytes)))], [], record));
                    outcomes.AddOrUpdate(outcome, 1, (_, count) => count + 1);
                }
                else
                {
                    Interlocked.Increment(ref refused);
                    Assert.NotEmpty(read.Faults);
                    Assert.All(read.Faults, fault => Assert.StartsWith("#", fault.Pointer, StringComparison.Ordinal));
                }
            }
            catch (Exception fault)
            {
                broken.Add($"{number}: {fault}\n{Encoding.UTF8.GetString(bytes)}");
            }
        });

        var figures = string.Join(", ", outcomes.OrderBy(outcome => outcome.Key).Select(outcome => $"{outcome.Value} {WireNames.Of(outcome.Key)}"));
        output.WriteLine($"{records} spoilt records from {from} on: {refused} refused with faults, {taken} read ({figures}), {broken.Count} broke something; {comparison.Answers} answers compared, {comparison.Disagreements.Count} disagreements; {watch.Elapsed.TotalSeconds:F0} s");
        Assert.True(broken.IsEmpty, $"{broken.Count} broke something, such as {broken.FirstOrDefault()}");
        Assert.True(comparison.Disagreements.Count == 0, comparison.Report());
        Assert.True(taken > records / 20 && refused > records / 20, "Nearly all were read, or nearly none: this proves little.");
    }

    /// <summary>A number that the reader takes may be as small as a decimal gets, and something may be divided by it.</summary>
    [Theory]
    [InlineData("0")]
    [InlineData("1e-28")]
    [InlineData("0.0001")]
    public void No_number_is_so_small_that_a_rule_fails(string small)
    {
        var comparison = new Comparison();
        Parallel.For(0, 5, number =>
        {
            var json = RecordGenerator.Make(Seed + number).Json;
            foreach (var (parent, key) in Mutator.Places(json).ToList())
            {
                var before = At(parent, key);
                if (before?.GetValueKind() != JsonValueKind.Number)
                    continue;
                Put(parent, key, JsonNode.Parse(small));
                if (RecordReader.Read(JsonSerializer.SerializeToUtf8Bytes(json), KnownValues.Jurisdictions).Record is { } record)
                    comparison.Judge(new GeneratedRecord(number, [new Change($"{key}", JsonNode.Parse(small))], [], record));
                Put(parent, key, before.DeepClone());
            }
        });

        Assert.True(comparison.Records > 100);
        Assert.True(comparison.Disagreements.Count == 0, comparison.Report());

        static JsonNode? At(JsonNode parent, object key) => key is int index ? parent[index] : parent[(string)key];

        static void Put(JsonNode parent, object key, JsonNode? value)
        {
            if (key is int index)
                parent[index] = value;
            else
                parent[(string)key] = value;
        }
    }

    private static int? Setting(string name) => int.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var number) ? number : null;
}
