using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Electrical;

[Topic(Topics.Electrical)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.SafeIsolation), CommonPractice]
    [Title("The electrical supply is isolated and proved dead before the case is opened")]
    [Why("Mains voltage inside an open boiler can kill, and a switch in the off position proves nothing. External controls may feed a terminal of their own, so only a test at the boiler shows that it is dead.")]
    [Serves(Part.Electrics)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement SafeIsolation => Ask(
        visit => visit.Record.Electrical?.IsolatedSafely, applies: visit => visit.IsMoreThanALandlordCheck,
        yes: Pass("the supply was isolated and proved dead"),
        no: Advisory("the supply was not isolated and proved dead before work inside the boiler",
            warn: Cautions.ElectricShock, advise: "Isolate, lock off and prove dead before opening a boiler."));

    [Id(RuleIds.Polarity), CommonPractice]
    [Title("Live and neutral are the right way round")]
    [Why("With live and neutral reversed, the fuse and any single-pole switch break the neutral. Parts inside can then stay live with the boiler switched off, and some boilers no longer sense their flame.")]
    [Serves(Part.EarthAndPolarity)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement Polarity => Ask(
        visit => visit.Record.Electrical?.PolarityOk,
        yes: Pass("live and neutral are the right way round"),
        no: Unsafe("live and neutral are reversed",
            warn: Cautions.ElectricShock, advise: "Isolate the boiler and have the wiring put right before it runs."));

    [Id(RuleIds.MainBonding), CommonPractice]
    [Title("Main bonding of the gas pipe is looked for, and its absence told to the customer")]
    [Why("During an electrical fault an unbonded gas pipe can be at a different voltage from other metalwork, and touching both gives a shock. The gas engineer reports it and an electrician decides what is needed.")]
    [Serves(Part.Electrics)]
    [Coverage(Coverage.MayOverReport, "plastic services may need none, which an electrician decides")]
    public Statement MainBonding => Ask(
        visit => visit.Record.Electrical?.MainBonding,
        yes: Pass("main bonding of the gas pipe was seen"),
        no: Advisory("no main bonding of the gas pipe was seen; whether it is needed is for an electrician, and plastic services may need none",
            warn: Cautions.ElectricShock, advise: "Tell the customer in writing to have the bonding looked at by an electrician."));

    [Id(RuleIds.TemporaryBond), Cites("GSIUR-1998", "10")]
    [Title("A temporary bond bridges the gap while a gas pipe or meter is parted")]
    [Why("Gas pipe can carry a stray current, and parting it draws a spark just where gas is. Regulation 10 wants the gap bridged before the pipe is cut.")]
    [Serves(Part.Bond)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement TemporaryBond => Ask(
        visit => visit.Record.Electrical?.TemporaryBondUsed, aboutItself: true, applies: visit => visit.Record.Electrical?.TemporaryBondUsed is not null || visit.PartedAPipe(),
        yes: Pass("a temporary bond was used while the pipe was parted"),
        no: Missing("no temporary bond was used while the pipe was parted", warn: Cautions.EscapingGas, advise: "Bridge the gap before any gas pipe or meter is parted, and record it."));
}
