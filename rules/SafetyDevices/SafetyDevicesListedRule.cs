using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.SafetyDevices;

[Id(RuleIds.SafetyDevicesListed), Topic(Topics.SafetyDevices), Cites("GSIUR-1998", "26(9)(d)"), Cites("GSIUR-1998", "27")]
[Title("Flame supervision, overheat thermostat and, with a fan, the proof of draught are among the devices looked at")]
[Why("Flame failure, overheating and loss of draught are separate dangers, and a device against one is no help against the others. A gap in the list leaves a danger for which nothing was tried.")]
[Serves(Part.SafetyDevices)]
[Coverage(Coverage.MayUnderReport, "which devices this model has is not known")]
public sealed class SafetyDevicesListedRule : VisitRule
{
    protected override string SubjectPointer => "/safetyDevices";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (!Has(visit, SafetyDeviceKind.FlameSupervision) || !Has(visit, SafetyDeviceKind.OverheatThermostat))
            return look.Missing($"flame supervision and overheat thermostat are not both recorded", "/safetyDevices");
        if (visit.IsFanned == false || Has(visit, SafetyDeviceKind.AirPressureProving))
            return look.Pass($"the safety devices that this boiler must have are recorded");
        if (look.Lacks(visit.Record.Appliance.FlueType, out _))
            return look.Missing($"whether this boiler must prove its draught depends on its flue, whose type is not recorded");

        // Many room-sealed boilers prove the draught by fan speed and have no device of its own for it.
        return visit.IsRoomSealed == true
            ? look.Advisory($"how the boiler proves its draught is not among the safety devices").Advise("Record how the draught is proved and whether it was tested.")
            : look.Missing($"how a fanned flue proves its draught is not recorded", "/safetyDevices");
    }

    private static bool Has(Visit visit, SafetyDeviceKind kind) => visit.SafetyDevices?.Any(device => device.Value.Kind == kind) == true;
}
