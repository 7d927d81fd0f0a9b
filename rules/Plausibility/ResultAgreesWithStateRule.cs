using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.ResultAgreesWithState), Topic(Topics.Plausibility), Cites("GSIUR-1998", "26(9)")]
[Title("A boiler whose work was broken off is recorded as left off")]
[Why("What only a running boiler shows can wait for the next visit while nobody can light this one. Left in use, it runs without the examination that regulation 26(9) asks for after any work.")]
[Coverage(Coverage.Full, "two members are compared")]
public sealed class ResultAgreesWithStateRule : VisitRule
{
    protected override string SubjectPointer => "/appliance/stateOnLeaving";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Work?.Result) is not { } result)
            return look.NotApplicable($"the record does not say what the visit came to");
        if (result is not (WorkResult.GasOff or WorkResult.AwaitingParts or WorkResult.StoppedForDanger or WorkResult.PartlyCarriedOut))
            return look.NotApplicable($"the result does not say that the work was broken off");
        if (look.Note(visit.Record.Appliance.StateOnLeaving) is { } state && state != StateOnLeaving.InUse)
            return look.Pass($"the result says that {result.InWords()}, and the boiler was left {state}");
        if (visit.RecordedDefects.Any(defect => defect.IsRefusalDealtWith))
            return look.Pass($"the result says that {result.InWords()}, and a defect records that taking the boiler out of use was refused");

        return look.Missing(
                visit.Appliance.StateOnLeaving is null
                    ? (FormattableString)$"the result says that {result.InWords()}, and the record does not say how the boiler was left"
                    : $"the result says that {result.InWords()}, and the boiler was left in use",
                look.Subject)
            .Contradicting(visit.Appliance.StateOnLeaving is null ? [] : [Part.Left])
            .Advise("Turn the boiler off until the work is done, or finish the work.");
    }
}
