using System.Text;
using System.Text.Json.Nodes;
using Records.Canonical;
using Records.Faults;
using Records.Many;

namespace Records.Tests;

public class ManyRecordsTests
{
    [Theory]
    [InlineData(RecordFormat.Ndjson)]
    [InlineData(RecordFormat.JsonArray)]
    [InlineData(RecordFormat.Csv)]
    public async Task However_they_are_written_records_are_the_same(RecordFormat format)
    {
        var records = new[] { Bodies.Example, Bodies.Full };

        var read = await Read(format, Written(format, records));

        Assert.Equal(
            records.Select(record => Encoding.UTF8.GetString(CanonicalForm.Write(Bodies.Read(record).Record!))),
            read.Select(line => Encoding.UTF8.GetString(CanonicalForm.Write(line.Read().Record!))));
    }

    [Theory]
    [InlineData(RecordFormat.Ndjson)]
    [InlineData(RecordFormat.JsonArray)]
    public async Task What_is_wrong_with_one_is_said_of_that_one(RecordFormat format)
    {
        var tooLong = $"\"{new string('x', RecordLine.MaxBytes)}\"";
        var nested = new string('[', 100_000) + new string(']', 100_000);
        var read = await Read(format, Written(format, [Bodies.Example, "{\"a\": tru}", tooLong, nested, "\"\u0000\"", Bodies.Example]));

        Assert.Equal(["", FaultCodes.NotJson, FaultCodes.TooLong, FaultCodes.TooDeep, FaultCodes.NotJson, ""], read.Select(line => line.Read().Faults is [var fault, ..] ? fault.Code : ""));
        Assert.Equal([1L, 2, 3, 4, 5, 6], read.Select(line => line.Number));
    }

