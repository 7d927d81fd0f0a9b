namespace Kernel;

/// <summary>
/// One demand on a service record. A rule says where it applies, what it needs to see, whom it concerns and how it judges one
/// subject; the engine's part is written once.
/// </summary>
public interface IComplianceRule
{
    /// <summary>What the rule says of itself.</summary>
    RuleInfo Info { get; }
}
