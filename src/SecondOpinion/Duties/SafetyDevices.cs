using Records;

namespace SecondOpinion.Duties;

/// <summary>Flame supervision, overheat and air proving proved; all of them at commissioning.</summary>
internal static class SafetyDevices
{
    private const DutyKind Kind = DutyKind.SafetyDevices;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached || visit.IsRemoval || !visit.IsExaminationOwed || visit.IsBesideTheBoiler)
            yield break;
        var wanted = new List<SafetyDeviceKind> { SafetyDeviceKind.FlameSupervision, SafetyDeviceKind.OverheatThermostat };
        if (visit.IsFanned)
            wanted.Add(SafetyDeviceKind.AirPressureProving);
        foreach (var kind in wanted)
            yield return Device(visit, kind);
    }

    private static Owed Device(Visit visit, SafetyDeviceKind kind)
    {
        var why = visit.IsInstallation ? "33(1)(d)" : "26(9)(d)";
        var found = (visit.Record.SafetyDevices ?? []).Index().Where(one => one.Item.Kind == kind).ToList();
        if (found.Count == 0)
            return visit.Must(Kind, "/safetyDevices", null, why, Seen.Running);
        var (place, device) = found.Find(one => one.Item.Tested == true) is { Item: not null } tested ? tested : found[0];
        return visit.Must(Kind, $"/safetyDevices/{place}/tested", device is { Tested: true, Passed: not null } ? true : null, why, Seen.Running);
    }
}
