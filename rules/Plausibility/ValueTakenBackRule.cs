using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.ValueTakenBack), Topic(Topics.Plausibility), CommonPractice]
[Title("A value that was taken back is named, with the reason")]
[Why("Values are mistyped, and instruments fail. Whoever reads the record later has to see that a value was changed after an answer, which one, and why.")]
[Expects("/work/withdrawn")]
[Coverage(Coverage.MayUnderReport, "whether the reason is true is not seen")]
public sealed class ValueTakenBackRule : ComplianceRule<WithdrawnValue>
{
    protected override bool? Applies(Visit visit) => visit.Record.Work?.Withdrawn is not null;

    protected override IEnumerable<Subject<WithdrawnValue>>? Subjects(Visit visit) => Kernel.Subjects.Of("/work/withdrawn", visit.Record.Work?.Withdrawn);

    protected override Verdict WhenNone(Visit visit, Look look) => look.Pass($"no value is taken back");

    protected override Verdict Assess(WithdrawnValue taken, Visit visit, Look look)
    {
        if (look.Lacks(taken.What, out var what) | look.Lacks(taken.Because, out var because))
            return look.Missing($"a value is taken back, and the record does not say which, or why");

        look.Note(taken.Note);
        return look.Advisory($"an earlier value at {what} was taken back: {WordsOf(because)}")
            .Advise(because == WithdrawalReason.InstrumentFault
                ? "Measure again with an instrument that works, and have the other one checked before it is used again."
                : "See that the value which the record has now was read from the instrument.");
    }

    private static string WordsOf(WithdrawalReason because) => because switch
    {
        WithdrawalReason.Mistyped => "it was written down wrongly",
        WithdrawalReason.WrongAppliance => "it was of another appliance",
        _ => "the instrument was at fault",
    };
}
