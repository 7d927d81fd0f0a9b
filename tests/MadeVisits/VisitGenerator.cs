namespace MadeVisits;

/// <summary>Makes visits: a boiler with a true condition, somebody who comes, what he does, what he writes, and what he might write instead.</summary>
public static class VisitGenerator
{
    private static readonly DateOnly FirstDay = new(2023, 1, 2);

    /// <summary>Aspects that the law or the work itself calls for, whoever comes: from the table in section 3 of the page of duties.</summary>
    private static readonly Aspect[] Owed = [Aspect.Flue, Aspect.FlueFlow, Aspect.Pressure, Aspect.SafetyDevices, Aspect.Terminal, Aspect.Ventilation, Aspect.RoomAir];

    /// <summary>The visit of a seed. Four in five land on a weekday of 2023 to 2026.</summary>
    public static MadeVisit Make(int seed)
    {
        var dice = new Dice(seed);
        var day = FirstDay.AddDays(dice.UpTo(1400));
        var world = WorldMaker.Make(dice, day);
        var sound = WorldMaker.Sound(world.Boiler, dice);
        return On(seed, day, world, sound, WorldMaker.Dangers(world.Boiler, dice), dice);
    }

    internal static MadeVisit On(int seed, DateOnly day, World world, Condition sound, IReadOnlyList<Danger> dangers, Dice dice)
    {
        var job = world.Premises.IsLet
            ? dice.Weighted(("landlordCheck", 50), ("annualService", 25), ("repair", 20), ("commissioning", 5))
            : dice.Weighted(("annualService", 65), ("repair", 27), ("commissioning", 8));
        var result = dice.Weighted(("carriedOut", 90), ("noAccess", 3), ("noAccessToAppliance", 1), ("refused", 1), ("gasOff", 2), ("awaitingParts", 3));
        var part = job == "repair" && result == "carriedOut" ? dice.Weighted<string?>(("gasValve", 20), ("fan", 15), ("pump", 25), ("sensor", 20), ("controlBoard", 10), ("electrode", 10)) : null;
        var asFound = With(sound, dangers, seed);

        var examined = Examined(world, job, result, part, dice);
        var dealt = dangers.Select(danger => Dealt(danger, examined.Contains(danger.SeenBy), world, job, result, dice)).ToList();
        if (dealt.Exists(one => one.Truth is { IsSeen: true, State: DangerState.TakenOutOfUse }) && result == "carriedOut" && dice.Chance(0.5))
            result = "stoppedForDanger";
        var asLeft = With(sound, dangers.Where((_, index) => dealt[index].Truth.State != DangerState.PutRight), seed);

        var written = world.Engineer.Habit == Habit.Forgetful ? examined.Where(_ => !dice.Chance(0.12)).ToHashSet() : [.. examined];
        written.UnionWith(dealt.Where(one => one.Truth.IsSeen).Select(one => one.Danger.SeenBy));
        var truth = new Truth { Dangers = [.. dealt.Select(one => one.Truth)], Examined = examined, Written = written, Shown = dealt.Where(one => one.Truth.IsSeen).Select(one => one.Danger.Kind).ToHashSet() };
        var writer = new RecordWriter(seed, day, world, job, result, part);
        var truthful = new Written(writer.Write(asFound, asLeft, written, dealt), truth);
        return new MadeVisit(seed, world, job, result, asFound, asLeft, truthful, [.. new Lies(seed, writer, sound, truth, dealt).All()]);
    }

    /// <summary>A condition with dangers; each is as bad as its seed and kind say, whatever else there is.</summary>
    internal static Condition With(Condition sound, IEnumerable<Danger> dangers, int seed) =>
        dangers.Aggregate(sound, (condition, danger) => danger.Makes(condition, new Dice(unchecked((seed * 17) + (int)danger.Kind))));

    private static HashSet<Aspect> Examined(World world, string job, string result, string? part, Dice dice)
    {
        if (result is "noAccess" or "noAccessToAppliance" or "refused")
            return [];
        var boiler = world.Boiler;
        IEnumerable<Aspect> called = job switch
        {
            "repair" when part is "gasValve" or "fan" or "electrode" => Enum.GetValues<Aspect>().Except([Aspect.FireSide, Aspect.Condensate]),
            "repair" => [Aspect.Flue, Aspect.FlueFlow, Aspect.Terminal, Aspect.Ventilation, Aspect.Pressure, Aspect.Rate, Aspect.SafetyDevices, Aspect.Electrics, Aspect.RoomAir, Aspect.Alarm],
            "landlordCheck" => Enum.GetValues<Aspect>().Except([Aspect.FireSide, Aspect.Condensate, Aspect.Water]),
            _ => Enum.GetValues<Aspect>(),
        };
        called = called.Where(aspect => RecordWriter.IsOf(boiler, aspect));
        // Without gas, or a boiler that cannot run, nothing is measured on it.
        if (result is "gasOff" or "awaitingParts")
            called = called.Except([Aspect.FlueFlow, Aspect.Case, Aspect.AirInlet, Aspect.Combustion, Aspect.Pressure, Aspect.Rate, Aspect.RoomAir, Aspect.SafetyDevices, Aspect.Tightness]);
        var isHurried = world.Engineer.Habit is Habit.Hurried or Habit.Dishonest;
        return [.. called.Where(aspect => !isHurried || dice.Chance(Owed.Contains(aspect) ? 0.92 : 0.6))];
    }

    /// <summary>What somebody does about a danger that he sees. Who is thorough does all of it; others now and then leave a part out.</summary>
    private static Dealt Dealt(Danger danger, bool isSeen, World world, string job, string result, Dice dice)
    {
        if (!isSeen)
            return new Dealt(danger, new TrueDanger(danger.Kind, false, DangerState.Standing, false), null);
        var mayRun = result == "carriedOut";
        var state = dice.Weighted(
            (DangerState.PutRight, mayRun ? 40 : 0), (DangerState.TakenOutOfUse, 45), (DangerState.LeftByRefusal, job == "commissioning" ? 0 : 10),
            (DangerState.Standing, world.Engineer.Habit == Habit.Thorough ? 0 : 8));
        var isWhole = state != DangerState.Standing && (world.Engineer.Habit == Habit.Thorough || dice.Chance(0.7));
        var leftOut = isWhole || state == DangerState.Standing ? null : Omission(danger, state, dice);
        var isHandled = isWhole || (leftOut == "reexaminedAt" && danger.IsMeasuredAgain);
        return new Dealt(danger, new TrueDanger(danger.Kind, true, state, isHandled), leftOut);
    }

    private static string Omission(Danger danger, DangerState state, Dice dice) => state switch
    {
        DangerState.PutRight => dice.OneOf("told", "reexaminedAt"),
        DangerState.LeftByRefusal => danger.Class == "immediatelyDangerous" ? dice.OneOf("told", "emergencyReference") : dice.OneOf("told", "userSigned"),
        _ => danger.Class == "immediatelyDangerous" && danger.IsolatedAt != "electricalSupply" ? dice.OneOf("told", "gaswaysSealed", "isolatedAt") : dice.OneOf("told", "isolatedAt"),
    };
}

/// <summary>A danger with what was done about it.</summary>
/// <param name="Danger">Which.</param>
/// <param name="Truth">What is so.</param>
/// <param name="LeftOut">The member that was left out; null where none was.</param>
internal sealed record Dealt(Danger Danger, TrueDanger Truth, string? LeftOut);
