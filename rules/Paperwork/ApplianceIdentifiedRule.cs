using Findings;
using Kernel;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.ApplianceIdentified), Topic(Topics.Paperwork), CommonPractice]
[Title("Maker, model and serial number say which appliance the record is about")]
[Why("Two boilers of one model in the same block are told apart by the serial number. Without it a defect can be filed against the wrong one, and a manufacturer's safety recall can miss the right one.")]
[Serves(Part.Plate, AtMost = Weight.Should)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class ApplianceIdentifiedRule : VisitRule
{
    protected override string SubjectPointer => "/appliance";

    protected override Verdict Assess(Visit visit, Look look)
    {
        var isIdentified = look.Note(visit.Record.Appliance.Maker) is not null & look.Note(visit.Record.Appliance.Model) is not null
            & look.Note(visit.Record.Appliance.SerialNumber) is not null;
        return isIdentified
            ? look.Pass($"maker, model and serial number are recorded")
            : look.Advisory($"maker, model and serial number are not all recorded, so this record may be taken for another appliance's")
                .Advise("Copy the data plate.");
    }
}
