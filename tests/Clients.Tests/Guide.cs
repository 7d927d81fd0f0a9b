namespace Clients.Tests;

/// <summary>A section of the guide: what is typed, which files are written in between, and what is printed at the end.</summary>
internal sealed class Guide
{
    private static readonly string File = Path.Combine(Shell.Repository, "openapi", "clients", "README.md");

    private Guide(string text)
    {
        string? kind = null;
        var script = new List<string>();
        var block = new List<string>();
        foreach (var line in text.Split('\n'))
        {
            if (line.StartsWith("```", StringComparison.Ordinal) && kind is null)
            {
                kind = line[3..];
            }
            else if (line == "```")
            {
                if (kind == "sh service")
                    Service = string.Join('\n', block);
                else if (kind == "sh")
                    script.AddRange(block);
                else if (kind == "text")
                    Prints = string.Join('\n', block) + "\n";
                else if (kind!.Split(' ') is [_, var name])
                    script.AddRange([$"cat > {name} <<'END_OF_FILE'", .. block, "END_OF_FILE"]);
                Commands += kind!.StartsWith("sh", StringComparison.Ordinal) ? block.Count : 0;
                kind = null;
                block.Clear();
            }
            else if (kind is not null)
            {
                block.Add(line);
            }
        }

        Script = string.Join('\n', script);
    }

    /// <summary>The command that starts the service.</summary>
    public string? Service { get; }

    /// <summary>Everything else that is typed.</summary>
    public string Script { get; }

    /// <summary>What it prints at its end.</summary>
    public string Prints { get; } = "";

    /// <summary>How many commands there are.</summary>
    public int Commands { get; }

    public static Guide Section(string title)
    {
        var sections = System.IO.File.ReadAllText(File).Split("\n## ");
        return new(title.Length == 0 ? sections[0] : sections.Single(section => section.StartsWith(title + "\n", StringComparison.Ordinal)));
    }
}
