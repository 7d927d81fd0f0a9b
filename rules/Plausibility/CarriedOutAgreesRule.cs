using Findings;
using Kernel;
using Records;
using Rules.Duties;
using Visits;

namespace Rules.Plausibility;

[Id(RuleIds.CarriedOutAgrees), Topic(Topics.Plausibility), Cites("GSIUR-1998", "26(9)")]
[Title("A job that is recorded as carried out names nothing as not done that no reason excuses")]
[Why("Whoever reads that a job was carried out takes the boiler for examined and cleaned. Where the record itself names one of these things as left out, and for a reason that excuses none, the job was carried out in part.")]
[Coverage(Coverage.MayUnderReport, "what was left out and is not named is for the rule that asks for it")]
public sealed class CarriedOutAgreesRule : VisitRule
{
    private const string GasRate = "/gasSupply/rate";

    private static readonly (string Pointer, string Words, string Part)[] Musts =
    [
        ("/heatExchanger/inspected", "the inspection of the heat exchanger", Part.FireSide),
        ("/heatExchanger/cleaned", "the cleaning of the heat exchanger", Part.FireSide),
        ("/combustion/readings", "the analysis of the flue gas", Part.Analysis),
        (GasRate, "the examination of operating pressure or heat input", Part.PressureOrRate),
        ("/flue/visualOk", "the examination of the flue", Part.Flue),
        ("/condensate/trapRefilled", "the filling of the condensate trap", Part.TrapOfService),
        ("/safetyDevices", "the proving of a safety device", Part.SafetyDevices),
    ];

    protected override string SubjectPointer => "/work/result";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Note(visit.Record.Work?.Result) != WorkResult.CarriedOut)
            return look.NotApplicable($"the job is not recorded as carried out");
        if (visit.Record.Work?.NotDone is not { } notDone)
            return look.NotApplicable($"the record names nothing as not done");

        look.Note(visit.Record.GasSupply?.ApplianceInletMbar);
        var leftOut = notDone.Select(entry => LeftOut(entry, visit)).Where(must => must.Words is not null).ToList();
        return leftOut is [var first, ..]
            ? look.Missing($"the job is recorded as carried out, and {first.Words} as not done, for a reason that does not excuse it", look.Subject).Contradicting([.. leftOut.Select(must => must.Part)])
                .Advise("Do it now, or record the job as carried out in part and leave the boiler off.")
            : look.Pass($"the job is recorded as carried out, and what is named as not done does not speak against it");
    }

    private static (string Pointer, string Words, string Part) LeftOut(NotDone entry, Visit visit) =>
        entry is { What: { } what, Because: NotDoneReason.NoInstrument or NotDoneReason.CustomerRefused or NotDoneReason.ApplianceLeftOff or NotDoneReason.Other }
            ? Array.Find(Musts, must => Reasons.Holds(what, must.Pointer) && (must.Pointer != GasRate || visit.Record.GasSupply?.ApplianceInletMbar is null))
            : default;
}
