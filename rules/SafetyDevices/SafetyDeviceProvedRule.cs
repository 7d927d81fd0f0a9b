using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.SafetyDevices;

[Id(RuleIds.SafetyDeviceProved), Topic(Topics.SafetyDevices), Cites("GSIUR-1998", "26(9)(d)"), Cites("GSIUR-1998", "33(1)(d)")]
[Title("Each safety device is made to act and acts")]
[Why("Safety devices sit idle for years while contacts stick and sensors drift, and nothing shows until the day they are needed. Without flame supervision gas can flow unlit, and regulation 26(9) has safe functioning examined.")]
[Serves(Part.SafetyDevices)]
[Expects("/safetyDevices")]
[Coverage(Coverage.Full, "each listed device is judged")]
public sealed class SafetyDeviceProvedRule : ComplianceRule<SafetyDevice>
{
    protected override IEnumerable<Subject<SafetyDevice>>? Subjects(Visit visit) => visit.SafetyDevices;

    protected override Verdict Assess(SafetyDevice device, Visit visit, Look look)
    {
        look.Note(device.Kind);
        if (look.Note(device.Passed) == false)
            return Failed(device, look);
        if (look.Lacks(device.Kind, out var kind) | look.Lacks(device.Tested, out var tested))
            return look.Missing();

        if (tested)
            return look.Lacks(device.Passed, out _) ? look.Missing() : look.Pass($"the {kind} device was made to act and acted");

        // Shutting the gas proves flame failure on any boiler, and with nothing proved the operation of the appliance was not examined:
        // the law lets a reason stand in for pressure and heat input only.
        if (kind == SafetyDeviceKind.FlameSupervision)
            return look.Missing($"the {kind} device was not made to act, and no reason stands in for that", $"{look.Subject}/tested");
        if (!visit.SafetyDevices!.Any(other => other.Value is { Tested: true, Passed: true }))
            return look.Missing($"the {kind} device was not made to act, and no safety device was proved at all", $"{look.Subject}/tested");
        if (visit.Record.JobType == JobType.Commissioning || visit.FittedANewBoiler == true)
            return look.Missing($"the {kind} device was not made to act, and at commissioning no reason stands in for that", $"{look.Subject}/tested");

        return look.Lacks(device.NotPracticableReason, out var reason)
            ? look.Missing($"the {kind} device was not made to act, and no reason is recorded")
            : look.Advisory($"the {kind} device was not made to act, for a stated reason: {reason}").Warn(Cautions.MakerDecides);
    }

    protected override Verdict WhenNone(Visit visit, Look look) => look.Missing($"no safety device is recorded as proved", "/safetyDevices");

    private static Verdict Failed(SafetyDevice device, Look look) => device.Kind is SafetyDeviceKind.FlameSupervision or null
        ? look.Unsafe($"the flame supervision did not act: gas can flow unlit", ExpectedClass.ImmediatelyDangerous)
            .Warn(Cautions.UnlitGas).Advise("Disconnect the boiler with permission until flame supervision is put right and proved.")
        : look.Unsafe($"the {device.Kind} device did not act").Warn(Cautions.CarbonMonoxide)
            .Advise("Turn the boiler off with permission until the device is put right and proved.");
}
