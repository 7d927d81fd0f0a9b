using Findings;
using Kernel;
using Visits;

namespace Rules.Joints;

[Topic(Topics.Joints)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.FlueTestPointClosed), Cites("BS-7967"), Cites("GSIUR-1998", "26(9)(a)")]
    [Title("The flue sampling point is closed again")]
    [Why("Left open, a sampling point lets flue gas out for as long as the boiler runs. The cap comes off for each analysis and is easily forgotten when the tools go back in the bag.")]
    [Serves(Part.FlueTestPoint)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement FlueTestPointClosed => Ask(
        visit => visit.Record.Combustion?.TestPointClosed,
        yes: Pass("the flue sampling point was closed again"),
        no: Unsafe("the flue sampling point was left open", expected: ExpectedClass.ImmediatelyDangerous,
            warn: Cautions.CarbonMonoxide, advise: "Close the sampling point with its cap and seal, and check round it with the boiler running."));
}
