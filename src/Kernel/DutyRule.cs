using NRules.Fluent.Dsl;

namespace Kernel;

/// <summary>
/// A rule of the set "duties": it matches the visit, and what other rules of the set inferred of it, and says what the visit owes. It
/// writes its own conditions and may chain. Its id is the kind of the duty.
/// </summary>
public abstract class DutyRule : Rule, IComplianceRule
{
    /// <inheritdoc />
    public RuleInfo Info => field ??= RuleInfo.Of(GetType());
}
