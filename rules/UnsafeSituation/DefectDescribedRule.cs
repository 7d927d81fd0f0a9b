using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Name(RuleIds.DefectDescribed), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11"), Cites("GSIUR-1998", "36(3)(c)")]
[Description("Each recorded defect is described and placed")]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class DefectDescribedRule : DefectRule
{
    protected override Verdict Assess(Defect defect, Visit visit, Look look)
    {
        if (look.Lacks(defect.Description, out _))
            return look.Missing($"the record does not say what is wrong");

        return look.Note(defect.Location) is { } location
            ? look.Pass($"the defect is described and placed: {location}")
            : look.Advisory($"the record does not say where the defect is").Advise("Add the place to the description.");
    }
}
