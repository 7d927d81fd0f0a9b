using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>Every open outlet sealed with the proper fitting and tested to the nearest valves. Turning off is not sealing.</summary>
internal static class SealWhatIsLeft
{
    private const DutyKind Kind = DutyKind.SealWhatIsLeft;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        var why = Why(visit);
        if (why is null)
            yield break;
        yield return visit.Must(Kind, "/work/gaswaysSealed", visit.Record.Work?.GaswaysSealed, why);
        var isParted = visit.IsRemoval || visit.Record.Appliance.StateOnLeaving == StateOnLeaving.Disconnected || visit.Touched.Has(TouchedPart.Pipework) || visit.Joints.Any(joint => JointsOpinions.CarriesGas(joint) && joint.Place != JointPlace.TestNipple);
        if (!isParted || visit.IsNothingReached)
            yield break;
        foreach (var owed in TightProof.Asks(visit, Kind, why))
            yield return owed;
    }

    private static string? Why(Visit visit)
    {
        if (visit.IsRemoval)
            return "the boiler was removed";
        if (visit.Record.Appliance.StateOnLeaving == StateOnLeaving.Disconnected)
            return "the boiler was disconnected";
        if (visit.IsInstallation && visit.IsLeftOff && !visit.IsNothingReached && !visit.Touched.IsNothing)
            return "26(5): a boiler that was installed and cannot be used yet";
        var isOpen = visit.IsLeftOff && visit.Joints.Any(joint => JointsOpinions.CarriesGas(joint) && joint.LeakChecked != true);
        return isOpen ? "a gas joint was opened and not proved" : null;
    }
}
