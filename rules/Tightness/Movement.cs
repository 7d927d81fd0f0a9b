using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

/// <summary>Movements of the gauge.</summary>
internal static class Movement
{
    /// <summary>The movement that counts as none. A gauge of unknown kind is judged as an electronic one, which is stricter.</summary>
    public static Limit PerceptibleOn(TightnessTest test, Visit visit) =>
        visit.Limits[test.Gauge == PressureGaugeKind.Water ? LimitIds.PerceptibleMovementWater : LimitIds.PerceptibleMovementElectronic];

    /// <summary>The pipework alone moved: a leak under every edition.</summary>
    public static bool OfThePipeworkAlone(TightnessTest test, Visit visit) =>
        test.PipeworkOnlyMovementMbar is { } movement && !PerceptibleOn(test, visit).Allows(Math.Abs(movement));

    /// <summary>Share of the test pressure, %; beyond ten times it no figure of a record means anything, and the division might not end well.</summary>
    public static decimal ShareOf(decimal pressure, decimal testPressure) => pressure >= 10 * testPressure ? 1000 : pressure / testPressure * 100;

    /// <summary>What to do about escaping gas.</summary>
    public static Verdict IsALeak(this Verdict verdict) => verdict.Warn(Cautions.EscapingGas)
        .Advise("Shut the gas off and make safe. Trace the leak, repair it and test again; where it cannot be stopped, call the gas emergency provider (LPG: the supplier).");
}
