using Findings;
using Kernel;
using Rules.CoAlarm;
using Rules.Paperwork;
using Visits;

namespace Rules.Jurisdictions.England;

[Id(RuleIds.CoAlarmEnglandNewBoiler), Topic(Topics.CoAlarm), Cites("BUILDING-REGS-2010", "Approved Document J"), InForce(From = "2022-10-01")]
[Title("In England a carbon monoxide alarm goes in with a new boiler")]
[Why("Any new boiler may have a flue or seal that was fitted wrongly, and CO gives no other sign. In England Approved Document J looks for an alarm at installation, in owned and rented homes alike.")]
[Serves(Part.Commission)]
[Serves(Part.AlarmOwed, AtMost = Weight.Should, Of = "/coAlarm/tested")]
[Serves(Part.AlarmOwed, AtMost = Weight.Should, Of = "/coAlarm/replaceBy")]
[Serves(Part.AlarmOwed, AtMost = Weight.Should, Of = "/coAlarm/standard")]
[Serves(Part.AlarmOwed, AtMost = Weight.Should, Of = "/coAlarm/distanceMm")]
[AppliesBy("/commissioning/newBoiler")]
[Coverage(Coverage.Full, "presence beside a new boiler is stated")]
public sealed class CoAlarmEnglandNewBoilerRule : NewBoilerRule
{
    protected override string SubjectPointer => "/coAlarm";

    protected override bool IsLawHere(Visit visit) => visit.IsIn(Codes.England);

    // It is the installer's to fit and to prove, so the job stays open without it.
    protected override Verdict Assess(Visit visit, Look look)
    {
        var alarm = look.JudgeAlarm(visit, "one goes in with every new boiler");
        if (alarm.Outcome == Outcome.Advisory)
            return alarm.AndMissing("/coAlarm/present");
        if (alarm.IsProblem)
            return alarm;
        if (look.Lacks(visit.Record.CoAlarm?.Tested, out var tested) | look.Lacks(visit.Record.CoAlarm?.Standard, out var standard))
            return look.Missing($"there is a carbon monoxide alarm, and the record does not say whether it was tested and of which standard it is");
        if (tested && CoAlarmState.IsOfTheStandard(standard))
            return alarm;

        return (tested
            ? look.Advisory($"the carbon monoxide alarm beside the new boiler is marked {standard}, which is not the standard for homes").AndMissing("/coAlarm/standard")
            : look.Advisory($"the carbon monoxide alarm beside the new boiler was not tested").AndMissing("/coAlarm/tested"))
            .Warn(Cautions.CarbonMonoxide).Advise("Press the test button, and replace an alarm that does not sound or does not bear EN 50291-1.");
    }
}
