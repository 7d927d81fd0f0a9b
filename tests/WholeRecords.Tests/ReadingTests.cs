using System.Globalization;
using System.Text;
using Records.Canonical;
using Records.Many;
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
        string[] expected = whole.NeedsNorthernIreland ? ["#/jurisdiction unknownValue"] : [];
        Assert.Equal(expected, Held.Read(whole.Utf8).Faults.Select(fault => $"{fault.Pointer} {fault.Code}"));
    }

    /// <summary>But for a defect of the whole visit, whose subject is an empty text: a cell cannot tell that from "not recorded".</summary>
    [Fact]
    public async Task As_rows_of_one_file_they_are_the_same_records()
    {
        var whole = WholeRecord.All.Where(one => Held.Read(one.Utf8).Record is { } record && record.Defects?.Any(defect => defect.Subject == "") != true).ToList();
        Assert.True(whole.Count > 350);
        using var file = new MemoryStream();
        await CsvRecordWriter.WriteAsync(file, whole.Select(one => one.Utf8), CancellationToken.None);
        file.Position = 0;

        var rows = new List<string>();
        await foreach (var row in ManyRecords.ReadAsync(file, RecordFormat.Csv, CancellationToken.None))
            rows.Add(Canonical(row.Read()));

        Assert.Equal(whole.Select(one => Canonical(Held.Read(one.Utf8))), rows);
    }

    private static string Canonical(ReadResult read) =>
        read.Record is { } record ? Encoding.UTF8.GetString(CanonicalForm.Write(record)) : string.Join("; ", read.Faults.Select(fault => $"{fault.Pointer} {fault.Code}"));
}
