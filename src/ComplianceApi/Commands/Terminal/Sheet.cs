using System.Globalization;
using Spectre.Console;

namespace ComplianceApi.Commands.Terminal;

/// <summary>
/// What a command prints for a reader: wrapped to the terminal, in colour where it shows colours; plain and 80 wide where it goes
/// elsewhere or NO_COLOR is set. Control characters, which could move the cursor, are shown as marks.
/// </summary>
internal sealed class Sheet
{
    private const int PlainWidth = 80;
    private const int Widest = 100;
    private const int Narrowest = 40;

    private readonly IAnsiConsole _console;

    public Sheet(TextWriter output)
    {
        var place = new AnsiConsoleOutput(output);
        var isPlain = !place.IsTerminal || Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 };
        _console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = isPlain ? new AnsiConsoleOutput(new TrimmingWriter(output)) : place,
            Ansi = isPlain ? AnsiSupport.No : AnsiSupport.Detect,
            ColorSystem = isPlain ? ColorSystemSupport.NoColors : ColorSystemSupport.Detect,
            Interactive = InteractionSupport.No,
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
        });
        _console.Profile.Width = place.IsTerminal ? Math.Clamp(place.Width, Narrowest, Widest) : PlainWidth;
    }

    /// <summary>Characters in a line.</summary>
    public int Width => _console.Profile.Width;

    public void Blank() => _console.WriteLine();

    public void Heading(string text) => Wrapped("", text, new Style(decoration: Decoration.Bold));

    /// <summary>A text behind a head; its further lines begin where its first one does.</summary>
    public void Wrapped(string head, string? text, Style? style = null, Style? headStyle = null)
    {
        if (string.IsNullOrEmpty(text))
            return;

        var first = true;
        foreach (var line in Lines(Safe(text), Math.Max(Width - head.Length, Narrowest / 2)))
        {
            _console.Write(new Text(first ? Safe(head) : new string(' ', head.Length), headStyle));
            _console.Write(new Text(line, style));
            _console.WriteLine();
            first = false;
        }
    }

    /// <summary>A table; columns named with a leading blank hold numbers. What a row is called by, in the first column, stays in one piece.</summary>
    public void Rows(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table { Border = TableBorder.None };
        foreach (var head in heads)
        {
            var isNumber = head.StartsWith(' ');
            table.AddColumn(new TableColumn(new Text(head.Trim(), new Style(decoration: Decoration.Dim)))
            {
                Alignment = isNumber ? Justify.Right : Justify.Left,
                NoWrap = isNumber || table.Columns.Count == 0,
                Padding = new Padding(0, 0, 2, 0),
            });
        }

        foreach (var row in rows)
            table.AddRow(row.Select(cell => new Text(Safe(cell))));
        _console.Write(table);
    }

    /// <summary>The colour of a verdict; the word beside it says the same.</summary>
    public static Style StyleOf(string word) => word switch
    {
        "unsafe" or "error" or "rejected" => new Style(Color.Red, decoration: Decoration.Bold),
        "missing" or "incomplete" => new Style(Color.Blue, decoration: Decoration.Bold),
        "advisory" => new Style(Color.Yellow, decoration: Decoration.Bold),
        "pass" => new Style(decoration: Decoration.Bold),
        _ => Style.Plain,
    };

    private static string Safe(string text) => string.Concat(text.Select(c => char.IsControl(c) || CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.Format ? '\uFFFD' : c));

    private static IEnumerable<string> Lines(string text, int width)
    {
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = "";
            }

            line += line.Length > 0 ? " " + word : word;
            for (; line.Length > width; line = line[width..])
                yield return line[..width];
        }

        if (line.Length > 0)
            yield return line;
    }
}
