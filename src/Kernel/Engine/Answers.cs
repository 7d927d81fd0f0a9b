using Findings;

namespace Kernel.Engine;

/// <summary>What the rules say of one record, and nothing beside it.</summary>
/// <param name="Findings">The answers, in no order.</param>
/// <param name="Outcome">What the whole record shows.</param>
public sealed record Answers(IReadOnlyList<Finding> Findings, OverallOutcome Outcome);
