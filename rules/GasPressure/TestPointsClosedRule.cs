using Findings;
using Kernel;
using Visits;

namespace Rules.GasPressure;

[Id(RuleIds.TestPointsClosed), Topic(Topics.GasPressure), Cites("GSIUR-1998", "6(6)"), CommonPractice]
[Title("The pressure test points are closed again and checked for leaks")]
[Why("Gas leaks steadily from a test nipple that was not tightened, and a room that fills with it can explode. A tightness test with the gas valve shut cannot see one on the burner side, so each is checked by itself.")]
[Serves(Part.GasTestPoints)]
[Coverage(Coverage.Full, "the record states it")]
public sealed class TestPointsClosedRule : VisitRule
{
    protected override string SubjectPointer => "/gasSupply/testPointsClosed";

    protected override Verdict Assess(Visit visit, Look look)
    {
        var lacks = look.Lacks(visit.Record.GasSupply?.TestPointsClosed, out var closed)
            | look.Lacks(visit.Record.GasSupply?.TestPointsLeakChecked, out var wasChecked);
        if (visit.Record.GasSupply?.TestPointsClosed == false)
        {
            return look.Unsafe($"a pressure test point was left open: gas escapes there", ExpectedClass.ImmediatelyDangerous)
                .Warn(Cautions.EscapingGas).Advise("Close the test point and check it for leaks with the gas on.");
        }

        if (lacks)
            return look.Missing();

        return closed && wasChecked
            ? look.Pass($"the test points were closed and checked for leaks")
            : look.Missing($"the test points were closed and not checked for leaks", "/gasSupply/testPointsLeakChecked")
                .Warn(Cautions.EscapingGas).Advise("Check each test point with leak-detection fluid, those behind the gas valve with the burner alight.");
    }
}
