using System.Globalization;
using System.Text.Json;
using Records.Faults;
using Records.Members;
using Records.Reading;

namespace Records.Many;

/// <summary>The header of a CSV text as the tree of members that its columns fill.</summary>
internal sealed class CsvHeader
{
    /// <summary>Most columns: a record has a few hundred members, and lists of them.</summary>
    public const int MostColumns = 2000;

    /// <summary>Most items that the lists may leave out: as many as the longest list of a record has.</summary>
    private const int MostGaps = 200;

    private readonly Node _root = new(name: null, number: 0);
    private int _nodes = 1;

    private CsvHeader(int columns) => Columns = columns;

    public int Columns { get; }

    /// <exception cref="ManyRecordsException">There are too many names, or one is empty, given twice, or both a value and a section.</exception>
    public static CsvHeader Of(IReadOnlyList<string> names)
    {
        if (names.Count > MostColumns)
            throw Refused(string.Create(CultureInfo.InvariantCulture, $"The header has {names.Count} names; at most {MostColumns} are read."));

        var header = new CsvHeader(names.Count);
        foreach (var (column, name) in names.Index())
            header.Add(column, name);
        header.AddRequiredSections();
        if (GapsIn(header._root) > MostGaps)
            throw Refused($"The lists of the header leave out more than {MostGaps} items. Number their items from 0 without gaps.");
        return header;
    }

    /// <summary>Writes the JSON of one row. Names that no record has are written as well: its reader names them in its faults.</summary>
    public void Write(Utf8JsonWriter writer, byte[][] cells)
    {
        var filled = new bool[_nodes];
        Fill(_root, cells, filled);
        Write(writer, cells, filled, _root);
    }

    /// <summary>Notes which places of the tree the row has something for.</summary>
    private static bool Fill(Node node, byte[][] cells, bool[] filled)
    {
        var isFilled = node.IsRequired || (node.Column is { } column && cells[column].Length > 0);
        foreach (var child in node.Children)
            isFilled |= Fill(child, cells, filled);
        return filled[node.Number] = isFilled;
    }

    /// <summary>How many items the lists leave out, each up to its last: every row may write that many, and the text of a row is short.</summary>
    private static long GapsIn(Node node) => node.Children.Sum(GapsIn) + (node.IsList ? node.Children.Max(child => child.Index!.Value) + 1L - node.Children.Count : 0);

    private void Add(int column, string name)
    {
        var parts = name.Split('.', RecordReader.MaxDepth + 1);
        if (parts.Length > RecordReader.MaxDepth || Array.Exists(parts, part => part.Length == 0))
            throw Refused($"'{Shown(name)}' is no path of a member, such as combustion.readings.0.coPpm.");

        var node = _root;
        foreach (var part in parts)
            node = node.Child(part, ref _nodes);
        if (node.Column is not null)
            throw Refused($"The header has '{Shown(name)}' twice.");

        node.Column = column;
        node.Member = RecordMembers.Find("/" + name.Replace('.', '/'));

        // disturbedJoints beside disturbedJoints.0.place is right (the one for "none"); recordId beside recordId.x is not.
        if (node.Member is { IsList: false, IsSection: false } && node.Children.Count > 0)
            throw Refused($"'{Shown(name)}' has no members.");
    }

    /// <summary>No cell can say that a section is there with nothing in it, so one that no record can do without is there in every row.</summary>
    private void AddRequiredSections()
    {
        foreach (var section in RecordMembers.Root.Where(member => member is { IsRequired: true, IsSection: true, IsList: false }))
            _root.Child(section.Name, ref _nodes).IsRequired = true;
    }

    private static void Write(Utf8JsonWriter writer, byte[][] cells, bool[] filled, Node node)
    {
        if (node.Column is { } column && cells[column].Length > 0)
        {
            // Beside filled items, "[]" contradicts them: it goes out as the text that it is, for its reader to refuse.
            WriteCell(writer, cells[column], node.Children.Exists(child => filled[child.Number]) ? null : node.Member);
        }
        else if (node.IsList)
        {
            // A gap is said to be one: closing it would move the items behind it to other places.
            var items = node.Children.Where(child => filled[child.Number]).ToDictionary(child => child.Index!.Value);
            var last = items.Keys.DefaultIfEmpty(-1).Max();
            writer.WriteStartArray();
            for (var index = 0; index <= last; index++)
            {
                if (items.TryGetValue(index, out var item))
                    Write(writer, cells, filled, item);
                else
                    writer.WriteNullValue();
            }

            writer.WriteEndArray();
        }
        else
        {
            writer.WriteStartObject();
            foreach (var child in node.Children.Where(child => filled[child.Number]))
            {
                writer.WritePropertyName(child.Name!);
                Write(writer, cells, filled, child);
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

    private sealed class Node(string? name, int number)
    {
        private readonly Dictionary<string, Node> _byName = new(StringComparer.Ordinal);
        private readonly HashSet<int> _indexes = [];

        public string? Name { get; } = name;

        /// <summary>Its place among all nodes.</summary>
        public int Number { get; } = number;

        public int? Index { get; } = name is { Length: <= 4 } && name.All(char.IsAsciiDigit) ? int.Parse(name, CultureInfo.InvariantCulture) : null;

        public List<Node> Children { get; } = [];

        public int? Column { get; set; }

        public RecordMember? Member { get; set; }

        public bool IsRequired { get; set; }

        public bool IsList => Children.Count > 0 && _indexes.Count == Children.Count;

        public Node Child(string part, ref int nodes)
        {
            if (!_byName.TryGetValue(part, out var child))
            {
                if (Member is { IsList: false, IsSection: false })
                    throw Refused($"'{Shown(part)}' stands under a member that has none.");
                child = new Node(part, nodes++);
                if (child.Index is { } index && !_indexes.Add(index))
                    throw Refused($"The header numbers an item twice: '{Shown(part)}'.");
                _byName.Add(part, child);
                Children.Add(child);
            }

            return child;
        }
    }
}
