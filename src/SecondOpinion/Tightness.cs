using Records;

namespace SecondOpinion;

/// <summary>What a tightness test shows.</summary>
internal static class Tightness
{
    public static readonly DateOnly Edition4Published = new(2026, 3, 25);
    public static readonly DateOnly Edition3Withdrawn = new(2026, 10, 1);

    /// <summary>"At once" after the work, taken widely: in the last week of the visit.</summary>
    private const int DaysAtOnce = 7;

    public static DateOnly DayOf(Case one, TightnessTest test) => test.TestedOn ?? one.AsOf;

    /// <summary>The edition that governs a test: the only one in force on its day, or the recorded one where either may serve.</summary>
    public static int? EditionOf(Case one, TightnessTest test) => DayOf(one, test) switch
    {
        var day when day < Edition4Published => 3,
        var day when day >= Edition3Withdrawn => 4,
        _ => test.Edition switch { "3" => 3, "4" => 4, _ => null },
    };

    /// <summary>Movement that counts as none: a coarse display does not widen it.</summary>
    public static decimal Perceptible(TightnessTest test) => test.Gauge == PressureGaugeKind.Water ? 0.25m : 0.2m;

    /// <summary>What a test says of the pipes.</summary>
    public enum Shown
    {
        /// <summary>No leak.</summary>
        Tight,

        /// <summary>A drop that the engineer's figure permits.</summary>
        WithinStatedDrop,

        /// <summary>A leak.</summary>
        Leak,

        /// <summary>Nothing, and what the record says will not change that.</summary>
        Void,

        /// <summary>Nothing yet: something is absent.</summary>
        Open,
    }

    /// <summary>Did a test after the work show no leak? False: none did; null: one may have.</summary>
    public static bool? IsProvedTight(Case one) => AnyOf(one, (_, shows) => shows);

    /// <summary>The same of tests that saw the joint before the gas valve: the appliance on the pipe, and the way to it open.</summary>
    public static bool? IsInletProvedTight(Case one) => AnyOf(one, (test, shows) => AllOf(shows, test.AppliancesConnected, test.ApplianceValvesOpen));

    /// <summary>The same of tests up to the nearest valve, the appliance off the pipe: they saw a joint that was capped.</summary>
    public static bool? IsPipeProvedTight(Case one) => AnyOf(one, (test, shows) => AllOf(shows, !test.AppliancesConnected));

    /// <summary>Did a test after the work, of no smaller part of the installation, show no leak?</summary>
    public static bool IsTakenBack(Case one, TightnessTest found) => AnyOf(one, (again, shows) => Covers(again, found) ? shows : false) == true;

    private static bool Covers(TightnessTest again, TightnessTest leaked) => (again.AppliancesConnected == true || leaked.AppliancesConnected == false)
        && (again.ApplianceValvesOpen == true || leaked.ApplianceValvesOpen != true);

    private static bool? AnyOf(Case one, Func<TightnessTest, bool?, bool?> proves)
    {
        var proofs = (one.Record.TightnessTests ?? []).Where(test => test.Stage != WorkStage.BeforeWork)
            .Select(test => proves(test, WhatItProves(one, test) switch { Shown.Tight or Shown.WithinStatedDrop => true, Shown.Open => null, _ => false }))
            .ToList();
        return proofs.Contains(true) ? true : proofs.Contains(null) ? null : false;
    }

    /// <summary>
    /// After a test that leaked: did another one after the work, of a later day or further down the list, with at least the same part of
    /// the installation in it, show no leak?
    /// </summary>
    public static bool IsTestedAgain(Case one, int place)
    {
        var tests = one.Record.TightnessTests!;
        var leaked = tests[place];
        for (var i = 0; i < tests.Count; i++)
        {
            var again = tests[i];
            var days = DayOf(one, again).DayNumber - DayOf(one, leaked).DayNumber;
            if (again.Stage == WorkStage.AfterWork && (days > 0 || (days == 0 && i > place))
                && Covers(again, leaked)
                && WhatItProves(one, again) is Shown.Tight or Shown.WithinStatedDrop)
                return true;
        }

        return false;
    }

    /// <summary>A test showed a leak, and the installation was left like that.</summary>
    public static bool IsLeftLeaking(Case one) => (one.Record.TightnessTests ?? []).Index().Any(test => test.Item.Stage switch
    {
        WorkStage.AfterWork => WhatItProves(one, test.Item) == Shown.Leak && !IsTestedAgain(one, test.Index),
        _ => WhatTheGaugeShows(one, test.Item) == Shown.Leak && !IsTakenBack(one, test.Item),
    });

