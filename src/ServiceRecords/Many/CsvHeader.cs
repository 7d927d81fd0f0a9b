using System.Globalization;
using System.Text.Json;

namespace ServiceRecords;

/// <summary>The header of a CSV text as the tree of members that its columns fill.</summary>
internal sealed class CsvHeader
{
    private readonly Node _root = new(null);

    private CsvHeader(int columns) => Columns = columns;

    public int Columns { get; }

    /// <exception cref="ManyRecordsException">A name is empty, given twice, or both a value and a section.</exception>
    public static CsvHeader Of(IEnumerable<string> names)
    {
        var all = names.ToList();
        var header = new CsvHeader(all.Count);
        foreach (var (column, name) in all.Index())
            header.Add(column, name);
        return header;
    }

    /// <summary>Writes the JSON of one row. Names that no record has are written as well: its reader names them in its faults.</summary>
    public void Write(Utf8JsonWriter writer, byte[][] cells) => Write(writer, cells, _root);

    private void Add(int column, string name)
    {
        var parts = name.Split('.');
        if (parts.Length > RecordReader.MaxDepth || Array.Exists(parts, part => part.Length == 0))
            throw Refused($"'{Shown(name)}' is no path of a member, such as combustion.readings.0.coPpm.");

        var node = _root;
        foreach (var part in parts)
            node = node.Child(part);
        if (node.Column is not null)
            throw Refused($"The header has '{Shown(name)}' twice.");

        node.Column = column;
        node.Member = RecordMembers.Find("/" + name.Replace('.', '/'));

        // disturbedJoints beside disturbedJoints.0.place is right (the one for "none"); recordId beside recordId.x is not.
        if (node.Member is { IsList: false, IsSection: false } && node.Children.Count > 0)
            throw Refused($"'{Shown(name)}' has no members.");
    }

    private static void Write(Utf8JsonWriter writer, byte[][] cells, Node node)
    {
        if (node.Column is { } column && cells[column].Length > 0)
        {
            // Beside filled items, "[]" contradicts them: it goes out as the text that it is, for its reader to refuse.
            WriteCell(writer, cells[column], node.Children.Exists(child => child.HasValue(cells)) ? null : node.Member);
        }
        else if (node.IsList)
        {
            // A gap is said to be one: closing it would move the items behind it to other places.
            var items = node.Children.Where(child => child.HasValue(cells)).ToDictionary(child => child.Index!.Value);
            writer.WriteStartArray();
            for (var index = 0; index <= items.Keys.DefaultIfEmpty(-1).Max(); index++)
            {
                if (items.TryGetValue(index, out var item))
                    Write(writer, cells, item);
                else
                    writer.WriteNullValue();
            }

            writer.WriteEndArray();
        }
        else
        {
            writer.WriteStartObject();
            foreach (var child in node.Children.Where(child => child.HasValue(cells)))
            {
                writer.WritePropertyName(child.Name!);
                Write(writer, cells, child);
            }

            writer.WriteEndObject();
        }
    }

    private static void WriteCell(Utf8JsonWriter writer, byte[] cell, RecordMember? member)
    {
        var isRaw = member switch
        {
            null => false,
            { IsList: true } => cell.AsSpan().SequenceEqual("[]"u8),
            _ when member.ClrType == typeof(bool) => cell.AsSpan().SequenceEqual("true"u8) || cell.AsSpan().SequenceEqual("false"u8),
            _ when member.ClrType == typeof(decimal) => IsNumber(cell),
            _ => false,
        };
        if (isRaw)
            writer.WriteRawValue(cell, skipInputValidation: true);
        else
            writer.WriteStringValue(cell);
    }

    private static bool IsNumber(byte[] cell)
    {
        var reader = new Utf8JsonReader(cell);
        try
        {
            return reader.Read() && reader.TokenType == JsonTokenType.Number && reader.ValueSpan.Length == cell.Length && !reader.Read();
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static string Shown(string name) => string.Concat(name.Take(100).Select(c => char.IsControl(c) ? '?' : c));

    private static ManyRecordsException Refused(string detail) => new(FaultCodes.NotCsv, detail);

    private sealed class Node(string? name)
    {
        private readonly Dictionary<string, Node> _byName = new(StringComparer.Ordinal);

        public string? Name { get; } = name;

        public int? Index { get; } = name is { Length: <= 4 } && name.All(char.IsAsciiDigit) ? int.Parse(name, CultureInfo.InvariantCulture) : null;

        public List<Node> Children { get; } = [];

        public int? Column { get; set; }

        public RecordMember? Member { get; set; }

        public bool IsList => Children.Count > 0 && Children.TrueForAll(child => child.Index is not null);

        public bool HasValue(byte[][] cells) => (Column is { } column && cells[column].Length > 0) || Children.Exists(child => child.HasValue(cells));

        public Node Child(string part)
        {
            if (!_byName.TryGetValue(part, out var child))
            {
                if (Member is { IsList: false, IsSection: false })
                    throw Refused($"'{Shown(part)}' stands under a member that has none.");
                child = new Node(part);
                if (Children.Exists(other => other.Index is { } index && index == child.Index))
                    throw Refused($"The header numbers an item twice: '{Shown(part)}'.");
                _byName.Add(part, child);
                Children.Add(child);
            }

            return child;
        }
    }
}
