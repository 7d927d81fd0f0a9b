using System.Text.Json;
using System.Text.Json.Serialization;
using Records;

namespace SecondOpinion;

/// <summary>How much a duty weighs.</summary>
internal enum DutyWeight
{
    /// <summary>Law, or nobody could otherwise exclude a danger of the work.</summary>
    Must,

    /// <summary>Good practice of the job.</summary>
    Should,
}

/// <summary>Whether a reason counts while the appliance is left in use.</summary>
internal enum CountsInUse
{
    /// <summary>In use or off.</summary>
    Either,

    /// <summary>In use only.</summary>
    Only,

    /// <summary>Left off only.</summary>
    Not,
}

/// <summary>One reason that excuses one duty at some members, so that it is met by reason and never met.</summary>
internal sealed class Reason
{
    public required NotDoneReason Because { get; init; }

    /// <summary>Kind of duty, a key of <see cref="ReasonTable.Duties"/>.</summary>
    public required string Duty { get; init; }

    /// <summary>Members, as patterns with <c>*</c> for any item.</summary>
    public required IReadOnlyList<string> What { get; init; }

    /// <summary>Which item is meant, by the value of one of its members. Null: any.</summary>
    public IReadOnlyDictionary<string, string>? Where { get; init; }

    /// <summary>The greatest weight that it excuses.</summary>
    public required DutyWeight Weight { get; init; }

    public required CountsInUse LeftInUse { get; init; }

    /// <summary>Null: any.</summary>
    public IReadOnlyList<Fuel>? Fuels { get; init; }

    /// <summary>Null: any.</summary>
    public IReadOnlyList<JobType>? Jobs { get; init; }

    public IReadOnlyList<JobType> NotJobs { get; init; } = [];

    /// <summary>What must be there beside it: keys of <see cref="ReasonTable.Needs"/>, all of them.</summary>
    public IReadOnlyList<string> Needs { get; init; } = [];

    /// <summary>What of the record contradicts it, in words that begin with the member.</summary>
    public IReadOnlyList<string> ContradictedBy { get; init; } = [];

    public required string When { get; init; }

    public required string Source { get; init; }
}

/// <summary>What no row may do. What is not named is any.</summary>
internal sealed class ReasonBan
{
    public IReadOnlyList<NotDoneReason>? Because { get; init; }

    public IReadOnlyList<string>? Duties { get; init; }

    public IReadOnlyList<string>? What { get; init; }

    public IReadOnlyDictionary<string, string>? Where { get; init; }

    public DutyWeight? Weight { get; init; }

    public CountsInUse? LeftInUse { get; init; }

    /// <summary>The need that lifts the ban; a key of <see cref="ReasonTable.Needs"/>.</summary>
    public string? Unless { get; init; }

    public string? Jurisdiction { get; init; }

    public DateOnly? Before { get; init; }

    public required string Says { get; init; }

    public required string Source { get; init; }
}

/// <summary>reasons.json: which reason of work.notDone excuses which duty. A pair that has no row excuses nothing.</summary>
internal sealed class ReasonTable
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        Converters = { new JsonStringEnumConverter<DutyWeight>(JsonNamingPolicy.CamelCase), new JsonStringEnumConverter<CountsInUse>(JsonNamingPolicy.CamelCase) },
    };

    public static ReasonTable InForce { get; } = Read();

    public required string About { get; init; }

    /// <summary>Kinds of duty, with what each is.</summary>
    public required IReadOnlyDictionary<string, string> Duties { get; init; }

    /// <summary>What a row may need beside its reason, in words.</summary>
    public required IReadOnlyDictionary<string, string> Needs { get; init; }

    public required IReadOnlyList<Reason> Rows { get; init; }

    public required IReadOnlyList<ReasonBan> Never { get; init; }

    private static ReasonTable Read()
    {
        using var table = typeof(ReasonTable).Assembly.GetManifestResourceStream("reasons.json")!;
        return JsonSerializer.Deserialize<ReasonTable>(table, Options)!;
    }
}
