using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.DefectLabelled), Topic(Topics.UnsafeSituation), Cites("IGEM-G-11")]
[Title("A dangerous appliance that is not put right bears a warning label")]
[Why("Word of mouth is forgotten, and others in the house never heard it. A label on the appliance warns whoever next reaches for the switch, including the engineer sent to get the heating going again.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class DefectLabelledRule : StandingDangerRule
{
    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look) => look.Note(defect.Labelled) == true
        ? look.Pass($"a warning label was fixed")
        : look.Missing($"no warning label is recorded for a defect classed as {classed}", $"{look.Subject}/labelled")
            .Warn(Cautions.DangerStands).Advise("Fix the label that forbids use to the appliance.");
}
