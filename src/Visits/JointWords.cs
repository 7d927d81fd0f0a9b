using Records;

namespace Visits;

/// <summary>The trade's words for a disturbed joint.</summary>
public static class JointWords
{
    /// <summary>A union on the gas valve.</summary>
    public static bool IsGasValveUnion(this DisturbedJoint joint) =>
        joint?.Place is JointPlace.GasValveInlet or JointPlace.GasValveOutlet;

    /// <summary>Above the valve of the appliance: a tightness test sees it, and it carries gas unless the record says otherwise.</summary>
    public static bool IsAboveTheApplianceValve(this DisturbedJoint joint) =>
        joint?.Place is JointPlace.MeterUnion or JointPlace.IsolationValve or JointPlace.Pipework or JointPlace.TestNipple;

    /// <summary>
    /// Carries gas, or may: a gas-valve place does whatever the record says of it, and one that the record does not place may.
    /// </summary>
    public static bool CarriesGasOrMay(this DisturbedJoint joint)
    {
        ArgumentNullException.ThrowIfNull(joint);
        return joint.IsGasValveUnion() || (joint.CarriesGas ?? (joint.IsAboveTheApplianceValve() || joint.Place is null or JointPlace.Other));
    }

    /// <summary>
    /// Lies behind the gas valve, or may: the valve is shut during a tightness test, so only a leak check with the burner alight can prove it.
    /// </summary>
    public static bool IsBehindTheGasValve(this DisturbedJoint joint) =>
        joint.CarriesGasOrMay() && joint.Place is not JointPlace.GasValveInlet && !joint.IsAboveTheApplianceValve();

    /// <summary>Part of the combustion circuit: products or mixture are behind it.</summary>
    public static bool IsOfTheCombustionCircuit(this DisturbedJoint joint) =>
        joint?.Place is JointPlace.TopPlate or JointPlace.BurnerDoor or JointPlace.Fan or JointPlace.Electrode or JointPlace.FlueCollector;
}
