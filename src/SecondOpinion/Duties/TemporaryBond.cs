using Records;

namespace SecondOpinion.Duties;

/// <summary>A bond across the gap while pipe or meter was cut (regulation 10).</summary>
internal static class TemporaryBond
{
    public static IEnumerable<Owed> Of(Visit visit)
    {
        var isCut = visit.IsRemoval || visit.Record.Work?.Kind is WorkKind.Pipework or WorkKind.MeterWork
            || visit.HasPart(PartKind.Meter, PartKind.Pipework)
            || visit.Joints.Any(joint => joint.Place is JointPlace.MeterUnion or JointPlace.Pipework);
        if (isCut && !visit.IsNothingReached)
            yield return visit.Must(DutyKind.TemporaryBond, "/electrical/temporaryBondUsed", visit.Record.Electrical?.TemporaryBondUsed, "pipe or meter was parted");
    }
}