    [Theory]
    [InlineData("", "no JSON array")]
    [InlineData("{}", "no JSON array")]
    [InlineData("[{}", "has no end")]
    [InlineData("[{\"a\":\"]}", "has no end")]
    [InlineData("[] []", "follows")]
    public async Task What_is_no_array_is_refused(string body, string why)
    {
        var refusal = await Assert.ThrowsAsync<ManyRecordsException>(() => Read(RecordFormat.JsonArray, body));

        Assert.Contains(why, refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[]", 0)]
    [InlineData(" [ ] ", 0)]
    [InlineData("\uFEFF[{}]", 1)]
    [InlineData("[{\"a\":\"\\\"],[\"},{}]", 2)]
    [InlineData("[{},]", 2)]
    public async Task Items_are_told_from_each_other(string body, int items) => Assert.Equal(items, (await Read(RecordFormat.JsonArray, body)).Count);

    [Theory]
    [InlineData("recordId,recordId\n1,2", "twice")]
    [InlineData("recordId,recordId.x\n1,2", "has none")]
    [InlineData("recordId.x,recordId\n1,2", "has no members")]
    [InlineData("recordId,\n1,2", "no path")]
    [InlineData("readings.0,readings.00\n1,2", "twice")]
    public async Task A_header_with_two_meanings_is_refused(string body, string why)
    {
        var refusal = await Assert.ThrowsAsync<ManyRecordsException>(() => Read(RecordFormat.Csv, body));

        Assert.Contains(why, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_header_may_have_two_thousand_names_and_no_more()
    {
        Assert.Single(await Read(RecordFormat.Csv, Names(CsvHeader.MostColumns)));
        var refusal = await Assert.ThrowsAsync<ManyRecordsException>(() => Read(RecordFormat.Csv, Names(CsvHeader.MostColumns + 1)));

        Assert.Contains("has 2001 names", refusal.Message, StringComparison.Ordinal);

        static string Names(int count) => string.Join(',', Enumerable.Range(0, count).Select(n => $"c{n}")) + "\n" + new string(',', count - 1) + "\n";
    }

    /// <summary>Each row would write every item that is left out: 150,000 of them for a row of one character.</summary>
    [Theory]
    [InlineData("defects.200", 200)]
    [InlineData("defects.201", null)]
    [InlineData("a.9999.9999.9999.9999.9999.9999.9999.9999.9999.9999.9999.9999.9999.9999.9999", null)]
    public async Task A_header_may_leave_out_few_items_of_lists(string name, int? gaps)
    {
        if (gaps is { } most)
            Assert.Equal(most + 1, JsonNode.Parse(Assert.Single(await Read(RecordFormat.Csv, name + "\n1\n")).Utf8.Span)!["defects"]!.AsArray().Count);
        else
            Assert.Contains("without gaps", (await Assert.ThrowsAsync<ManyRecordsException>(() => Read(RecordFormat.Csv, name + "\n1\n"))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("disturbedJoints", "[]", "")]
    [InlineData("disturbedJoints", "none", "#/disturbedJoints wrongType")]
    [InlineData("combustion.readings.1.coPpm", "7", "#/combustion/readings/0 nullItem")]
    [InlineData("burner.electrodesClean", "TRUE", "#/burner/electrodesClean wrongType")]
    [InlineData("burner.electrodesClean", "true", "")]
    [InlineData("burner.electrodeGapMm", "1e-40", "#/burner/electrodeGapMm notExact")]
    [InlineData("burner.electrodeGapMm", " 4", "#/burner/electrodeGapMm wrongType")]
    [InlineData("burner.electrodeGapMm", "\"4,5\"", "#/burner/electrodeGapMm wrongType")]
    [InlineData("burner.colour", "red", "#/burner/colour unknownMember")]
    [InlineData("burner.colour", "", "")]
    [InlineData("premises.reference", "a\"b", "# notCsv")]
    [InlineData("premises.reference", "a,b", "# notCsv")]
    [InlineData("premises.reference", "\"a,\nb\"", "#/premises/reference textCharacters")]
    public async Task A_cell_is_read_as_strictly_as_a_member(string column, string cell, string fault)
    {
        var body = $"recordId,jobType,jurisdiction,finishedAt,appliance.fuel,{column}\nr,annualService,GB-ENG,2026-09-14T10:25:00Z,naturalGas,{cell}\n";

        var line = Assert.Single(await Read(RecordFormat.Csv, body));

        Assert.Equal(fault, string.Join(';', line.Read().Faults.Select(f => $"{f.Pointer} {f.Code}")));
        Assert.Equal(2, line.Number);
    }

    [Fact]
    public async Task A_quote_that_is_never_closed_does_not_fill_the_memory()
    {
        var body = "recordId\na\n\"" + new string('x', 3 * RecordLine.MaxBytes);

        var refusal = await Assert.ThrowsAsync<ManyRecordsException>(() => Read(RecordFormat.Csv, body));

        Assert.Contains("a quote is open", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_that_is_not_UTF8_does_not_spoil_the_others()
    {
        var body = new MemoryStream([.. "recordId\na\n"u8, 0xC3, 0x28, .. "\nb\n"u8]);

        var read = await ManyRecords.ReadAsync(body, RecordFormat.Csv, default).ToListAsync();

        Assert.Equal(["", FaultCodes.NotUtf8, ""], read.Select(line => line.Fault?.Code ?? ""));
    }

    private static async Task<List<RecordLine>> Read(RecordFormat format, string body) =>
        await ManyRecords.ReadAsync(new MemoryStream(Encoding.UTF8.GetBytes(body)), format, default).ToListAsync();

    private static string Written(RecordFormat format, string[] records) => format switch
    {
        RecordFormat.Ndjson => string.Join('\n', records.Select(record => record.ReplaceLineEndings(" "))),
        RecordFormat.JsonArray => $"[{string.Join(" ,\n", records)}]\n",
        _ => Csv([.. records.Select(record => Cells(JsonNode.Parse(record), "").ToDictionary(StringComparer.Ordinal))]),
    };

    private static string Csv(Dictionary<string, string>[] rows)
    {
        var columns = rows.SelectMany(row => row.Keys).Distinct(StringComparer.Ordinal).ToList();
        return string.Join("\r\n", rows.Select(row => string.Join(',', columns.Select(column => Quoted(row.GetValueOrDefault(column, ""))))).Prepend(string.Join(',', columns)));
    }

    private static string Quoted(string cell) => $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private static IEnumerable<KeyValuePair<string, string>> Cells(JsonNode? node, string path) => node switch
    {
        JsonObject section => section.SelectMany(member => Cells(member.Value, path.Length > 0 ? $"{path}.{member.Key}" : member.Key)),
        JsonArray { Count: > 0 } list => list.Index().SelectMany(item => Cells(item.Item, $"{path}.{item.Index}")),
        JsonArray => [KeyValuePair.Create(path, "[]")],
        JsonValue value when value.GetValueKind() == System.Text.Json.JsonValueKind.String => [KeyValuePair.Create(path, value.GetValue<string>())],
        _ => [KeyValuePair.Create(path, node!.ToJsonString())],
    };
}
