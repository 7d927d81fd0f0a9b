using System.Collections.Immutable;

namespace Findings;

/// <summary>The subject areas in the order in which an answer lists them.</summary>
public static class Topics
{
#pragma warning disable CS1591 // the names say it
    public const string AmbientAir = "ambientAir";
    public const string Combustion = "combustion";
    public const string Tightness = "tightness";
    public const string Joints = "joints";
    public const string Flue = "flue";
    public const string Ventilation = "ventilation";
    public const string GasPressure = "gasPressure";
    public const string HeatInput = "heatInput";
    public const string SafetyDevices = "safetyDevices";
    public const string HeatExchanger = "heatExchanger";
    public const string Burner = "burner";
    public const string Water = "water";
    public const string Condensate = "condensate";
    public const string Electrical = "electrical";
    public const string CoAlarm = "coAlarm";
    public const string UnsafeSituation = "unsafeSituation";
    public const string Competence = "competence";
    public const string Instruments = "instruments";
    public const string Interval = "interval";
    public const string Paperwork = "paperwork";
    public const string Plausibility = "plausibility";
#pragma warning restore CS1591

    /// <summary>All of them, in that order.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        AmbientAir, Combustion, Tightness, Joints, Flue, Ventilation, GasPressure, HeatInput, SafetyDevices, HeatExchanger,
        Burner, Water, Condensate, Electrical, CoAlarm, UnsafeSituation, Competence, Instruments, Interval, Paperwork, Plausibility,
    ];
}
