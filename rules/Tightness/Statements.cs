using Findings;
using Kernel;
using Records;
using Rules.Duties.Work;
using Visits;

namespace Rules.Tightness;

[Topic(Topics.Tightness)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.InstallationPurged), Cites("GSIUR-1998", "22(2)(a)"), Cites("IGEM-UP-1B")]
    [Title("Pipework that was opened to air is purged before gas is used from it")]
    [Why("Air left in gas pipes makes a mixture that can burn back into the pipe or blow a burner out. After a meter, a regulator, new pipework or a new boiler, regulation 22 has every pipe purged that gas can flow through.")]
    [Serves(Part.Purge)]
    [AppliesBy("/commissioning/newBoiler")]
    [Coverage(Coverage.MayUnderReport, "pipework opened without a part, a joint at the meter or a word of it shows nowhere")]
    public Statement InstallationPurged => Ask(
        visit => visit.Record.Work?.Purged, aboutItself: true,
        applies: visit => LetAirIn(visit) | (visit.IsNewBoiler & !visit.IsLeftWithoutGas()),
        yes: Pass("the installation was purged"),
        no: Missing("the installation was opened to air and not purged",
            warn: Cautions.EscapingGas, advise: "Purge every pipe through which gas can flow, with the room aired and no flame or switch near, before anything is lit."));

    [Id(RuleIds.AppliancesRelit), Cites("GSIUR-1998", "22(1)"), Cites("GSIUR-1998", "33(3)"), Cites("GSIUR-1998", "37(4)")]
    [Title("Where gas was off at the meter, or is restored after an escape, every appliance is lit again and examined")]
    [Why("A fire or hob that went out with the gas lets it flow unlit as soon as the gas is back on. Each appliance in the house is therefore lit again and seen to burn, not the boiler alone.")]
    [Serves(Part.Relight)]
    [Coverage(Coverage.MayUnderReport, "that the gas was off shows only by work at the meter or by an escape")]
    public Statement AppliancesRelit => Ask(
        visit => visit.Record.Work?.Relit, aboutItself: true,
        applies: visit => visit.WorkedOnTheMeter() || visit.Record is { Appliance.StateOnLeaving: StateOnLeaving.InUse } and ({ Escape.Reported: true } or { Escape.GasIsolated: true } or { Work.Kind: WorkKind.Escape }),
        yes: Pass("every appliance was lit again and examined"),
        no: Missing("gas was restored, and not every appliance was lit again and examined",
            warn: Cautions.EscapingGas, advise: "Light and examine each appliance on the installation, or shut its gas off and say so to the user."));

    [Id(RuleIds.GaswaysSealed), Cites("GSIUR-1998", "6(2)"), Cites("GSIUR-1998", "6(3)")]
    [Title("Every gasway that a disconnected or unfinished boiler leaves open is sealed with the proper fitting")]
    [Why("A valve that is merely shut can be knocked or turned open by anybody, and then feeds gas into the room. By regulation 6 every open outlet is sealed with the proper fitting before the engineer leaves it.")]
    [Serves(Part.Seal)]
    [Serves(Part.HandleDanger)]
    [AppliesBy("/commissioning/newBoiler")]
    [Coverage(Coverage.MayUnderReport, "a gasway opened on a boiler that was left connected shows only where it is stated")]
    public Statement GaswaysSealed => Ask(
        visit => visit.Record.Work?.GaswaysSealed, aboutItself: true,
        // Looked for where a gasway ends open; one that somebody recorded is judged at any visit.
        applies: visit => visit.Record.Work?.GaswaysSealed == false ? true : visit.LeavesAGaswayOpen(),
        yes: Pass("every gasway was sealed with the proper fitting"),
        no: Unsafe("a gasway was left open", expected: ExpectedClass.ImmediatelyDangerous,
            warn: Cautions.EscapingGas, advise: "Seal every open end with the fitting made for it, and test for tightness up to there."));

    private static bool LetAirIn(Visit visit) =>
        visit.WorkedOnTheMeter() || visit.Fitted(PartKind.Pipework) || visit.Record.Work?.Kind == WorkKind.Pipework;
}
