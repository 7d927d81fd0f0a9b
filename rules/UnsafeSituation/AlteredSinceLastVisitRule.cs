using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.UnsafeSituation;

[Name(RuleIds.AlteredSinceLastVisit), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "8")]
[Description("Nothing near appliance, flue or vents was altered since the last visit")]
[Coverage(Coverage.MayUnderReport, "what an alteration does is for the person on site")]
public sealed class AlteredSinceLastVisitRule : VisitRule
{
    protected override string SubjectPointer => "/premises/alteredSinceLastVisit";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Premises?.AlteredSinceLastVisit, out var isAltered))
            return look.Missing();

        return isAltered
            ? look.Advisory($"something near appliance, flue or vents was altered since the last visit; by its effect that may be a danger")
                .Warn(Cautions.CarbonMonoxide).Advise("Look at terminal, flue route and vents for what was built around them, and record a defect where the alteration endangers anyone.")
            : look.Pass($"nothing near appliance, flue or vents is recorded as altered");
    }
}
