using Findings;
using ServiceRecords;
using static SecondOpinion.Tests.Say;

namespace SecondOpinion.Tests;

/// <summary>Tightness tests: how they were made, and what they show.</summary>
internal static class TightnessOpinions
{
    private const string List = "/tightnessTests";
    private const string Pipework = "/pipework";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("leak-found-before-work", FoundBefore),
        ("let-by-test", one => EachTest(one, (test, at) => PassIf(IsLetByTested(one, test), at))),
        ("pipework-protected", one => [Protected(one)]),
        ("pipework-sound", one => [Sound(one)]),
        ("safe-to-touch", one => EachTest(one, (test, at) => SafeToTouch(one, test, at))),
        ("tightness-edition", one => EachTest(one, (test, at) => Edition(one, test, at))),
        ("tightness-gauge", one => EachTest(one, (test, at) => PassIf(CanShow(test), at))),
        ("tightness-minutes", one => EachTest(one, (test, at) => PassIf(IsLongEnough(test), at))),
        ("tightness-pressure", one => EachTest(one, (test, at) => Pressure(one, test, at))),
        ("tightness-result", one => EachTest(one, (test, at) => Result(one, test, at))),
        ("tightness-scope", one => EachTest(one, Scope)),
        ("tightness-test-date", one => EachTest(one, (test, at) => PassIf(IsOfThisVisit(one, test), at))),
        ("tightness-tested-after-work", one => [TestedAfterWork(one)]),
    ];

    /// <summary>Does the test show a tight installation? False: it shows a leak or is void; null: the record leaves it open.</summary>
    public static bool? Shows(Case one, TightnessTest test) => Result(one, test, "").Outcome switch
    {
        Outcome.Pass or Outcome.Advisory => true,
        Outcome.Unsafe => false,
        _ => Counts(one, test) == false ? false : null,
    };

    private static bool? GasJointWasDisturbed(Case one) => one.Record.DisturbedJoints?.Any(JointsOpinions.CarriesGas);

    private static IEnumerable<Opinion> EachTest(Case one, Func<TightnessTest, string, Opinion> say)
    {
        if (one.Record.TightnessTests is not { } tests)
            return GasJointWasDisturbed(one) == false ? [NotApplicable()] : [Missing(List)];
        var after = tests.Select((test, index) => (test, at: $"{List}/{index}")).Where(pair => pair.test.Stage != WorkStage.BeforeWork).ToList();
        return after.Count == 0 ? [NotApplicable()] : after.Select(pair => pair.test.Stage is null ? Missing(pair.at) : say(pair.test, pair.at));
    }

    /// <summary>The emergency control valve holds: no rise in a minute at low pressure. A rise voids the test.</summary>
    private static bool? IsLetByTested(Case one, TightnessTest test) => AllOf(
        test.LetByRiseMbar is { } rise ? rise <= 0 : null,
        test.LetByMinutes is { } minutes ? minutes >= 1 : null,
        test.LetByPressureMbar is { } pressure ? one.Record.Appliance.Fuel != Fuel.NaturalGas || pressure is >= 7 and <= 10 : null);

    private static bool? IsLongEnough(TightnessTest test) => AllOf(
        test.StabilisationMinutes is { } settling ? settling >= 1 : null, test.DurationMinutes is { } minutes ? minutes >= 2 : null);

    private static bool? IsInScope(TightnessTest test) => AllOf(
        test.InstallationVolumeM3 is { } volume ? volume <= 0.035m : null,
        test.LargestPipeMm is { } pipe ? pipe <= 35 : null,
        test.SupplyPressureBar is { } supply ? supply <= 2 : null);

    private static bool? CanShow(TightnessTest test) =>
        test is { Gauge: { } gauge, GaugeResolutionMbar: { } step } ? gauge == PressureGaugeKind.Water || step <= 0.2m : null;

    private static bool? IsOfThisVisit(Case one, TightnessTest test) =>
        test.Stage is null ? null : !(test.TestedOn < (one.Record.StartedAt?.Date ?? one.AsOf));

    private static bool? AllOf(params ReadOnlySpan<bool?> parts) => parts.Contains(false) ? false : parts.Contains(null) ? null : true;

    private static Opinion PassIf(bool? holds, string at) => holds == true ? Pass(at) : Missing(at);

    private static Opinion Protected(Case one)
    {
        var pipework = one.Record.Pipework;
        if (one.Record.JobType is JobType.LandlordCheck or JobType.Repair)
            return NotApplicable();
        return Facts.Gravest(Yes(pipework?.Sleeved, Advisory(Pipework)), Yes(pipework?.Supported, Advisory(Pipework)));
    }

    private static Opinion Sound(Case one)
    {
        var pipework = one.Record.Pipework;
        if (pipework is { VisualOk: false } or { DamageOrCorrosion: true })
            return Advisory(Pipework);
        if (pipework is { VisualOk: true, DamageOrCorrosion: false })
            return Pass(Pipework);
        return one.Record.JobType is JobType.LandlordCheck or JobType.Repair ? Advisory(Pipework) : Missing(Pipework);
    }

    private static Opinion SafeToTouch(Case one, TightnessTest test, string at) =>
        Tightness.EditionOf(one, test) == 3 ? NotApplicable(at) : Yes(test.SafeToTouchChecked, Advisory(at));

    private static Opinion Edition(Case one, TightnessTest test, string at) => test.Edition switch
    {
        "3" => Tightness.DayOf(one, test) < Tightness.Edition3Withdrawn ? Pass(at) : Advisory(at),
        "4" => Tightness.DayOf(one, test) >= Tightness.Edition4Published ? Pass(at) : Advisory(at),
        _ => Missing(at),
    };

    private static Opinion Pressure(Case one, TightnessTest test, string at) =>
        IsAtPressure(one, test) == true ? IsLowPressure(one, test) ? Advisory(at) : Pass(at) : Missing(at);

    private static bool? IsAtPressure(Case one, TightnessTest test) => (one.Record.Appliance.Fuel, test.TestPressureMbar) switch
    {
        (_, null) => null,
        (Fuel.NaturalGas, >= 20 and <= 21) or (Fuel.Propane, >= 36 and <= 38) or (Fuel.Butane, >= 27 and <= 29) => true,
        _ when !IsLowPressure(one, test) => false,
        _ => Tightness.EditionOf(one, test) switch
        {
            3 => false,
            4 when one.Record.GasSupply?.MeterOperatingMbar is not null => true,
            _ => null,
        },
    };

    /// <summary>A pressure that edition 4 allows for natural gas where 20 mbar cannot be had and the operating pressure was looked at.</summary>
    private static bool IsLowPressure(Case one, TightnessTest test) =>
        one.Record.Appliance.Fuel == Fuel.NaturalGas && test.TestPressureMbar is >= 18 and < 20;

    private static Opinion Scope(TightnessTest test, string at) =>
        IsInScope(test) == true && test.InstallationVolumeFrom is null ? Advisory(at) : PassIf(IsInScope(test), at);

    private static Opinion TestedAfterWork(Case one) => GasJointWasDisturbed(one) switch
    {
        null => Missing(),
        false => NotApplicable(),
        true => one.Record.TightnessTests?.Any(test => test.Stage == WorkStage.AfterWork) == true ? Pass(List) : Missing(List),
    };

    private static Opinion Result(Case one, TightnessTest test, string at)
    {
        var none = Tightness.Perceptible(test);
        if (test.GasSmell == true || Math.Abs(test.PipeworkOnlyMovementMbar ?? 0) > none)
            return Dangerous(at);
        if (test.GasSmell is null || test.DropMbar is not { } drop || drop < -none)
            return Missing(at);
        var shown = drop <= none ? Pass(at) : Moved(one, test, drop, at);
        return shown.Outcome != Outcome.Unsafe && Counts(one, test) != true ? Missing(at) : shown;
    }

    private static bool? Counts(Case one, TightnessTest test) => AllOf(
        IsLetByTested(one, test), IsLongEnough(test), IsAtPressure(one, test), IsInScope(test), CanShow(test), IsOfThisVisit(one, test));

    private static Opinion Moved(Case one, TightnessTest test, decimal drop, string at)
    {
        if (test.AppliancesConnected is null)
            return Missing(at);
        if (test.AppliancesConnected == false)
            return Dangerous(at);

        var table = Table3(one, test);
        if (one.Record.Appliance.Fuel == Fuel.NaturalGas && Tightness.EditionOf(one, test) == 3)
            return table is null ? Missing(at) : drop <= table ? Pass(at) : Dangerous(at);
        if (test.IsolationImpracticable == true)
            return Dangerous(at);
        if (test.PermittedDropMbar is not { } permitted || test.PermittedDropSource is null)
            return Missing(at);
        if (drop > permitted)
            return Dangerous(at);
        var isBeyondTable = one.Record.Appliance.Fuel == Fuel.NaturalGas && !(permitted <= table);
        return isBeyondTable || test.PipeworkOnlyMovementMbar is null ? Missing(at) : Advisory(at);
    }

    /// <summary>The table of edition 3, natural gas; null where it has no line.</summary>
    private static decimal? Table3(Case one, TightnessTest test) => (one.Record.GasSupply?.MeterKind, test.LargestPipeMm) switch
    {
        _ when one.Record.Appliance.Fuel != Fuel.NaturalGas => null,
        (MeterKind.None or MeterKind.UltrasonicE6, <= 28) => 8,
        (MeterKind.None or MeterKind.UltrasonicE6, <= 35) => 4,
        (MeterKind.DiaphragmU6, <= 28) => 4,
        (MeterKind.DiaphragmU6, <= 35) => 2.5m,
        (MeterKind.DiaphragmU16, <= 35) => 1,
        _ => null,
    };

    private static IEnumerable<Opinion> FoundBefore(Case one)
    {
        if (one.Record.TightnessTests is not { } tests)
            return [GasJointWasDisturbed(one) switch { false => NotApplicable(), true => Missing(List), null => Missing() }];
        var before = tests.Select((test, index) => (test, at: $"{List}/{index}")).Where(pair => pair.test.Stage == WorkStage.BeforeWork).ToList();
        var isTightNow = tests.Any(test => test.Stage == WorkStage.AfterWork && Shows(one, test) == true);
        return before.Count == 0 ? [NotApplicable()] : before.Select(pair => FoundBefore(one, pair.test, isTightNow, pair.at));
    }

    private static Opinion FoundBefore(Case one, TightnessTest test, bool isTightNow, string at)
    {
        if (isTightNow)
            return Pass(at);
        var none = Tightness.Perceptible(test);
        if (test.GasSmell == true || Math.Abs(test.PipeworkOnlyMovementMbar ?? 0) > none)
            return Dangerous(at);
        if (test.DropMbar is not { } drop || test.GasSmell is null)
            return Missing(at);
        return drop <= none ? Pass(at) : Moved(one, test, drop, at);
    }
}
