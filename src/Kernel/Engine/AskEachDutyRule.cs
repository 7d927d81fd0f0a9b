using NRules.Fluent.Dsl;

namespace Kernel.Engine;

/// <summary>The engine's rules of the duties. As in the first pass, what the rules say is asked of them, and they are facts themselves.</summary>
internal static class AskEachDutyRule
{
    /// <summary>Of all kinds, new ones each time: while one is compiled it cannot be for another engine.</summary>
    public static IReadOnlyList<Rule> All => [new InferFacts(), new CallByVisit(), new CallByFact()];

    /// <summary>Each rule that infers adds the facts that none inferred before, on which others call.</summary>
    internal sealed class InferFacts : Rule
    {
        public override void Define()
        {
            JudgedVisit visit = default!;
            DutyFactRule rule = default!;
            When().Match(() => visit).Match(() => rule, r => r.Infers(visit));
            Then().Do(context => context.InsertAll(visit.Owed.TakeFacts()));
        }
    }

    /// <summary>Each rule that the visit makes call.</summary>
    internal sealed class CallByVisit : Rule
    {
        public override void Define()
        {
            JudgedVisit visit = default!;
            VisitCallRule rule = default!;
            When().Match(() => visit).Match(() => rule, r => r.IsCalledBy(visit));
            Then().Do(_ => visit.Owed.Hear(rule, visit));
        }
    }

    /// <summary>Each rule that a fact makes call.</summary>
    internal sealed class CallByFact : Rule
    {
        public override void Define()
        {
            JudgedVisit visit = default!;
            DutyFact fact = default!;
            FactCallRule rule = default!;
            When().Match(() => visit).Match(() => fact).Match(() => rule, r => r.IsCalledBy(fact));
            Then().Do(_ => visit.Owed.Hear(rule, visit, fact));
        }
    }
}
