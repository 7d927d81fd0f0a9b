using System.Text;
using System.Text.Json;
using Records.Reading;

namespace Records.Tests;

/// <summary>Every whole record is read: its members and values are those that a record has.</summary>
public class WholeRecordsTests
{
    private static readonly string Folder = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "..", "records", "whole"));

    private static readonly IReadOnlyList<string> Files = [.. Directory.GetFiles(Folder, "*.json", SearchOption.AllDirectories)
        .Where(file => Path.GetDirectoryName(file) != Folder)
        .Select(file => Path.GetRelativePath(Folder, file).Replace('\\', '/'))
        .Order(StringComparer.Ordinal)];

    public static TheoryData<string> Names => [.. Files];

    [Fact]
    public void There_are_as_many_as_their_page_says() => Assert.StartsWith(
        "402 whole service records", File.ReadLines(Path.Combine(Folder, "README.md")).ElementAt(2).Replace("402", $"{Files.Count}", StringComparison.Ordinal), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_whole_record_is_read_without_a_fault(string name)
    {
        using var whole = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Folder, name)));
        var record = whole.RootElement.GetProperty("record");
        var result = RecordReader.Read(Encoding.UTF8.GetBytes(record.GetRawText()));
        var needsNorthernIreland = whole.RootElement.TryGetProperty("needs", out var needs) && needs.ValueEquals("northernIreland");
        string[] expected =
        [
            .. needsNorthernIreland ? ["#/jurisdiction unknownValue"] : (string[])[],
            .. record.GetProperty("appliance").TryGetProperty("fuel", out _) ? [] : (string[])["#/appliance/fuel requiredMember"],
        ];
        Assert.Equal(expected, result.Faults.Select(fault => $"{fault.Pointer} {fault.Code}"));
    }
}
