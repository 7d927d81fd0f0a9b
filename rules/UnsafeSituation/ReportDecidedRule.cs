using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.ReportDecided), Topic(Topics.UnsafeSituation), Cites("RIDDOR-2013", "11(2)")]
[Title("Whether a dangerous fitting must be reported to the authority is decided and the reason recorded")]
[Why("Whether a dangerous fitting is reportable under RIDDOR turns on its cause and on the harm it was likely to do. The 14 days run from knowing enough, and a decision nobody takes lets them pass unnoticed.")]
[Serves(Part.HandleDanger)]
[Uses(LimitIds.ReportableDays)]
[InForce(From = "2013-10-01")]
[Coverage(Coverage.Full, "each recorded defect is judged")]
public sealed class ReportDecidedRule : DangerousDefectRule
{
    // Gas or products that still come out can harm, whatever the class.
    protected override bool Concerns(Defect defect) => base.Concerns(defect)
        || defect is { Mechanism: DefectMechanism.GasLeak or DefectMechanism.ProductsNotRemoved, Action: not DefectAction.Rectified };

    protected override Verdict Judge(Defect defect, DefectClass classed, Visit visit, Look look)
    {
        if (look.Note(defect.Cause) is not { } cause || look.Note(defect.Mechanism) is not { } mechanism)
            return Undecided(look.Advisory($"the record does not say what caused a dangerous defect and how it could do harm, so nobody can tell whether it must be reported"));

        // The regulation lists design, construction, manner of installation, modification and servicing; wear alone is not among them.
        if (cause is DefectCause.Wear or DefectCause.Other || mechanism == DefectMechanism.Other)
            return look.NotApplicable($"cause {cause} and mechanism {mechanism} are not both among those that the regulation lists");

        return look.Note(defect.Reportable?.Decision) switch
        {
            null => Undecided(look.Advisory($"cause {cause} and mechanism {mechanism} are among those that must be reported where they could kill or harm, and no decision is recorded")),
            ReportDecision.Undecided => look.Within("the decision on the report to the authority", "Decide, and report where the regulation asks for it.",
                visit.Limits[LimitIds.ReportableDays], look.Note(defect.Reportable?.KnownOn) ?? visit.Date, doneOn: null, visit),
            ReportDecision.No when look.Note(defect.Reportable?.Reason) is null => Undecided(look.Advisory($"the defect is recorded as not reportable without a reason")),
            { } decision => look.Pass($"whether the defect must be reported is decided: {decision}"),
        };
    }

    private static Verdict Undecided(Verdict verdict) => verdict.Advise("Decide whether the fitting could have caused death, unconsciousness or a stay in hospital, and record the decision with its reason.");
}
