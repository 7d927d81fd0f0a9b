using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.NoGasJointOpenedAgrees), Topic(Topics.Plausibility), Cites("GSIUR-1998", "6(6)")]
[Title("Where it is stated that no gas joint was opened, no part of the gas path was fitted and no joint that carries gas disturbed")]
[Why("No gas valve, injector, gas seal, regulator, meter or pipe goes in without a gas joint being opened. Such a joint is to be proved tight, and the statement would let it go untested.")]
[Coverage(Coverage.MayUnderReport, "a joint that was opened and is not listed is not seen")]
public sealed class NoGasJointOpenedAgreesRule : VisitRule
{
    protected override string SubjectPointer => "/work/noGasJointOpened";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Work?.NoGasJointOpened) is not { } stated)
            return look.NotApplicable($"the record does not state that no gas joint was opened");
        if (!stated)
            return look.Pass($"the record states that a gas joint was opened");
        if (visit.FittedPartsOfTheGasPath())
            return Contradicted($"the record states that no gas joint was opened, and a part was fitted that opens one");

        return visit.GasJointsWereDisturbed == true
            ? Contradicted($"the record states that no gas joint was opened, and a disturbed joint carries gas or may")
            : look.Pass($"the record states that no gas joint was opened, and neither a part nor a joint says otherwise");

        Verdict Contradicted(FormattableString message) => look.Missing(message, look.Subject).Contradicting(Part.GasJoints)
            .Warn(Cautions.EscapingGas).Advise("Put right what is recorded wrongly, and prove each gas joint tight that was opened.");
    }
}
