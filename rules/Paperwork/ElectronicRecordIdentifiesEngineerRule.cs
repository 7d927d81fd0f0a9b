using Findings;
using Kernel;
using Visits;

namespace Rules.Paperwork;

[Id(RuleIds.ElectronicRecordIdentifiesEngineer), Topic(Topics.Paperwork), Cites("GSIUR-1998", "36(3)(c)")]
[Title("A landlord's record that is kept electronically identifies the engineer beyond doubt")]
[Why("Anyone with access can type a name into a file, so something has to tie it to one engineer. HSE accepts electronic landlord's records on the condition, among others, that they uniquely identify who made the check.")]
[Serves(Part.LandlordItems)]
[AppliesBy("/premises/use")]
[Coverage(Coverage.MayUnderReport, "keeping it from loss and printing it are no members")]
public sealed class ElectronicRecordIdentifiesEngineerRule : VisitRule
{
    protected override string SubjectPointer => "/paperwork/electronic";

    // Only a record that says it is on paper is taken as one.
    protected override bool? Applies(Visit visit) => visit.IsUnderLandlordDuty & visit.Record.Paperwork?.Electronic != false;

    protected override Verdict Assess(Visit visit, Look look)
    {
        var isIdentified = look.Note(visit.Record.Engineer?.LicenceNumber) is { Length: > 0 } | look.Note(visit.Record.Paperwork?.EngineerSigned) == true;
        return isIdentified
            ? look.Pass($"the electronic record identifies the engineer by licence number or signature")
            : look.Advisory($"neither a licence number nor a signature identifies the engineer in this electronic record")
                .Advise("Put the licence number or an electronic signature on the record.");
    }
}
