using Records;

namespace Visits;

/// <content>What the visit came to.</content>
public sealed partial class Visit
{
    /// <summary>
    /// Nobody got to the boiler, or nobody was let to it. A record that says so beside a reading, a part, a joint or a test says two things, and
    /// then it is a visit as any other.
    /// </summary>
    public bool HadNoAccess => _hadNoAccess ??=
        Record.Work?.Result is WorkResult.NoAccess or WorkResult.NoAccessToAppliance or WorkResult.Refused && TraceOfWork is null;

    /// <summary>What is recorded that nobody has who did not get to the boiler, the first of it in words; null where there is nothing.</summary>
    public string? TraceOfWork => Record switch
    {
        { Combustion.Readings.Count: > 0 } => "a flue reading",
        { PartsFitted.Count: > 0 } => "a fitted part",
        { DisturbedJoints.Count: > 0 } => "a disturbed joint",
        { TightnessTests.Count: > 0 } => "a tightness test",
        { GasSupply.ApplianceInletMbar: not null } => "a pressure at the appliance",
        { GasSupply.BurnerMbar: not null } => "a burner pressure",
        { GasSupply.Rate: not null } => "a gas rate",
        _ => null,
    };

    /// <summary>
    /// The boiler was left off for a reason that the record gives, so that what only a running one shows is put off: it was left off for want of
    /// gas or parts, for a danger, or because somebody wished it so; or it stays on against advice, and nobody may fire it.
    /// </summary>
    public bool IsRunningPutOff => _isRunningPutOff ??= RecordedDefects.Any(defect => defect.IsRefusalDealtWith)
        || (IsLeftOutOfUse && (Appliance.LeftOffBecause is not null || Record.Work?.Result is WorkResult.GasOff or WorkResult.AwaitingParts or WorkResult.StoppedForDanger || IsMadeSafe));

    private bool? _isRunningPutOff;

    private bool? _hadNoAccess;
}
