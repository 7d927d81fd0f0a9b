namespace Findings;

/// <summary>What a rule says of a subject beyond its outcome; see <see cref="Finding"/> for each part.</summary>
public interface IStatement
{
    /// <inheritdoc cref="Finding.Weight" />
    Weight? Weight { get; }

    /// <inheritdoc cref="Finding.NotDone" />
    bool? NotDone { get; }

    /// <inheritdoc cref="Finding.Message" />
    string? Message { get; }

    /// <inheritdoc cref="Finding.Evidence" />
    IReadOnlyList<Evidence>? Evidence { get; }

    /// <inheritdoc cref="Finding.Limit" />
    Limit? Limit { get; }

    /// <inheritdoc cref="Finding.Margin" />
    decimal? Margin { get; }

    /// <inheritdoc cref="Finding.Loosened" />
    bool? Loosened { get; }

    /// <inheritdoc cref="Finding.Conformity" />
    decimal? Conformity { get; }

    /// <inheritdoc cref="Finding.ExpectedClass" />
    ExpectedClass? ExpectedClass { get; }

    /// <inheritdoc cref="Finding.Caution" />
    string? Caution { get; }

    /// <inheritdoc cref="Finding.Remedy" />
    string? Remedy { get; }
}
