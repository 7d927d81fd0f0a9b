using NRules.Fluent.Dsl;

namespace Kernel.Engine;

/// <summary>
/// The engine's one rule of the first pass: of the visit and each rule that concerns it, that rule reports. The rules are facts that stay in
/// a session, so that the engine keeps books over one join and not over as many conditions as there are rules.
/// </summary>
internal sealed class AskEachRule : Rule
{
    public override void Define()
    {
        JudgedVisit visit = default!;
        FirstPassRule rule = default!;
        When().Match(() => visit).Match(() => rule, r => r.Concerns(visit));
        Then().Do(_ => rule.Report(visit));
    }
}
