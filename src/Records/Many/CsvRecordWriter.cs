using System.Text;
using System.Text.Json;
using CsvHelper;

namespace Records.Many;

/// <summary>
/// Writes records as the CSV that <see cref="ManyRecords"/> reads: a column for each member that any of them has, named by its path, an
/// empty cell where a record does not have it, and <c>[]</c> where a list states "none".
/// </summary>
public static class CsvRecordWriter
{
    /// <summary>Writes the header and a row for each record. All records are held, since the header names the members of all.</summary>
    /// <param name="stream">Where to; left open.</param>
    /// <param name="records">Each one JSON object.</param>
    /// <param name="cancel">Cancels the operation.</param>
    public static async Task WriteAsync(Stream stream, IEnumerable<byte[]> records, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(records);
        var rows = records.Select(CellsOf).ToList();
        var header = rows.SelectMany(row => row.Keys).Distinct(StringComparer.Ordinal).ToList();
        await using var csv = CsvWriter.Create(stream, new CsvWriterOptions(), leaveOpen: true);
        foreach (var row in rows.Select(row => header.Select(name => row.GetValueOrDefault(name, ""))).Prepend(header))
        {
            foreach (var cell in row)
                csv.WriteField(cell);
            await csv.EndRecordAsync(cancel);
        }
    }

    private static Dictionary<string, string> CellsOf(byte[] record)
    {
        var cells = new Dictionary<string, string>(StringComparer.Ordinal);
        using var json = JsonDocument.Parse(record);
        Add(cells, new StringBuilder(), json.RootElement);
        return cells;
    }

    private static void Add(Dictionary<string, string> cells, StringBuilder path, JsonElement value)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (var member in value.EnumerateObject())
                    AddBelow(cells, path, member.Name, member.Value);
                break;
            case JsonValueKind.Array when value.GetArrayLength() > 0:
                foreach (var (index, item) in value.EnumerateArray().Index())
                    AddBelow(cells, path, index.ToString(System.Globalization.CultureInfo.InvariantCulture), item);
                break;
            case JsonValueKind.String:
                cells.Add(path.ToString(), value.GetString()!);
                break;
            default:
                cells.Add(path.ToString(), value.GetRawText());
                break;
        }
    }

    private static void AddBelow(Dictionary<string, string> cells, StringBuilder path, string name, JsonElement value)
    {
        var length = path.Length;
        if (length > 0)
            path.Append('.');
        path.Append(name);
        Add(cells, path, value);
        path.Length = length;
    }
}
