using Records;
using Records.Values;

namespace ComplianceApi.Api.Questions;

/// <summary>A visit of some kind before anything is recorded: each list holds the elements that a visit usually has, still blank.</summary>
internal static class TypicalVisit
{
    public static ServiceRecord Of(JobType jobType, string jurisdiction, Fuel fuel, FlueType flueType, DateTimeOffset now) => new()
    {
        RecordId = "questions",
        JobType = jobType,
        Jurisdiction = jurisdiction,
        FinishedAt = Timestamp.Parse(now.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", System.Globalization.CultureInfo.InvariantCulture)),
        Appliance = new Appliance { Fuel = fuel, FlueType = flueType },
        Instruments = [new Instrument { Kind = InstrumentKind.FlueGasAnalyser }],
        Combustion = new Combustion { Readings = [Reading(FiringRate.Maximum), Reading(FiringRate.Minimum)] },
        TightnessTests = [new TightnessTest { Stage = WorkStage.AfterWork }],
        DisturbedJoints = [Joint(JointPlace.GasValveInlet), Joint(JointPlace.GasValveOutlet), Joint(JointPlace.TopPlate)],
        SafetyDevices = [Device(SafetyDeviceKind.FlameSupervision), Device(SafetyDeviceKind.OverheatThermostat)],
    };

    private static CombustionReading Reading(FiringRate rate) => new() { Rate = rate, Stage = WorkStage.AfterWork };

    private static DisturbedJoint Joint(JointPlace place) => new() { Place = place };

    private static SafetyDevice Device(SafetyDeviceKind kind) => new() { Kind = kind };
}
