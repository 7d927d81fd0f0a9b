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
        HasFuel = record.GetProperty("appliance").TryGetProperty("fuel", out _);
        Outcome = expects.GetProperty("outcome").GetString()!;
        MayClose = expects.GetProperty("closing").GetBoolean();
        MayCloseAs = expects.GetProperty("closesAs").GetString();
        IsHandled = expects.GetProperty("situation") is { ValueKind: JsonValueKind.Object } dealt && dealt.TryGetProperty("handled", out var handled) && handled.ValueKind is JsonValueKind.True or JsonValueKind.False ? handled.GetBoolean() : null;
        Open = expects.GetProperty("situation") is { ValueKind: JsonValueKind.Object } left && left.TryGetProperty("open", out var open) ? [.. open.EnumerateArray().Select(kind => kind.GetString()!)] : [];
        Asks = [.. expects.GetProperty("asks").EnumerateArray().Select(pointer => pointer.GetString()!)];
        var others = expects.TryGetProperty("alsoAccepted", out var also) ? also : default;
        AcceptedOutcomes = [Outcome, .. Others(others, "outcome").Select(one => one.GetString()!)];
        AcceptedClosesAs = [.. new[] { MayCloseAs }.OfType<string>(), .. Others(others, "closesAs").Select(one => one.GetString()).OfType<string>()];
        AcceptedClosings = [MayClose, .. Others(others, "closing").Select(one => one.GetBoolean())];
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

    public bool HasFuel { get; }

    /// <summary>The outcome that is wanted.</summary>
    public string Outcome { get; }

    public IReadOnlyList<string> AcceptedOutcomes { get; }

    /// <summary>Whether it is wanted that the job may be closed.</summary>
    public bool MayClose { get; }

    public IReadOnlyList<bool> AcceptedClosings { get; }

    /// <summary>As what it may be closed; null where it may not.</summary>
    public string? MayCloseAs { get; }

    public IReadOnlyList<string> AcceptedClosesAs { get; }

    /// <summary>Whether everything owed for its dangers was done; null without a danger.</summary>
    public bool? IsHandled { get; }

    /// <summary>Kinds of duty at least among those not met.</summary>
    public IReadOnlyList<string> Open { get; }

    /// <summary>Pointers that must be asked for as must.</summary>
    public IReadOnlyList<string> Asks { get; }

    private static IEnumerable<JsonElement> Others(JsonElement also, string member) => also.ValueKind == JsonValueKind.Object && also.TryGetProperty(member, out var values)
        ? values.EnumerateArray().ToList()
        : [];
}
