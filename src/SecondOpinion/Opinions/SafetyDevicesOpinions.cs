using Records;
using static SecondOpinion.Say;

namespace SecondOpinion.Opinions;

/// <summary>Devices that must stop the boiler.</summary>
internal static class SafetyDevicesOpinions
{
    private const string List = "/safetyDevices";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("safety-device-proved", Proved),
        ("safety-devices-listed", one => [Listed(one)]),
    ];

    private static IEnumerable<Opinion> Proved(Case one) =>
        one.Record.SafetyDevices is [] ? [Missing()] : Each(List, one.Record.SafetyDevices, (device, at) => Proved(one, device, at));

    private static Opinion Proved(Case one, SafetyDevice device, string at) => device switch
    {
        // Without flame supervision gas can flow unlit, and an unnamed device may be that.
        { Passed: false, Kind: null or SafetyDeviceKind.FlameSupervision } => Dangerous(at),
        { Passed: false } => AtRisk(at),
        { Kind: null } => Missing(at),
        { Tested: true, Passed: true } => Pass(at),
        // Gas can be shut off everywhere to see the flame fail; an examination of which no part was made is none; and regulation 33(1)(d)
        // knows no "as far as practicable".
        { Tested: false, NotPracticableReason: not null, Kind: not SafetyDeviceKind.FlameSupervision } when IsAnyProved(one) && !IsPutIn(one) => Advisory(at),
        _ => Missing(at),
    };

    private static bool IsPutIn(Case one) => one.Record.JobType == JobType.Commissioning || one.IsNewBoiler() == true;

    private static bool IsAnyProved(Case one) => one.Record.SafetyDevices!.Any(device => device.Passed == true && device.Tested == true);

    private static Opinion Listed(Case one)
    {
        if (one.Record.SafetyDevices is not { } devices)
            return Missing(List);
        if (!Has(SafetyDeviceKind.FlameSupervision) || !Has(SafetyDeviceKind.OverheatThermostat))
            return Missing(List);
        return one.Record.Appliance.FlueType switch
        {
            FlueType.RoomSealedNatural or FlueType.OpenFlued => Pass(List),
            _ when Has(SafetyDeviceKind.AirPressureProving) => Pass(List),
            FlueType.RoomSealedFanned => Advisory(List),
            _ => Missing(List),
        };

        bool Has(SafetyDeviceKind kind) => devices.Any(device => device.Kind == kind);
    }
}
