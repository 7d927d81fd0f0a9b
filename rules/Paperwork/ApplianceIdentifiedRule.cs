using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Visits;

namespace Rules.Paperwork;

[Name(RuleIds.ApplianceIdentified), Topic(Topics.Paperwork), CommonPractice]
[Description("Maker, model and serial number say which appliance the record is about")]
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
