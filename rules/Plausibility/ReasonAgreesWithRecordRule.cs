using System.Collections;
using Findings;
using Kernel;
using Records;
using Records.Members;
using Rules.Duties;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.ReasonAgreesWithRecord), Topic(Topics.Plausibility), Cites("GSIUR-1998", "26(9)")]
[Title("Nothing in the record speaks against what is named as not done, or against the reason")]
[Why("A reason lets a visit close without something that it owes. One that the record contradicts may be there only to get past the question, and then nobody has looked.")]
[Expects("/work/notDone")]
[Coverage(Coverage.MayUnderReport, "a reason that is untrue and that nothing in the record speaks against is not seen")]
public sealed class ReasonAgreesWithRecordRule : ComplianceRule<NotDone>
{
    protected override bool? Applies(Visit visit) => visit.Record.Work?.NotDone is not null;

    protected override IEnumerable<Subject<NotDone>>? Subjects(Visit visit) => Kernel.Subjects.Of("/work/notDone", visit.Record.Work?.NotDone);

    protected override Verdict Assess(NotDone notDone, Visit visit, Look look)
    {
        if (look.Note(notDone.What) is not { } what)
            return look.NotApplicable($"the entry does not say what was not done");
        if (IsRecorded(visit, what))
            return Contradicted($"this is named as not done, and the record has a value of it");
        if (look.Note(notDone.Because) is not { } because)
            return look.NotApplicable($"the entry gives no reason");

        return Reasons.IsContradicted(visit, what, because)
            ? Contradicted($"the reason given is that {Reasons.WordsOf(because)}, and the record shows otherwise")
            : look.Pass($"nothing in the record speaks against the reason");

        Verdict Contradicted(FormattableString message) => look.Missing(message, $"{look.Subject}/because").Contradicting(Reasons.DutiesOf(what))
            .Advise("Do it now, or record why it could not be done as it was.");
    }

    // "No" and "none" say that it was not done, as the reason does.
    private static bool IsRecorded(Visit visit, string what) =>
        RecordValues.At(visit.Record, what) is not (null or false or ICollection { Count: 0 });
}
