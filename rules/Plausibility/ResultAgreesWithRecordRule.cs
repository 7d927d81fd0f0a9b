using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.ResultAgreesWithRecord), Topic(Topics.Plausibility), CommonPractice]
[Title("A visit that is recorded as one without access or without gas shows nothing that needed them")]
[Why("Nobody reads the flue of a boiler that he did not get to, or of one that has no gas. Taken at its word, such a result drops what the work itself calls for, and a joint that was opened goes untested.")]
[Coverage(Coverage.MayUnderReport, "work that leaves no trace in the record is not seen")]
public sealed class ResultAgreesWithRecordRule : VisitRule
{
    protected override string SubjectPointer => "/work/result";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Work?.Result) is not { } result)
            return look.NotApplicable($"the record does not say what the visit came to");
        if (result is not (WorkResult.NoAccess or WorkResult.NoAccessToAppliance or WorkResult.Refused or WorkResult.GasOff))
            return look.NotApplicable($"the result says neither that nobody got to the boiler nor that there was no gas");

        // Work goes on without gas. A reading that does not say when it was taken is none of before the work.
        var trace = result != WorkResult.GasOff ? visit.TraceOfWork : visit.ReadingsAfterWork is { Count: > 0 } ? "a flue reading after the work" : null;
        return trace is null
            ? look.Pass($"the result says that {result.InWords()}, and nothing in the record says otherwise")
            : look.Missing($"the result says that {result.InWords()}, and {trace} is recorded beside it", look.Subject).Contradicting(Part.Left)
                .Advise("Record what the visit came to, and take out what is not of this visit.");
    }
}
