using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using ServiceRecords;
using Xunit.Abstractions;

namespace SecondOpinion.Tests;

/// <summary>
/// Spoilt records through the reader and the rules: whatever comes, it is read or its faults are named, and of what is read nothing is
/// passed that the second opinion does not pass. tests/long/hostile spoils a million; SPOILT_RECORDS says how many.
/// </summary>
public sealed class SpoiltRecordTests(ITestOutputHelper output)
{
    private const int PlainRun = 6_000;
    private const int Seed = 7_000_000;

    [Fact]
    public void No_spoilt_record_breaks_the_reader_or_the_rules_or_is_passed_against_the_second_opinion()
    {
        var records = int.TryParse(Environment.GetEnvironmentVariable("SPOILT_RECORDS"), CultureInfo.InvariantCulture, out var set) ? set : PlainRun;
        var comparison = new Comparison();
        var broken = new ConcurrentBag<string>();
        var (taken, refused) = (0, 0);
        Parallel.For(0, records, number =>
        {
            var bytes = Mutator.Spoil(RecordGenerator.Make(Seed + number).Json, new Dice(Seed + number));
            try
            {
                var read = RecordReader.Read(bytes);
                if (read.Record is { } record)
                {
                    Interlocked.Increment(ref taken);
                    comparison.Judge(new GeneratedRecord(number, [new Change("the whole record", JsonValue.Create(Encoding.UTF8.GetString(bytes)))], [], record));
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

        output.WriteLine($"{records} spoilt records: {taken} read, {refused} refused with faults, {broken.Count} broke something; {comparison.Answers} answers compared, {comparison.Disagreements.Count} disagreements");
        Assert.True(broken.IsEmpty, $"{broken.Count} broke something, such as {broken.FirstOrDefault()}");
        Assert.True(comparison.Disagreements.Count == 0, comparison.Report());
        Assert.True(taken > records / 20 && refused > records / 20, "Nearly all were read, or nearly none: this proves little.");
    }
}
