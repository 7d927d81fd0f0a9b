using System.Globalization;

namespace Records.Faults;

/// <summary>One thing wrong with a posted record.</summary>
/// <param name="Pointer">
/// Where: a JSON Pointer as a URI fragment (RFC 6901, section 6), such as <c>#/combustion/readings/0/coPpm</c>; <c>#</c> is the
/// whole body.
/// </param>
/// <param name="Code">A word for programs, such as <c>outOfRange</c>; it never changes its meaning.</param>
/// <param name="Detail">What is wrong and what was expected, for a reader.</param>
public sealed record Fault(string Pointer, string Code, string Detail)
{
    /// <summary>Most faults that are listed; a last entry counts the rest.</summary>
    public const int MostListed = 500;

    /// <summary>The faults as they are answered: the first <see cref="MostListed"/>, and then a count of those that are not listed.</summary>
    public static IReadOnlyList<Fault> Listed(IReadOnlyList<Fault> faults) => faults.Count <= MostListed
        ? faults
        : [.. faults.Take(MostListed), OfUnlisted(faults.Count - MostListed)];

    internal static Fault OfUnlisted(int count) => new("#", FaultCodes.MoreFaults, string.Create(CultureInfo.InvariantCulture, $"Not listed: {count} more."));
}

/// <summary>How far a body got.</summary>
public enum FaultKind
{
    /// <summary>It cannot be read: no JSON, or JSON with two meanings (400).</summary>
    Unreadable,

    /// <summary>It can be read, and something in it is wrong (422).</summary>
    Invalid,
}
