using Findings;
using Kernel;
using Records;
using Rules.UnsafeSituation;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.ConcernsAgree), Topic(Topics.Plausibility), Cites("GSIUR-1998", "34(3)"), CommonPractice]
[Title("A defect that is recorded as of another appliance or of the supply is not contradicted by the record")]
[Why("What is wrong elsewhere is made known and leaves this boiler as it is. One word in the wrong box would make a danger of this boiler somebody else's.")]
[Serves(Part.HandleDanger)]
[Coverage(Coverage.MayUnderReport, "a defect that names no place and a topic of either is believed")]
public sealed class ConcernsAgreeRule : DefectRule
{
    protected override bool Concerns(Defect defect) => defect.Concerns is DefectConcern.OtherAppliance or DefectConcern.Supply;

    protected override Verdict Assess(Defect defect, Visit visit, Look look)
    {
        var concerns = look.Note(defect.Concerns);
        var place = look.Note(defect.Subject);
        var topic = look.Note(defect.Topic);
        var against =
            place is { Length: > 0 } ? "it names a place of this record"
            : concerns == DefectConcern.Supply && topic is not (null or Topics.Tightness or Topics.Joints or Topics.GasPressure or Topics.Electrical or Topics.UnsafeSituation) ? $"its topic, {topic}, is none of a gas supply"
            : concerns == DefectConcern.OtherAppliance && WasLeftOffForADanger(visit, look) ? "the boiler was left off for a danger, and no other defect names one of it"
            : null;
        return against is null
            ? look.Pass($"nothing in the record speaks against the defect being of what it says: {concerns}")
            : look.Missing($"the defect is recorded as not of this boiler ({concerns}), and {against}", $"{look.Subject}/concerns").Contradicting(Part.HandleDanger)
                .Warn(Cautions.DangerStands).Advise("Record whether the defect is of this boiler, of another appliance or of the supply.");
    }

    private static bool WasLeftOffForADanger(Visit visit, Look look) =>
        (look.Note(visit.Record.Appliance.LeftOffBecause) == LeftOffReason.Danger || look.Note(visit.Record.Work?.Result) == WorkResult.StoppedForDanger)
        && !visit.RecordedDefects.Any(recorded => recorded.IsDangerous && recorded.IsOfThisAppliance);
}
