using Records;
using Visits;

namespace Rules.Joints;

/// <summary>What was left shut or capped, so that no gas comes to the boiler.</summary>
internal static class LeftShut
{
    /// <summary>
    /// The boiler was left off, and the record shows its gas shut: it was disconnected, its outlets were sealed,
    /// or a defect or the escape names where the gas was isolated. To be turned off at a switch shuts no gas.
    /// </summary>
    public static bool ApplianceValveIsLeftShut(this Visit visit) =>
        visit.IsLeftOutOfUse && (visit.Appliance.StateOnLeaving == StateOnLeaving.Disconnected || visit.SaysWhereGasWasShut());

    /// <summary>The record shows the gas sealed or isolated, besides saying how the boiler was left.</summary>
    public static bool SaysWhereGasWasShut(this Visit visit) => visit.Record.Work?.GaswaysSealed == true
        || visit.Record.Escape?.GasIsolated == true || IsOfGas(visit.Record.Escape?.IsolatedAt)
        || visit.RecordedDefects.Any(recorded => IsOfGas(recorded.Defect.IsolatedAt));

    /// <summary>A joint of the pipework before the boiler, which was left off: a test that leaves the appliance out reaches it.</summary>
    public static bool IsCapped(this DisturbedJoint joint, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(joint);
        return joint.Place is JointPlace.IsolationValve or JointPlace.Pipework && visit.IsLeftOutOfUse;
    }

    private static bool IsOfGas(IsolationPoint? point) =>
        point is IsolationPoint.ApplianceValve or IsolationPoint.PipeSection or IsolationPoint.EmergencyControl or IsolationPoint.Meter;
}
