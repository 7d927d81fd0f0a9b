using Findings;
using Kernel;
using Visits;

namespace Rules.AmbientAir;

/// <summary>What carbon monoxide in the room air says.</summary>
internal static class RoomAir
{
    /// <summary>One of the three sweeps is at the level at which a cause is looked for, or above. Null while one that is absent could be.</summary>
    public static bool? CoIsRaised(this Visit visit)
    {
        var limit = visit.Limits[LimitIds.AmbientCo];
        var room = visit.Record.AmbientCo;
        decimal?[] sweeps = [room?.BeforePpm, room?.RunningPeakPpm, room?.AfterPpm];
        return sweeps.Any(ppm => ppm is { } known && !limit.Allows(known)) ? true : sweeps.Contains(null) ? null : false;
    }

    /// <summary>
    /// The class to expect of a fault that can let products out: immediately dangerous where the record shows them in the room.
    /// </summary>
    public static ExpectedClass ClassOfEscapingProducts(this Look look, Visit visit)
    {
        look.NoteForClass(visit.Record.AmbientCo?.RunningPeakPpm);
        look.NoteForClass(visit.Record.AmbientCo?.AfterPpm);
        return visit.CoIsRaised() == true || look.NoteForClass(visit.Record.Flue?.SpillageTestPassed) == false
            ? ExpectedClass.ImmediatelyDangerous
            : ExpectedClass.AtRisk;
    }

    /// <summary>Judges a sweep made after the boiler was lit, when it is raised; null when it is not.</summary>
    public static Verdict? RaisedWithTheBoiler(this Look look, Visit visit, string sweep, decimal ppm, Doubt? doubt)
    {
        var limit = visit.Limits[LimitIds.AmbientCo];
        if (limit.Allows(ppm))
            return null;
        if (look.AboveTheCeiling(visit, sweep, ppm, doubt) is { } ceiling)
            return ceiling;

        IReadOnlyList<string> cause = look.Note(visit.Record.AmbientCo?.Cause) is null ? ["/ambientCo/cause"] : [];
        if (look.Note(visit.Record.AmbientCo?.BeforePpm) is not { } before)
            return Raised(look.Unsafe($"{sweep} the room air shows {ppm} ppm carbon monoxide (below {limit.Max}); no sweep before is recorded"), ["/ambientCo/beforePpm", .. cause]);
        if (!visit.Limits[LimitIds.AmbientCoRise].Allows(ppm - before))
            return Raised(look.Unsafe($"with the boiler running carbon monoxide in the room air rose from {before} to {ppm} ppm", ExpectedClass.ImmediatelyDangerous), []);

        return limit.Allows(before)
            ? Raised(look.Unsafe($"{sweep} the room air shows {ppm} ppm carbon monoxide (below {limit.Max}), from {before} before"), cause)
            : Raised(look.Advisory($"{sweep} the room air shows {ppm} ppm carbon monoxide, as before the boiler ran ({before})"), cause);

        Verdict Raised(Verdict verdict, IReadOnlyList<string> missing) => verdict.AndMissing(missing).Against(limit, ppm, doubt).Warn(Cautions.RoomAir)
            .Advise("Let air in, turn the boiler off, find where the carbon monoxide comes from and put it right; sweep the room again.");
    }

    /// <summary>The last sweep, which is what the air was left like, when nobody may stay in it; null when somebody may.</summary>
    public static decimal? LastSweepAboveTheCeiling(this Look look, Visit visit)
    {
        var last = visit.Record.AmbientCo?.AfterPpm ?? visit.Record.AmbientCo?.RunningPeakPpm ?? visit.Record.AmbientCo?.BeforePpm;
        if (last is not { } ppm || visit.Limits[LimitIds.AmbientCoCeiling].Allows(ppm))
            return null;

        look.Note(visit.Record.AmbientCo?.BeforePpm);
        look.Note(visit.Record.AmbientCo?.RunningPeakPpm);
        look.Note(visit.Record.AmbientCo?.AfterPpm);
        return ppm;
    }

    /// <summary>The verdict on air in which nobody may stay; null below that.</summary>
    public static Verdict? AboveTheCeiling(this Look look, Visit visit, string sweep, decimal ppm, Doubt? doubt)
    {
        var ceiling = visit.Limits[LimitIds.AmbientCoCeiling];
        return ceiling.Allows(ppm)
            ? null
            : look.Unsafe($"{sweep} the room air shows {ppm} ppm carbon monoxide, above {ceiling.Max}", ExpectedClass.ImmediatelyDangerous)
                .Against(ceiling, ppm, doubt).Warn(Cautions.RoomAir)
                .Advise("Get everyone out, let air in, shut every gas appliance off, and report it to the gas emergency provider.");
    }
}
