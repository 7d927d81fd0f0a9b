using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.DefectClassed), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Description("The engineer classes each recorded defect")]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class DefectClassedRule : DefectRule
{
    protected override Verdict Assess(Defect defect, Visit visit, Look look) => look.Lacks(defect.Class, out var classed)
        ? look.Missing($"the defect is not classed")
            .Advise("Class the situation by the unsafe-situations procedure; the competent person on site decides.")
        : look.Pass($"the engineer classed the defect as {classed}");
}
