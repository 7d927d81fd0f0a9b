using Findings;
using Records;

namespace Rules.Duties.Work;

/// <summary>A part of the installation that was worked on: a fact of the duties, which other rules of them match.</summary>
/// <param name="part">What was worked on.</param>
/// <param name="because">What shows it.</param>
public sealed class Touched(TouchedPart part, DutyCause because)
{
    /// <summary>What was worked on.</summary>
    public TouchedPart Part { get; } = part;

    /// <summary>What shows it.</summary>
    public DutyCause Because { get; } = because;
}
