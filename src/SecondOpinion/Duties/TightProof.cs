using Records;

namespace SecondOpinion.Duties;

/// <summary>
/// Whether a tightness test after the work proves the joints of the day. What the proof needs is what the page of duties and the page of
/// rules name: stage, day, pressure, let-by, duration, smell and a gauge that can show it. A meter or a volume that nobody wrote down voids
/// nothing; one outside of the standard's scope does.
/// </summary>
internal static class TightProof
{
    private const string List = "/tightnessTests";

    /// <summary>Members that stand in the way; none: proved. Where no test was made after the work: the list.</summary>
    public static IReadOnlyList<string> Lacks(Visit visit)
    {
        var after = (visit.Record.TightnessTests ?? []).Index().Where(one => one.Item.Stage != WorkStage.BeforeWork).Select(one => Lacks(visit, one.Item, $"{List}/{one.Index}").ToList()).ToList();
        return after.Count == 0 ? [List] : after.MinBy(lacks => lacks.Count)!;
    }

    public static bool IsProved(Visit visit) => Lacks(visit).Count == 0;

    /// <summary>What proves that the pipe is tight, asked for one by one.</summary>
    public static IEnumerable<Owed> Asks(Visit visit, DutyKind kind, string why, Seen seen = Seen.Always)
    {
        var lacks = Lacks(visit);
        return lacks.Count == 0 ? [visit.Must(kind, List, true, why)] : lacks.Select(lack => visit.Must(kind, lack, null, why, seen));
    }

    /// <summary>A leak that a test found and none after it took back. What was found before the work counts until it is tested again.</summary>
    public static bool IsLeaking(Visit visit, int place)
    {
        var tests = visit.Record.TightnessTests!;
        if (!Found(visit, tests[place]))
            return false;
        return !tests.Index().Any(again => again.Index != place && again.Item.Stage == WorkStage.AfterWork && (tests[place].Stage != WorkStage.AfterWork || again.Index > place)
            && Covers(again.Item, tests[place]) && !Lacks(visit, again.Item, "").Any());
    }

    /// <summary>Movement that one sees, smell, or pipework that moves by itself; on new pipework any of it, whatever drop is permitted.</summary>
    private static bool Found(Visit visit, TightnessTest test) => Tightness.WhatTheGaugeShows(visit.One, test) == Tightness.Shown.Leak
        || (IsOfNewPipes(visit) && test.Stage != WorkStage.BeforeWork && test.DropMbar > Tightness.Perceptible(test));

    private static bool IsOfNewPipes(Visit visit) => visit.Record.Work?.Kind == WorkKind.Pipework || visit.HasPart(PartKind.Pipework);

    private static bool Covers(TightnessTest again, TightnessTest leaked) => again.AppliancesConnected == true || leaked.AppliancesConnected != true;

    private static IEnumerable<string> Lacks(Visit visit, TightnessTest test, string at)
    {
        if (test.Stage is null)
            yield return $"{at}/stage";
        if (Found(visit, test) || Tightness.WhatTheGaugeShows(visit.One, test) == Tightness.Shown.Void)
            yield return $"{at}/dropMbar";
        else if (test.DropMbar is null)
            yield return $"{at}/dropMbar";
        if (test.GasSmell is null)
            yield return $"{at}/gasSmell";
        if (Tightness.IsLetByTested(visit.One, test) != true)
            yield return $"{at}/letByRiseMbar";
        if (Tightness.IsLongEnough(test) != true)
            yield return $"{at}/durationMinutes";
        if (Tightness.IsAtPressure(visit.One, test) != true)
            yield return $"{at}/testPressureMbar";
        if (Tightness.CanShow(test) != true)
            yield return $"{at}/gaugeResolutionMbar";
        if (Tightness.IsOfThisVisit(visit.One, test) == false)
            yield return $"{at}/testedOn";
        if (Tightness.IsInScope(visit.One, test) == false)
            yield return $"{at}/installationVolumeM3";
    }
}
