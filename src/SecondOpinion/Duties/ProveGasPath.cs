using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>Each disturbed gas joint listed, sealed, tested with the valve open, checked alight below the valve; a nipple shut and checked.</summary>
internal static class ProveGasPath
{
    private const DutyKind Kind = DutyKind.ProveGasPath;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached)
            yield break;
        foreach (var owed in Nipple(visit).Concat(Opened(visit)).Concat(Pipes(visit)))
            yield return owed;
    }

    private static IEnumerable<Owed> Nipple(Visit visit)
    {
        if (!Gas.IsNippleOpened(visit))
            yield break;
        const string Why = "a pressure was read at a nipple";
        yield return visit.Must(Kind, "/gasSupply/testPointsClosed", visit.Record.GasSupply?.TestPointsClosed, Why);
        yield return visit.Must(Kind, "/gasSupply/testPointsLeakChecked", visit.Record.GasSupply?.TestPointsLeakChecked, Why);
    }

    private static IEnumerable<Owed> Opened(Visit visit)
    {
        if (visit.Record.DisturbedJoints is null && (visit.IsService || visit.IsRepair || visit.IsInstallation) && !visit.IsRemoval)
            yield return visit.Must(Kind, "/disturbedJoints", null, "work on the boiler", Seen.InTheJob);
        var joints = visit.Joints.Index().Where(one => JointsOpinions.CarriesGas(one.Item)).ToList();
        var isOpened = visit.Touched.Has(TouchedPart.GasPath) || visit.Touched.Has(TouchedPart.Pipework)
            || (visit.IsTopPlateOff && Parts.HasGasInFireSide(visit.Record.Appliance) && !Parts.IsStatedShut(visit.Record));
        if (isOpened && joints.Count == 0)
        {
            yield return visit.Must(Kind, "/disturbedJoints", null, visit.Touched.Why(TouchedPart.GasPath) is { Length: > 0 } why ? why : "the fire side was opened");
            if (visit.IsTopPlateOff)
                yield return visit.Must(Kind, "/work/noGasJointOpened", null, "the fire side was opened");
        }

        if (visit.HasPart(PartKind.GasValve) && joints.Count > 0)
        {
            foreach (var union in new[] { JointPlace.GasValveInlet, JointPlace.GasValveOutlet })
            {
                if (!joints.Exists(one => one.Item.Place == union))
                    yield return visit.Must(Kind, "/disturbedJoints", null, "a gas valve has a union on either side");
            }
        }

        foreach (var (place, joint) in joints)
        {
            foreach (var owed in Joint(visit, joint, $"/disturbedJoints/{place}"))
                yield return owed;
        }

        if (joints.Exists(one => one.Item.Place != JointPlace.TestNipple))
        {
            foreach (var owed in TightProof.Asks(visit, Kind, "6(6): a gas joint was disturbed"))
                yield return owed;
        }
    }

    private static IEnumerable<Owed> Joint(Visit visit, DisturbedJoint joint, string at)
    {
        if (joint.CarriesGas == false && joint.Place is JointPlace.GasValveInlet or JointPlace.GasValveOutlet)
            yield return Visit.Contradiction(Kind, $"{at}/carriesGas", "a union of a gas valve carries gas");
        if (joint.Seal is not JointSeal.None)
            yield return visit.Must(Kind, $"{at}/condition", joint.Condition == SealCondition.Good || joint.Renewed == true ? true : joint.Condition is null ? null : false, at);
        yield return visit.Must(Kind, $"{at}/leakChecked", joint.LeakChecked, at);
        if (IsBelowTheValve(joint) && joint.LeakChecked == true)
            yield return visit.Must(Kind, $"{at}/burnerAlight", joint.BurnerAlight, at, Seen.Running);
    }

    /// <summary>The tightness test does not see past the gas valve, which is shut.</summary>
    public static bool IsBelowTheValve(DisturbedJoint joint) => joint.Place is not (JointPlace.GasValveInlet or JointPlace.MeterUnion or JointPlace.IsolationValve or JointPlace.Pipework or JointPlace.TestNipple);

    /// <summary>Regulation 22(1) to (3): gas is let into pipes again by purging, and every appliance on them is lit and examined.</summary>
    private static IEnumerable<Owed> Pipes(Visit visit)
    {
        if (!visit.Touched.Has(TouchedPart.Pipework))
            yield break;
        var why = visit.Touched.Why(TouchedPart.Pipework);
        if (visit.IsRemoval || (visit.IsLeftOff && visit.IsRunningPutOff))
            yield break;
        yield return visit.Must(Kind, "/work/purged", visit.Record.Work?.Purged, why);
        yield return visit.Must(Kind, "/work/relit", visit.Record.Work?.Relit, why);
        if (visit.Joints.Any(joint => joint.Place == JointPlace.MeterUnion) || visit.HasPart(PartKind.Meter, PartKind.Regulator))
            yield return visit.Must(Kind, "/gasSupply/regulatorSealIntact", visit.Recorded("/gasSupply/regulatorSealIntact"), why);
    }
}
