using System.Text.Json;
using System.Text.Json.Serialization;

namespace Jobs.Summary;

/// <summary>
/// The sums of a part of an audit, in a form that is kept and added to others: the whole is the sum of its parts, in whatever order and
/// on whatever machine they were judged. Lists are cut, counts never.
/// </summary>
internal sealed class SummaryParts
{
    /// <summary>Most rows of a table that are shown, and of a list that are kept.</summary>
    public const int MostRows = 500;

    /// <summary>Judged records.</summary>
    public int Judged { get; set; }

    /// <summary>Rejected ones.</summary>
    public int Rejected { get; set; }

    /// <summary>Why the first of these was rejected.</summary>
    public FirstFault? FirstFault { get; set; }

    /// <summary>Judged ones that another record of the audit replaces: in no other number here.</summary>
    public int Superseded { get; set; }

    /// <summary>Judged records without a gap.</summary>
    public int Complete { get; set; }

    /// <summary>Records with anything unsafe, missing or advisory.</summary>
    public int Marked { get; set; }

    /// <summary>Duties whose day has passed.</summary>
    public int Overdue { get; set; }

    /// <summary>Duties due soon.</summary>
    public int SoonDue { get; set; }

    /// <summary>By outcome.</summary>
    public OverallCounts Outcomes { get; init; } = new();

    /// <summary>Records by rule set: id, version, law hash and code hash, separated by blanks.</summary>
    public SortedDictionary<string, int> RuleSets { get; init; } = new(StringComparer.Ordinal);

    /// <summary>By topic.</summary>
    public SortedDictionary<string, FindingCounts> Topics { get; init; } = new(StringComparer.Ordinal);

    /// <summary>By rule.</summary>
    public SortedDictionary<string, FindingCounts> Rules { get; init; } = new(StringComparer.Ordinal);

    /// <summary>By engineer.</summary>
    public SortedDictionary<string, OverallCounts> Engineers { get; init; } = new(StringComparer.Ordinal);

    /// <summary>By maker and model.</summary>
    public SortedDictionary<string, OverallCounts> Models { get; init; } = new(StringComparer.Ordinal);

    /// <summary>By instrument.</summary>
    public SortedDictionary<string, OverallCounts> Instruments { get; init; } = new(StringComparer.Ordinal);

    /// <summary>CO/CO2 ratios by number of their class.</summary>
    public SortedDictionary<int, int> CoCo2Ratios { get; init; } = [];

    /// <summary>The worst.</summary>
    public List<WorstAppliance> Worst { get; init; } = [];

    /// <summary>The oldest of those whose day has passed.</summary>
    public List<DueEntry> OverdueFirst { get; init; } = [];

    /// <summary>The next of those due soon.</summary>
    public List<DueEntry> SoonDueFirst { get; init; } = [];

    /// <summary>As it is kept.</summary>
    public byte[] ToBytes() => JsonSerializer.SerializeToUtf8Bytes(this, SummaryPartsJson.Default.SummaryParts);

    /// <summary>From what <see cref="ToBytes"/> gave.</summary>
    public static SummaryParts Of(byte[] bytes) => JsonSerializer.Deserialize(bytes, SummaryPartsJson.Default.SummaryParts)!;
}

/// <summary>Sums as they are kept.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(SummaryParts))]
internal sealed partial class SummaryPartsJson : JsonSerializerContext;
