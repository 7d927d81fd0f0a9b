using Findings;
using Kernel;
using Records;
using Rules.AmbientAir;
using Visits;

namespace Rules.Burner;

[Id(RuleIds.BurnerCondition), Topic(Topics.Burner), Cites("BS-6798"), CommonPractice]
[Title("The burner is in good condition")]
[Why("A cracked or distorted burner spoils the flame, makes CO and can overheat the burner door around it. Much of the damage shows only with the burner out, so a service may be the one chance to see it.")]
[Serves(Part.FireSide)]
[Uses(LimitIds.AmbientCo)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class BurnerConditionRule : VisitRule
{
    protected override string SubjectPointer => "/burner";

    // Looked for at a service; a fault that somebody recorded is judged at any visit.
    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Burner?.Condition, out var condition))
            return look.Missing();

        return condition == BurnerCondition.Good
            ? look.Pass($"the burner is in good condition")
            : look.Unsafe($"the burner is damaged", look.ClassOfEscapingProducts(visit))
                .Warn(Cautions.CarbonMonoxide).Advise("Fit a burner and seals of the maker's part numbers for this output, and read the flue again.");
    }
}
