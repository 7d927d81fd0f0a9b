namespace Findings;

/// <summary>Marks a member that an evaluation has only where it is shown whole: how something came about, and texts that are served once for all evaluations.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class WholeOnlyAttribute : Attribute
{
    /// <summary>Whether it is left out of rows alone: of a finding that is shown in full it is told.</summary>
    public bool OfRows { get; init; }
}
