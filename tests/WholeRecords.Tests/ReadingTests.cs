using System.Globalization;
using Records.Reading;

namespace WholeRecords.Tests;

/// <summary>Every whole record is read: its members and values are those that a record has.</summary>
public sealed class ReadingTests
{
    public static TheoryData<string> Names => [.. WholeRecord.All.Select(whole => whole.Name)];

    [Fact]
    public void There_are_as_many_as_their_page_says()
    {
        var page = File.ReadAllText(Path.Combine(WholeRecord.Folder, "README.md"));
        var (all, honest) = (WholeRecord.All.Count, WholeRecord.All.Count(whole => whole.IsHonest));
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"{all} whole service records ({honest} honest, {all - honest} not)"), page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_whole_record_is_read_without_a_fault(string name)
    {
        var whole = WholeRecord.All.Single(one => one.Name == name);
        string[] expected =
        [
            .. whole.NeedsNorthernIreland ? ["#/jurisdiction unknownValue"] : (string[])[],
            .. whole.HasFuel ? [] : (string[])["#/appliance/fuel requiredMember"],
        ];
        Assert.Equal(expected, RecordReader.Read(whole.Utf8).Faults.Select(fault => $"{fault.Pointer} {fault.Code}"));
    }
}
