using Findings;

namespace Kernel;

/// <summary>How sure a measured value is, and how sure a pass has to be.</summary>
public interface IDoubt
{
    /// <summary>Lowest probability of conformity of a plain pass.</summary>
    Limit Guard { get; }

    /// <summary>Probability that the true value conforms to <paramref name="limit"/>; null for a limit in words.</summary>
    decimal? ConformityOf(Limit limit, decimal value);
}
