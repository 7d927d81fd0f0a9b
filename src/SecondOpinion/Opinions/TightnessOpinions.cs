using System.Globalization;
using Records;
using static SecondOpinion.Say;

namespace SecondOpinion.Opinions;

/// <summary>Tightness tests: how they were made, and what they show.</summary>
internal static class TightnessOpinions
{
    private const string List = "/tightnessTests";
    private const string Pipework = "/pipework";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("leak-found-before-work", FoundBefore),
        ("let-by-test", one => EachTest(one, (test, at) => LetBy(one, test, at))),
        ("pipework-protected", one => [Protected(one)]),
        ("pipework-sound", one => [Sound(one)]),
        ("safe-to-touch", one => EachTest(one, (test, at) => SafeToTouch(one, test, at))),
        ("tightness-edition", one => EachTest(one, (test, at) => Edition(one, test, at))),
        ("tightness-gauge", one => EachTest(one, (test, at) => PassIf(Tightness.CanShow(test), at))),
        ("tightness-minutes", one => EachTest(one, (test, at) => PassIf(Tightness.IsLongEnough(test), at))),
        ("tightness-pressure", one => EachTest(one, (test, at) => Pressure(one, test, at))),
        ("tightness-result", one => EachTest(one, (test, at) => Result(one, test, at))),
        ("tightness-scope", one => EachTest(one, (test, at) => Scope(one, test, at))),
        ("tightness-test-date", one => EachTest(one, (test, at) => PassIf(Tightness.IsOfThisVisit(one, test), at))),
        ("tightness-tested-after-work", one => [TestedAfterWork(one)]),
    ];

    private static bool? GasJointWasDisturbed(Case one) => one.Record.DisturbedJoints?.Any(JointsOpinions.CarriesGas);

    private static IEnumerable<Opinion> EachTest(Case one, Func<TightnessTest, string, Opinion> say)
    {
        if (one.Record.TightnessTests is not { } tests)
            return GasJointWasDisturbed(one) == false ? [NotApplicable()] : [Missing(List)];
        var after = tests.Select((test, index) => (test, at: $"{List}/{index}")).Where(pair => pair.test.Stage != WorkStage.BeforeWork).ToList();
        return after.Count == 0 ? [NotApplicable()] : after.Select(pair => pair.test.Stage is null ? Missing(pair.at) : say(pair.test, pair.at));
    }

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
        Tightness.IsAtPressure(one, test) == true ? Tightness.IsLowPressure(one, test) ? Advisory(at) : Pass(at) : Missing(at);

    private static Opinion LetBy(Case one, TightnessTest test, string at) =>
        Tightness.IsLetByTested(one, test) == true && Tightness.IsLetByHigh(one, test) ? Advisory(at) : PassIf(Tightness.IsLetByTested(one, test), at);

    private static Opinion Scope(Case one, TightnessTest test, string at) =>
        Tightness.IsInScope(one, test) == true && test.InstallationVolumeFrom is null ? Advisory(at) : PassIf(Tightness.IsInScope(one, test), at);

    /// <summary>A boiler that is new, or may be, has a gas joint that was made today, whatever joints are listed.</summary>
    private static Opinion TestedAfterWork(Case one) => (GasJointWasDisturbed(one), one.IsNewBoiler()) switch
    {
        (null, false) => Missing(),
        (false, false) => NotApplicable(),
        _ => one.Record.TightnessTests?.Any(test => test.Stage == WorkStage.AfterWork) == true ? Pass(List) : Missing(List),
    };

    private static Opinion Result(Case one, TightnessTest test, string at) => Tightness.WhatItProves(one, test) switch
    {
        Tightness.Shown.Tight => Tight(one, test, at),
        Tightness.Shown.WithinStatedDrop => Advisory(at),
        // Found after the work, put right and tested again: what is left to say is that it happened.
        _ when one.IsWrittenAsRectified(at, Findings.Topics.Tightness) && Tightness.IsTestedAgain(one, PlaceOf(at)) => Advisory(at),
        Tightness.Shown.Leak => Dangerous(at),
        _ => Missing(at),
    };

    private static int PlaceOf(string at) => int.Parse(at[(List.Length + 1)..], CultureInfo.InvariantCulture);

    private static Opinion Tight(Case one, TightnessTest test, string at) =>
        Pass(at).IfSure(Sureness.OfGauge(one, "dropMbar", test.DropMbar), test.DropMbar!.Value, null, Tightness.LargestTightDrop(one, test));

    private static IEnumerable<Opinion> FoundBefore(Case one)
    {
        if (one.Record.TightnessTests is not { } tests)
            return [GasJointWasDisturbed(one) switch { false => NotApplicable(), true => Missing(List), null => Missing() }];
        var before = tests.Select((test, index) => (test, at: $"{List}/{index}")).Where(pair => pair.test.Stage != WorkStage.AfterWork).ToList();
        return before.Count == 0 ? [NotApplicable()] : before.Select(pair => FoundBefore(one, pair.test, pair.at));
    }

    /// <summary>A test that does not say when it was made may be one of before.</summary>
    private static Opinion FoundBefore(Case one, TightnessTest test, string at) =>
        Tightness.IsTakenBack(one, test) ? Pass(at) : Tightness.WhatTheGaugeShows(one, test) switch
        {
            Tightness.Shown.Tight => Tight(one, test, at),
            Tightness.Shown.WithinStatedDrop => Advisory(at),
            Tightness.Shown.Leak => Dangerous(at),
            _ => Missing(at),
        };
}
