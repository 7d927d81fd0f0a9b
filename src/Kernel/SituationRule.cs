using NRules.Fluent.Dsl;

namespace Kernel;

/// <summary>
/// A rule of the set "situation" that says nothing itself: it infers what is dangerous or what became of it, as a fact that other rules of
/// the set match. It runs where an <see cref="InferenceRule"/> does.
/// </summary>
public abstract class SituationRule : Rule, IComplianceRule
{
    /// <summary>
    /// The priority of a rule that finds a danger. The engine fires what is activated in no order that counts, and what asks whether a fact is
    /// absent must come after everything that may insert it: dangers, then what became of them, then what stands, then the conclusions.
    /// </summary>
    protected const int Finds = 30;

    /// <summary>The priority of a rule that says what became of a danger.</summary>
    protected const int Judges = 20;

    /// <summary>The priority of a rule that says what is left.</summary>
    protected const int Leaves = 10;

    /// <inheritdoc />
    public RuleInfo Info => field ??= RuleInfo.Of(GetType());
}
