namespace Findings;

/// <summary>What all findings of one rule share; see <see cref="Finding"/> for each part.</summary>
public interface IRuleText
{
    /// <inheritdoc cref="Finding.RuleId" />
    string RuleId { get; }

    /// <inheritdoc cref="Finding.Topic" />
    string Topic { get; }

    /// <inheritdoc cref="Finding.Title" />
    string Title { get; }

    /// <inheritdoc cref="Finding.References" />
    IReadOnlyList<Reference>? References { get; }

    /// <inheritdoc cref="Finding.Documentation" />
    string? Documentation { get; }
}
