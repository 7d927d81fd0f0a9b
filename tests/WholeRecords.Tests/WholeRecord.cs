using System.Text;
using System.Text.Json;

namespace WholeRecords.Tests;

/// <summary>One whole record with what an auditor expects of it, from tests/records/whole; its README says what the members are.</summary>
internal sealed class WholeRecord
{
    public static string Folder { get; } = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "..", "records", "whole"));

    /// <summary>All of them, by name.</summary>
    public static IReadOnlyList<WholeRecord> All { get; } =
    [
        .. Directory.GetDirectories(Folder).SelectMany(folder => Directory.GetFiles(folder, "*.json"))
            .Select(file => new WholeRecord(file))
            .OrderBy(whole => whole.Name, StringComparer.Ordinal),
    ];

    private WholeRecord(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllBytes(file));
        var root = document.RootElement;
        var (record, expects) = (root.GetProperty("record"), root.GetProperty("expects"));
        Name = Path.ChangeExtension(Path.GetRelativePath(Folder, file), null).Replace('\\', '/');
        Utf8 = Encoding.UTF8.GetBytes(record.GetRawText());
        Job = record.GetProperty("jobType").GetString()!;
        Danger = expects.GetProperty("situation") is { ValueKind: JsonValueKind.Object } situation && situation.TryGetProperty("state", out var state) ? state.GetString()! : "none";
        IsHonest = root.GetProperty("honest").GetBoolean();
        NeedsNorthernIreland = root.TryGetProperty("needs", out var needs) && needs.ValueEquals("northernIreland");
        Outcome = expects.GetProperty("outcome").GetString()!;
        MayClose = expects.GetProperty("closing").GetBoolean();
        var others = expects.TryGetProperty("alsoAccepted", out var also) ? also : default;
        AcceptedOutcomes = [Outcome, .. Others(others, "outcome").Select(one => one.GetString()!)];
        AcceptedClosings = [MayClose, .. Others(others, "closing").Select(one => one.GetBoolean())];
        AcceptedClosesAs = [expects.GetProperty("closesAs").GetString(), .. Others(others, "closesAs").Select(one => one.GetString())];
        Asks = [.. expects.GetProperty("asks").EnumerateArray().Select(one => one.GetString()!)];
        DoesNotAsk = [.. expects.GetProperty("doesNotAsk").EnumerateArray().Select(one => one.GetString()!)];
        if (expects.GetProperty("situation") is { ValueKind: JsonValueKind.Object } wanted)
        {
            State = wanted.GetProperty("state").GetString();
            IsHandled = wanted.GetProperty("handled").GetBoolean();
            Open = [.. wanted.GetProperty("open").EnumerateArray().Select(one => one.GetString()!)];
        }

        AcceptedStates = [State, .. Others(others, "state").Select(one => one.GetString())];
    }

    /// <summary>Folder and file, such as <c>repair/pump-renewed</c>.</summary>
    public string Name { get; }

    /// <summary>The record as it is posted.</summary>
    public byte[] Utf8 { get; }

    public string Job { get; }

    /// <summary>State of the worst danger, or <c>none</c>.</summary>
    public string Danger { get; }

    public bool IsHonest { get; }

    public bool NeedsNorthernIreland { get; }

    /// <summary>The outcome that is wanted.</summary>
    public string Outcome { get; }

    public IReadOnlyList<string> AcceptedOutcomes { get; }

    /// <summary>Whether it is wanted that the job may be closed.</summary>
    public bool MayClose { get; }

    public IReadOnlyList<bool> AcceptedClosings { get; }

    /// <summary>As what it closes, first the word wanted; null where it does not.</summary>
    public IReadOnlyList<string?> AcceptedClosesAs { get; }

    /// <summary>Pointers that must be asked for, <c>#</c> before them.</summary>
    public IReadOnlyList<string> Asks { get; }

    /// <summary>Pointers or sections of which nothing may be asked as must.</summary>
    public IReadOnlyList<string> DoesNotAsk { get; }

    /// <summary>State of the worst danger; null where the record makes no demand on it.</summary>
    public string? State { get; }

    public IReadOnlyList<string?> AcceptedStates { get; }

    /// <summary>Whether every duty of every danger is met; null where the record makes no demand on it.</summary>
    public bool? IsHandled { get; }

    /// <summary>Kinds of duty that are not met, at least these.</summary>
    public IReadOnlyList<string> Open { get; } = [];

    private static IEnumerable<JsonElement> Others(JsonElement also, string member) => also.ValueKind == JsonValueKind.Object && also.TryGetProperty(member, out var values)
        ? values.EnumerateArray().ToList()
        : [];
}
