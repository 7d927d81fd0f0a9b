using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Paperwork;

[Topic(Topics.Paperwork)]
public sealed class Statements : StatementTable
{
    internal const string Complete = "Complete the paper and give the corrected copy to those who got the first.";

    [Id(RuleIds.RecordSigned), Cites("GSIUR-1998", "36(3)(c)"), CommonPractice]
    [Title("The engineer signs the record")]
    [Why("An unsigned record has nobody behind it when its findings are questioned. On a landlord's record regulation 36 requires the signature of whoever made the check, and practice is to sign every other one too.")]
    [Serves(Part.LandlordItems)]
    [Serves(Part.Paper, AtMost = Weight.Should)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement RecordSigned => Ask(
        visit => visit.Record.Paperwork?.EngineerSigned,
        yes: Pass("the paper carries the engineer's signature"),
        no: Missing("by the record the paper does not carry the engineer's signature", advise: Complete));

    [Id(RuleIds.WorkNoted), Cites("GSIUR-1998", "36(3)(c)"), CommonPractice]
    [Title("The record notes the work done and any remedial action")]
    [Why("What was cleaned, adjusted or replaced is forgotten within weeks, and the next engineer needs it to make sense of a reading that has moved. A landlord's record must state any remedial action.")]
    [Serves(Part.LandlordItems)]
    [Serves(Part.Paper, AtMost = Weight.Should)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement WorkNoted => Ask(
        visit => visit.Record.Paperwork?.WorkNoted,
        yes: Pass("the paper carries the work done and any remedial action"),
        no: Advisory("by the record the paper does not carry the work done and any remedial action", advise: Complete));

    [Id(RuleIds.DefectsNoted), Cites("GSIUR-1998", "36(3)(c)"), Cites("GSIUR-1998", "26(9)")]
    [Title("The record notes the defects, or that there were none")]
    [Why("A blank space can mean that nothing was wrong or that nobody looked. Owner and occupier learn from this entry what has to be put right, and by law a landlord's record states each safety defect.")]
    [Serves(Part.LandlordItems)]
    [Serves(Part.Paper, AtMost = Weight.Should)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement DefectsNoted => Ask(
        visit => visit.Record.Paperwork?.DefectsNotedOrNone,
        yes: Pass("the paper carries the defects, or that there were none"),
        no: Advisory("by the record the paper does not carry the defects, or that there were none", advise: Complete));

    [Id(RuleIds.LandlordRecordAddress), Cites("GSIUR-1998", "36(3)(c)")]
    [Title("The landlord's record gives the address of the premises")]
    [Why("With no address a landlord's record could belong to any home that the landlord lets. The address is required by regulation 36, and a tenant cannot rely on a check of a place that is not named.")]
    [Serves(Part.LandlordItems)]
    [AppliesBy("/premises/use")]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement LandlordRecordAddress => Ask(
        visit => visit.Record.Paperwork?.PremisesAddressGiven, applies: visit => visit.IsUnderLandlordDuty,
        yes: Pass("the paper carries the address of the premises"),
        no: Advisory("by the record the paper does not carry the address of the premises", advise: Complete));

    [Id(RuleIds.MakerInstructionsLeft), Cites("GSIUR-1998", "29")]
    [Title("The maker's instructions of a new boiler are left with the user")]
    [Why("Whoever uses, services or repairs the boiler later needs the maker's own figures and warnings. Regulation 29 has the instructions left for owner or occupier by whoever puts the boiler in.")]
    [Serves(Part.Commission)]
    [AppliesBy("/commissioning/newBoiler")]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement MakerInstructionsLeft => Ask(
        visit => visit.Record.Paperwork?.InstructionsLeft, aboutItself: true, applies: visit => visit.IsNewBoiler,
        yes: Pass("the maker's instructions were left with the user"),
        no: Missing("the maker's instructions of the new boiler were not left with the user",
            warn: Cautions.MakerDecides, advise: "Leave all instructions that came with the boiler with its owner or occupier."));

    [Id(RuleIds.MakerInstructionsFollowed), Cites("GSIUR-1998", "33(1)(c)")]
    [Title("A new boiler is installed by the maker's instructions")]
    [Why("Clearances, flue lengths, pipe sizes and settings differ from boiler to boiler, and only the maker knows what was tested. Regulation 33(1) has this examined before a new boiler is left in use.")]
    [Serves(Part.Commission)]
    [AppliesBy("/commissioning/newBoiler")]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement MakerInstructionsFollowed => Ask(
        visit => visit.Record.Commissioning?.InstructionsFollowed, aboutItself: true, applies: visit => visit.IsNewBoiler,
        yes: Pass("the new boiler was installed by the maker's instructions"),
        no: Missing("the new boiler was not installed by the maker's instructions",
            warn: Cautions.MakerDecides, advise: "Put right what differs from the maker's instructions before the boiler is left in use, or record it as a defect and leave the boiler off."));

    [Id(RuleIds.UsedApplianceVerified), Cites("GSIUR-1998", "26(3)")]
    [Title("A boiler that was used before is put in only after its condition for further use is verified")]
    [Why("A used boiler brings its past along: worn seals, missing screws, parts made for another gas. Regulation 26(3) has its condition verified by whoever installs it, before anyone relies on it.")]
    [Serves(Part.UsedBoiler)]
    [AppliesBy("/commissioning/newBoiler")]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement UsedApplianceVerified => Ask(
        visit => visit.Record.Appliance.UsedVerifiedSafe, aboutItself: true,
        applies: visit => visit.Record.JobType == JobType.Commissioning ? visit.Record.Work?.Kind == WorkKind.Reconnection | !visit.IsNewBoiler : false,
        yes: Pass("the condition of the used boiler was verified before it was put in"),
        no: Missing("the condition of the used boiler was not verified before it was put in",
            warn: Cautions.DangerStands, advise: "Examine the used boiler by the maker's instructions before it is put into use, or leave it disconnected."));
}
