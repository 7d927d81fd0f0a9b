using System.Text.Json.Serialization;
using Wire;

namespace Findings;

/// <summary>What kind of statement a limit is.</summary>
[JsonConverter(typeof(WireEnumConverter<LimitKind>))]
public enum LimitKind
{
    /// <summary>A figure that some document or the trade gives.</summary>
    Fact,

    /// <summary>Worked out from other figures.</summary>
    Derived,

    /// <summary>This service's own judgement, which no document gives.</summary>
    Judgement,
}

/// <summary>How well the figure of a limit is known.</summary>
[JsonConverter(typeof(WireEnumConverter<LimitStrength>))]
public enum LimitStrength
{
    /// <summary>Text of law or of official guidance, of which the clause was read.</summary>
    Law,

    /// <summary>The publisher's own public page, or a free standard, that was read.</summary>
    Publisher,

    /// <summary>A bulletin of the regulator or of the register of gas businesses, that was read.</summary>
    Bulletin,

    /// <summary>Two independent teaching texts agree.</summary>
    Taught,

    /// <summary>One secondary text, or sources in conflict.</summary>
    Secondary,

    /// <summary>From memory.</summary>
    Memory,

    /// <summary>Arithmetic: as strong as the weakest figure that goes into it.</summary>
    Derived,

    /// <summary>This service's own judgement.</summary>
    Judgement,
}

/// <summary>What the strength of a figure comes to.</summary>
public static class LimitStrengths
{
    /// <summary>Was the figure read where it stands?</summary>
    public static bool IsRead(this LimitStrength strength) => strength is LimitStrength.Law or LimitStrength.Publisher or LimitStrength.Bulletin;
}
