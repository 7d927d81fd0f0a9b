namespace MadeVisits;

/// <summary>One appliance over years: deposits and carbon monoxide creep up, the vessel goes soft, and one year something breaks.</summary>
public static class ApplianceHistory
{
    /// <summary>The visits of a seed, the earliest first. Somebody else may come each year.</summary>
    /// <param name="seed">The same seed, the same years.</param>
    /// <param name="years">At least one.</param>
    public static IReadOnlyList<MadeVisit> Make(int seed, int years)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(years, 1);
        var dice = new Dice(unchecked((seed * 13) + 5));
        var day = new DateOnly(2026 - years + 1, 1, 10).AddDays(dice.UpTo(250));
        var world = WorldMaker.Make(dice, day);
        var sound = WorldMaker.Sound(world.Boiler, dice);
        // What is not put right is found again.
        IReadOnlyList<Danger> left = [];
        var visits = new List<MadeVisit>();
        for (var year = 0; year < years; year++)
        {
            var number = unchecked((seed * 100) + year);
            var came = world with { Engineer = dice.Chance(0.7) ? world.Engineer : WorldMaker.EngineerOf(dice), Instruments = WorldMaker.InstrumentsOf(dice, day) };
            var dangers = left.Count > 0 ? left : dice.Chance(0.5) ? WorldMaker.Dangers(world.Boiler, dice) : [];
            var visit = VisitGenerator.On(number, day, came, Aged(sound, year), dangers, dice);
            visits.Add(visit with { Earlier = [.. visits] });
            left = [.. visit.Truthful.Truth.Dangers.Where(danger => danger.State != DangerState.PutRight).Select(danger => Danger.Of(danger.Kind))];
            // A year, give or take a month: how the trade comes (common practice, no source).
            day = day.AddDays(335 + dice.UpTo(60));
        }

        return visits;
    }

    /// <summary>Carbon monoxide by 4 % and pre-charge by 0.03 bar a year (common practice, no source).</summary>
    private static Condition Aged(Condition sound, int years) => sound with
    {
        CoPpmMaximum = sound.CoPpmMaximum * (1 + (0.04m * years)),
        PrechargeBar = sound.PrechargeBar - (0.03m * years),
    };
}
