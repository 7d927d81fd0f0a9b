using Findings;
using Kernel;
using Records;
using Rules.AmbientAir;
using Rules.Situation;
using Rules.Tightness;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.EscapeMadeSafe), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "37"), Cites("GSMR-1996", "7")]
[Title("After an escape, known, suspected or shown by the record, what escapes is put right and shown right, or the gas is shut off and the emergency provider's reference recorded; carbon monoxide from an appliance counts")]
[Why("Gas or carbon monoxide (CO) that goes on escaping can kill people in the house and reach neighbours through floors and walls. The law calls for the supply to be shut off at once, and a reference shows that help was called.")]
[Serves(Part.Escape)]
[AlsoRecordedAt("")]
[Uses(LimitIds.AmbientCoCeiling, LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.CoPpm, LimitIds.FlueGasCo2, LimitIds.FlueGasO2, LimitIds.MaximumRateLoad, LimitIds.PerceptibleMovementWater, LimitIds.PerceptibleMovementElectronic, LimitIds.StatedDropShare,
    LimitIds.TightnessTablePipe, LimitIds.PermittedDropEdition3None28, LimitIds.PermittedDropEdition3None35,
    LimitIds.PermittedDropEdition3U628, LimitIds.PermittedDropEdition3U635, LimitIds.PermittedDropEdition3U1628,
    LimitIds.PermittedDropEdition3U1635, DeployersTables.PermittedDropEdition4)]
[Coverage(Coverage.MayUnderReport, "an escape that is neither stated nor shown by a tightness test or a sweep of the room air is not seen")]
public sealed class EscapeMadeSafeRule : VisitRule
{
    protected override string SubjectPointer => "/escape";

    protected override Verdict Assess(Visit visit, Look look)
    {
        // What the record shows is an escape, whatever it states: a leak that was left, and air that nobody may breathe.
        var leaks = TightnessProof.LeakStands(visit);
        var air = look.LastSweepAboveTheCeiling(visit);
        var lacks = look.Lacks(visit.Record.Escape?.Reported, out var isReported);
        if (!leaks && air is null && !isReported)
            return lacks ? look.Missing() : look.Pass($"no escape is known or suspected, and none shows");

        look.Note(visit.Record.Escape?.ReportedAt);
        look.Note(visit.Record.Escape?.GasIsolated);
        look.Note(visit.Record.Escape?.IsolatedAt);
        look.Note(visit.Record.Escape?.Reference);
        var hasReference = visit.EscapeIsCalledIn();

        // A leak that a tightness test shows may be anywhere above the valve of the boiler.
        var isShut = visit.GasIsShutOff() && (!leaks || visit.Record.Escape?.IsolatedAt is IsolationPoint.PipeSection or IsolationPoint.EmergencyControl or IsolationPoint.Meter);

        // The supply is the conveyor's or the supplier's to put right, so there help is called whatever was done.
        var isPutRight = !leaks && air is null && visit.EscapeIsPutRight();
        if (isPutRight && (hasReference || !visit.RecordedDefects.Any(defect => defect.Defect.Concerns == DefectConcern.Supply)))
            return look.Pass($"after an escape what escaped was put right, and a later look or test shows it right");
        if (isShut && hasReference)
            return MadeSafe(visit, look, isReported);
        if (isReported && visit.EscapeIsLeftByRefusal())
        {
            return look.Unsafe($"an escape is recorded, to make it safe was refused, and the emergency provider was called", ExpectedClass.ImmediatelyDangerous)
                .Warn(Cautions.EscapingGas).Advise("Stay until the emergency provider has taken over, where that is without danger, and keep everybody out of the room.");
        }

        var lacking = isShut || isPutRight ? "has no reference of the emergency provider"
            : hasReference ? "does not show that the gas was shut off"
            : "shows neither that the gas was shut off nor a reference of the emergency provider";
        List<string> asked = [];
        if (lacks)
            asked.Add("/escape/reported");
        if (!isShut && !isPutRight)
            asked.Add(visit.GasIsShutOff() ? "/escape/isolatedAt" : "/escape/gasIsolated");
        if (!hasReference)
            asked.Add("/escape/reference");
        return Escape(look, isReported, leaks, air, lacking)
            .AndMissing(asked).Warn(air is null ? Cautions.EscapingGas : Cautions.RoomAir).Advise("Shut the gas off, let air in, call the gas emergency provider, and record the reference.");
    }

    private static Verdict Escape(Look look, bool isReported, bool leaks, decimal? air, string lacking)
    {
        const ExpectedClass Expected = ExpectedClass.ImmediatelyDangerous;
        if (isReported)
            return look.Unsafe($"an escape is recorded, and the record {lacking}", Expected);

        return leaks
            ? look.Unsafe($"a tightness test shows a leak and no later one that it is gone, and the record {lacking}", Expected)
            : look.Unsafe($"the room air was left at {air} ppm carbon monoxide, and the record {lacking}", Expected);
    }

    private static Verdict MadeSafe(Visit visit, Look look, bool isReported)
    {
        if (look.Lacks(visit.Record.Escape?.IsolatedAt, out _) | look.Note(visit.Record.Escape?.Told) is not { Count: > 0 })
        {
            return look.Missing($"after an escape the gas was shut off and the emergency provider called, and the record does not say where, or who was told",
                visit.Record.Escape?.Told is { Count: > 0 } ? [] : ["/escape/told"]).Warn(Cautions.EscapingGas);
        }

        if (!isReported)
        {
            return look.Advisory($"the record shows an escape that it does not state; the gas was shut off and the emergency provider's reference is recorded")
                .Advise("State the escape in the record.");
        }

        return visit.RecordedDefects.Count > 0
            ? look.Pass($"after an escape the gas was shut off and the emergency provider's reference is recorded")
            : look.Advisory($"after an escape the gas was shut off and the emergency provider called; nothing is recorded of what was found and put right")
                .Warn(Cautions.EscapingGas).Advise("Record as a defect what escaped and where, and what was done about it before the gas was left on.");
    }
}