    /// <summary>What the gauge shows, and only if the test was made as it must be.</summary>
    public static Shown WhatItProves(Case one, TightnessTest test)
    {
        if (test.Stage is null)
            return Shown.Open;
        var shown = WhatTheGaugeShows(one, test);
        if (shown is Shown.Leak or Shown.Void)
            return shown;
        return AllOf(IsLetByTested(one, test), IsLongEnough(test), IsAtPressure(one, test), IsInScope(one, test), CanShow(test), IsOfThisVisit(one, test)) switch
        {
            true => shown,
            false => Shown.Void,
            null => Shown.Open,
        };
    }

    /// <summary>What smell and gauge say, however the test was made.</summary>
    public static Shown WhatTheGaugeShows(Case one, TightnessTest test)
    {
        var none = Perceptible(test);
        if (test.GasSmell == true || Math.Abs(test.PipeworkOnlyMovementMbar ?? 0) > none)
            return Shown.Leak;
        if (test.GasSmell is null || test.DropMbar is not { } drop)
            return Shown.Open;
        if (drop < -none)
            return Shown.Void;
        return drop <= none ? Shown.Tight : Moved(one, test, drop);
    }

    private static Shown Moved(Case one, TightnessTest test, decimal drop)
    {
        if (test.AppliancesConnected is not { } connected)
            return Shown.Open;
        if (!connected)
            return Shown.Leak;
        if (one.Record.Appliance.Fuel is null)
            return Shown.Open;
        if (EditionOf(one, test) is not { } edition)
            return test.Edition is null ? Shown.Open : Shown.Void;

        var isNaturalGas = one.Record.Appliance.Fuel == Fuel.NaturalGas;
        if (isNaturalGas && edition == 3)
            return WithTable(one, test, table => drop > table ? Shown.Leak : DeniesItsMeter(one) ? Shown.Void : Shown.Tight);
        if (test is { IsolationImpracticable: true, PipeworkOnlyMovementMbar: null })
            return Shown.Leak;
        if (test.PermittedDropMbar is not { } permitted || test.PermittedDropSource is null)
            return Shown.Open;
        if (drop > permitted)
            return Shown.Leak;
        // More than half of the pressure is no permission, whoever signs it.
        if (permitted * 2 > test.TestPressureMbar && test.TestPressureMbar > 0)
            return Shown.Void;
        var retested = test.PipeworkOnlyMovementMbar is null ? Shown.Open : Shown.WithinStatedDrop;
        return isNaturalGas ? WithTable(one, test, table => permitted > table || DeniesItsMeter(one) ? Shown.Void : retested) : retested;
    }

    /// <summary>Of a test that shows no leak: the drop up to which it would.</summary>
    public static decimal LargestTightDrop(Case one, TightnessTest test) =>
        test.DropMbar <= Perceptible(test) ? Perceptible(test) : Table(one, test)!.Value;

    private static Shown WithTable(Case one, TightnessTest test, Func<decimal, Shown> judge) =>
        Table(one, test) is { } table ? judge(table)
        : one.Record.GasSupply?.MeterKind is null || test.LargestPipeMm is null ? Shown.Open
        : Shown.Void;

    /// <summary>"No meter" beside what was read from one.</summary>
    private static bool DeniesItsMeter(Case one) => one.Record.GasSupply is { MeterKind: MeterKind.None } supply
        && (supply.Rate is not null || (supply.MeterOperatingMbar ?? supply.MeterStandingMbar) is not null);

    /// <summary>The table of edition 3 for natural gas; null where it has no line or the record does not say which.</summary>
    private static decimal? Table(Case one, TightnessTest test) => (one.Record.GasSupply?.MeterKind, test.LargestPipeMm) switch
    {
        (null, _) or (_, null) => null,
        (MeterKind.None or MeterKind.UltrasonicE6, <= 28) => 8,
        (MeterKind.None or MeterKind.UltrasonicE6, _) => 4,
        (MeterKind.DiaphragmU6, <= 28) => 4,
        (MeterKind.DiaphragmU6, _) => 2.5m,
        (MeterKind.DiaphragmU16, _) => 1,
        _ => null,
    };

