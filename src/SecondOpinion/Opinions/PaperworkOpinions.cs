using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class PaperworkOpinions
{
    private const string Papers = "/paperwork";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("appliance-identified", c => On("/appliance", Pass(c.Record.Appliance is { Maker: not null, Model: not null, SerialNumber: not null }))),
        ("copy-to-new-tenant", c => If(c.IsLandlords(), Papers + "/copyToNewTenantOn", () => NewTenant(c, Of(c)))),
        ("copy-to-occupier", c => If(c.IsLandlords(), Papers + "/copyToOccupierOn", () => Occupier(c, Of(c)))),
        ("defects-noted", c => On(Papers, Yes(Of(c).DefectsNotedOrNone))),
        ("electronic-record-identifies-engineer", c => If(And(c.IsLandlords(), Of(c).Electronic != false), Papers + "/electronic", () =>
            Pass(Given(c.Record.Engineer?.LicenceNumber) || Of(c).EngineerSigned == true))),
        ("examination-confirmed", c => On(Papers, Yes(Of(c).ExaminationConfirmed, no: Outcome.Missing))),
        ("landlord-pipework", c => If(c.IsLandlords(), "/pipework", () => Pass(c.Record is { Pipework.VisualOk: not null, TightnessTests.Count: > 0 }))),
        ("landlord-record-address", c => If(c.IsLandlords(), Papers, () => Yes(Of(c).PremisesAddressGiven))),
        ("landlord-record-appliance", c => If(c.IsLandlords(), "/appliance", () =>
            c.Record.Appliance is { Maker: not null, Model: not null, Location: not null, FlueType: not null } ? Outcome.Pass : Outcome.Missing)),
        ("landlord-record-landlord", c => If(c.IsLandlords(), Papers, () => Lacks(Of(c).LandlordName, Of(c).LandlordAddress)
            ? Outcome.Missing
            : Pass(Of(c) is { LandlordName: true, LandlordAddress: true }))),
        ("maker-instructions-followed", c => If(c.IsNewBoiler(), "/commissioning/instructionsFollowed", () => Yes(c.Record.Commissioning!.InstructionsFollowed, no: Outcome.Missing))),
        ("maker-instructions-left", c => If(c.IsNewBoiler(), "/paperwork/instructionsLeft", () => Yes(Of(c).InstructionsLeft, no: Outcome.Missing))),
        ("part-kind-stated", c => c.Record.PartsFitted is null ? On("", Outcome.NotApplicable) : Each(c.Record.PartsFitted, "/partsFitted", part =>
            part.Kind is null or PartKind.Other ? Outcome.Missing : Outcome.Pass)),
        ("premises-use-stated", c => On("/premises/use", c.Record.Premises?.Use is null ? Outcome.Missing : Outcome.Pass)),
        ("record-signed", c => On(Papers, Yes(Of(c).EngineerSigned, no: Outcome.Missing))),
        ("used-appliance-verified", c => If(IsUsedPutIn(c), "/appliance/usedVerifiedSafe", () => Yes(c.Record.Appliance.UsedVerifiedSafe, no: Outcome.Missing))),
        ("work-noted", c => On(Papers, Yes(Of(c).WorkNoted))),
    ];

    private static Paperwork Of(Case c) => c.Record.Paperwork ?? new Paperwork();

    /// <summary>A boiler that was in use before is put in, or put back.</summary>
    private static bool? IsUsedPutIn(Case c) => c.Record.JobType != JobType.Commissioning ? false
        : c.Record.Work?.Kind == WorkKind.Reconnection ? true : !c.IsNewBoiler();

    private static Outcome NewTenant(Case c, Paperwork papers) => (papers.NewTenancyStartsOn, papers.CopyToNewTenantOn) switch
    {
        (null, null) => Outcome.NotApplicable,
        (null, _) => Outcome.Missing,
        (var start, null) => Pass(c.AsOf < start),
        var (start, copy) => Pass(copy <= start),
    };

    // It may be displayed in place of a copy only where the appliance is in no room that the tenant lives or sleeps in.
    private static Outcome Occupier(Case c, Paperwork papers)
    {
        var lastDay = c.Day().AddDays((int)c.Limit("copy-to-occupier-days")!.Max!);
        return papers switch
        {
            { CopyToOccupierOn: { } copy } => Pass(copy >= c.Day() && copy <= lastDay),
            { DisplayedInsteadOfCopy: true } => Pass(c.Record.Premises is { RoomIsSleeping: false, RoomIsLivingSpace: false }),
            _ => Pass(c.AsOf <= lastDay),
        };
    }
}
