namespace Findings;

/// <summary>How a figure was worked out; see <see cref="Figure"/> for each part.</summary>
public interface IWorking
{
    /// <inheritdoc cref="Figure.Unit" />
    string? Unit { get; }

    /// <inheritdoc cref="Figure.Formula" />
    string Formula { get; }

    /// <inheritdoc cref="Figure.Inputs" />
    IReadOnlyList<string> Inputs { get; }

    /// <inheritdoc cref="Figure.Constants" />
    IReadOnlyList<string>? Constants { get; }

    /// <inheritdoc cref="Figure.Source" />
    string Source { get; }
}
