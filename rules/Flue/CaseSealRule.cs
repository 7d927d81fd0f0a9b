using Findings;
using Kernel;
using Records;
using Rules.AmbientAir;
using Rules.Combustion;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.CaseSeal), Topic(Topics.Flue), Cites("GSIUR-1998", "26(9)(a)"), CommonPractice]
[Title("The case of a room-sealed boiler is tight; under positive pressure it is checked by touch and smoke, or by a flame")]
[Why("Fan pressure inside a positive-pressure case drives combustion products out through any gap in its seal. The case comes off for a service, and a seal pinched on refitting can fill the room with CO.")]
[AlsoRecordedAt("/ambientCo")]
[Serves(Part.Case)]
[Uses(LimitIds.AirInletO2, LimitIds.AirInletCo2, LimitIds.AmbientCo)]
[AppliesBy("/appliance/flueType")]
[Coverage(Coverage.Full, "each kind of case is judged by the way it was checked")]
public sealed class CaseSealRule : VisitRule
{
    protected override string SubjectPointer => "/flue";

    protected override bool? Applies(Visit visit) => visit.IsRoomSealed;

    protected override Verdict Assess(Visit visit, Look look)
    {
        var lacks = look.Lacks(visit.Record.Appliance.CasePressure, out var pressure) | look.Lacks(visit.Record.Flue?.CaseSealChecked, out var isChecked)
            | look.Lacks(visit.Record.Flue?.CaseSealOk, out _);
        if (visit.Record.Flue?.CaseSealOk == false)
            return Leaking(visit, look);

        // Products press out of a case above room pressure, so that one that was looked at and not checked is asked for as well.
        if (visit.Record.Appliance.CasePressure == CasePressure.Positive && (lacks || !isChecked))
            return Unchecked(look);
        if (lacks)
            return look.Missing();

        if (pressure == CasePressure.Negative)
        {
            return isChecked
                ? look.Pass($"the case, under negative pressure, was checked and is tight")
                : look.Advisory($"the seal of the case was not checked").Advise("Check the seal of the case.");
        }

        if (look.Lacks(visit.Record.Flue?.CaseSealMethod, out var method))
            return look.Missing($"how the seal of a case under positive pressure was checked is not recorded");

        return method == CaseSealMethod.Other
            ? look.Advisory($"the seal of a case under positive pressure was checked neither by touch and smoke nor by a flame")
                .Warn(Cautions.CarbonMonoxide).Advise("Feel round the case with the fan running, then go round its seal with smoke.")
            : look.Pass($"the case, under positive pressure, was checked ({method}) and is tight");
    }

    private static Verdict Unchecked(Look look) =>
        look.Missing($"the seal of a case under positive pressure was not checked", "/flue/caseSealChecked")
            .Warn(Cautions.CarbonMonoxide).Advise("Look over and feel round the case and its seal, then go round it with smoke while the fan runs.");

    // Of a naturally draughted boiler no fan puts its case under pressure, so the pressure is asked of the others.
    private static Verdict Leaking(Visit visit, Look look)
    {
        if (visit.Record.Appliance.CasePressure == CasePressure.Positive)
        {
            return look.Unsafe($"the case leaks with products under pressure behind it", ExpectedClass.ImmediatelyDangerous)
                .Warn(Cautions.RoomAir).Advise("Turn the boiler off and disconnect it with permission until the seal of the case is renewed and proved.");
        }

        IReadOnlyList<string> asked = visit.Record.Appliance.CasePressure is null && visit.IsFanned != false ? ["/appliance/casePressure"] : [];
        return (visit.ProductsReachTheAirInlet() || visit.CoIsRaised() == true
            ? look.Unsafe($"the case is not tight, and products are where they should not be", look.ClassOfEscapingProducts(visit)).AndMissing(asked)
            : look.Advisory($"the case is not tight").AndMissing([.. asked, .. visit.AskedUnlessADefect("/defects", "/flue", Topics.Flue, Topics.Combustion)]))
            .Warn(Cautions.CarbonMonoxide).Advise("Renew the seal of the case and check it again, or record the defect and what was done about it.");
    }
}