    /// <summary>
    /// The emergency control valve holds: no rise in a minute at low pressure, and no fall that one would see. A rise, or such a fall, voids
    /// the test. For liquefied gas low is what leaves room below the pressure of the test for a movement that one would see.
    /// </summary>
    public static bool? IsLetByTested(Case one, TightnessTest test) => AllOf(
        test.LetByRiseMbar is { } rise ? rise <= 0 && rise >= -Perceptible(test) : null,
        test.LetByMinutes is { } minutes ? minutes >= 1 : null,
        test.LetByPressureMbar is not { } pressure || one.Record.Appliance.Fuel is null ? null
        : one.Record.Appliance.Fuel == Fuel.NaturalGas ? pressure is >= 7 and <= 10
        : pressure > 0 && !(pressure + Perceptible(test) > test.TestPressureMbar));

    /// <summary>Of liquefied gas: closer to the pressure of the test than to none, where a weak valve shows late.</summary>
    public static bool IsLetByHigh(Case one, TightnessTest test) =>
        one.Record.Appliance.Fuel is Fuel.Propane or Fuel.Butane && test.TestPressureMbar > 0 && test.LetByPressureMbar * 2 > test.TestPressureMbar;

    public static bool? IsLongEnough(TightnessTest test) => AllOf(
        test.StabilisationMinutes is { } settling ? settling >= 1 : null, test.DurationMinutes is { } minutes ? minutes >= 2 : null);

    /// <summary>A small installation behind a meter that the standard names, and a volume that can be.</summary>
    public static bool? IsInScope(Case one, TightnessTest test) => AllOf(
        test.InstallationVolumeM3 is { } volume ? volume <= 0.035m && volume > 0 && volume >= MeterVolume(one) : null,
        one.Record.GasSupply?.MeterKind is { } meter ? meter != MeterKind.Other : GoesByMeter(one, test) ? null : true,
        test.LargestPipeMm is { } pipe ? pipe <= 35 : null,
        test.SupplyPressureBar is { } supply ? supply <= 2 : null);

    /// <summary>Only edition 3 goes by the meter, and only a gauge that moved needs its table. An edition that nobody knows may be that.</summary>
    private static bool GoesByMeter(Case one, TightnessTest test) =>
        test.DropMbar is not (null or 0) && EditionOf(one, test) is null or 3;

    private static decimal MeterVolume(Case one) => one.Record.GasSupply?.MeterKind switch
    {
        MeterKind.DiaphragmU6 => 0.008m,
        MeterKind.DiaphragmU16 => 0.025m,
        MeterKind.UltrasonicE6 => 0.0024m,
        _ => 0,
    };

    /// <summary>The eye tells a quarter of a mark of a water gauge; a display tells its step.</summary>
    public static bool? CanShow(TightnessTest test) => test is { Gauge: { } gauge, GaugeResolutionMbar: { } step }
        ? (gauge == PressureGaugeKind.Water ? step / 4 : step) <= Perceptible(test)
        : null;

    public static bool? IsOfThisVisit(Case one, TightnessTest test) =>
        test.Stage is null ? null : !(test.TestedOn < (one.Record.StartedAt?.Date ?? one.AsOf) || one.AsOf.DayNumber - test.TestedOn?.DayNumber > DaysAtOnce);

    private static bool? AllOf(params ReadOnlySpan<bool?> parts) => parts.Contains(false) ? false : parts.Contains(null) ? null : true;

    public static bool? IsAtPressure(Case one, TightnessTest test) => (one.Record.Appliance.Fuel, test.TestPressureMbar) switch
    {
        (null, _) or (_, null) => null,
        (Fuel.NaturalGas, >= 20 and <= 21) or (Fuel.Propane, >= 36 and <= 38) or (Fuel.Butane, >= 27 and <= 29) => true,
        _ when !IsLowPressure(one, test) => false,
        _ => EditionOf(one, test) switch
        {
            3 => false,
            4 when one.Record.GasSupply?.MeterOperatingMbar is not null => true,
            // Named, and neither edition that may serve: nothing allows it.
            null when test.Edition is not null => false,
            _ => null,
        },
    };

    /// <summary>A pressure that edition 4 allows for natural gas where 20 mbar cannot be had and the operating pressure was looked at.</summary>
    public static bool IsLowPressure(Case one, TightnessTest test) =>
        one.Record.Appliance.Fuel == Fuel.NaturalGas && test.TestPressureMbar is >= 18 and < 20;
}
