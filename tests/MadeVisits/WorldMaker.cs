using System.Globalization;

namespace MadeVisits;

/// <summary>Draws boilers, premises, engineers and conditions. How often each is drawn is common practice, no source.</summary>
internal static class WorldMaker
{
    public static World Make(Dice dice, DateOnly day)
    {
        var boiler = BoilerOf(dice, day);
        var premises = new Premises(
            string.Create(CultureInfo.InvariantCulture, $"P-{dice.UpTo(100_000):00000}"),
            dice.Weighted(("GB-ENG", 84), ("GB-WLS", 5), ("GB-SCT", 11)),
            dice.Weighted(("ownerOccupied", 62), ("rented", 35), ("workplace", 3)));
        return new World(boiler, premises, EngineerOf(dice), InstrumentsOf(dice, day));
    }

    public static Engineer EngineerOf(Dice dice) => new(
        string.Create(CultureInfo.InvariantCulture, $"70{dice.UpTo(100_000):00000}"),
        string.Create(CultureInfo.InvariantCulture, $"6{dice.UpTo(100_000):00000}"),
        dice.Weighted((Habit.Thorough, 50), (Habit.Hurried, 25), (Habit.Forgetful, 15), (Habit.Dishonest, 10)));

    /// <summary>Nineteen in twenty certificates are in date; an analyser reads within 5 %, a gauge within 1 %, a multimeter within 3 % (what such instruments claim; common practice, no source).</summary>
    public static IReadOnlyList<Instrument> InstrumentsOf(Dice dice, DateOnly day) =>
    [
        InstrumentOf("flueGasAnalyser", "FA", 0.02m, dice, day), InstrumentOf("pressureGauge", "PG", 0.004m, dice, day), InstrumentOf("multimeter", "MM", 0.01m, dice, day), InstrumentOf("thermometer", "TH", 0.005m, dice, day),
    ];

    private static Instrument InstrumentOf(string kind, string letters, decimal deviation, Dice dice, DateOnly day) => new(
        kind,
        string.Create(CultureInfo.InvariantCulture, $"{letters}-{dice.UpTo(900) + 100}"),
        day.AddDays(-(dice.Chance(0.95) ? dice.UpTo(360) : 370 + dice.UpTo(300))),
        dice.Around(0, deviation));

    /// <summary>Four in five boilers condense and are room-sealed with a fan; the others are older.</summary>
    private static Boiler BoilerOf(Dice dice, DateOnly day)
    {
        var isModern = dice.Chance(0.8);
        var kind = isModern ? dice.Weighted(("combi", 75), ("system", 15), ("heatOnly", 10)) : dice.Weighted(("heatOnly", 70), ("combi", 20), ("backBoiler", 10));
        var flue = isModern ? "roomSealedFanned" : kind == "backBoiler" ? "openFlued" : dice.Weighted(("openFlued", 45), ("roomSealedNatural", 25), ("roomSealedFanned", 30));
        return new Boiler
        {
            SerialNumber = string.Create(CultureInfo.InvariantCulture, $"{(isModern ? "QB" : "PG")}-{dice.UpTo(100)}-{dice.UpTo(1_000_000):000000}"),
            Maker = isModern ? "Quillback" : "Pellitory",
            Model = isModern ? dice.OneOf("Tarn 25", "Tarn 30", "Mere 18") : dice.OneOf("Grange 60", "Grange 40"),
            Kind = kind,
            Fuel = dice.Weighted(("naturalGas", 94), ("propane", 6)),
            FlueType = flue,
            CasePressure = flue == "roomSealedFanned" ? dice.Weighted(("negative", 80), ("positive", 20)) : null,
            BurnerKind = isModern ? "premix" : flue == "roomSealedFanned" ? "fanToBurner" : "atmospheric",
            IsCondensing = isModern,
            ExchangerMaterial = isModern ? dice.OneOf("aluminium", "stainlessSteel") : dice.OneOf("castIron", "copper"),
            NetInputKw = isModern ? dice.OneOf(18m, 24m, 26m, 30m) : dice.OneOf(15.5m, 20.4m, 24m),
            InstalledOn = day.AddDays(-(isModern ? 60 + dice.UpTo(365 * 14) : (365 * 16) + dice.UpTo(365 * 15))),
            Room = flue == "openFlued" ? dice.Weighted(("kitchen", 60), ("livingRoom", 25), ("utility", 15)) : dice.Weighted(("kitchen", 50), ("utility", 18), ("hall", 10), ("loft", 12), ("garage", 10)),
            IsOpenVented = !isModern && kind != "combi" && dice.Chance(0.7),
        };
    }

    /// <summary>A sound boiler: condensing ones burn at 9.2 % CO2 within 0.3 and 40 to 140 ppm, propane half a point to one and a half higher, old ones leaner at 6.3 % and hotter (common practice, no source).</summary>
    public static Condition Sound(Boiler boiler, Dice dice)
    {
        var gas = boiler.Fuel == "propane" ? 1.2m : 0;
        var co2 = boiler.IsCondensing ? dice.Around(9.15m, 0.12m) + gas : dice.Around(6.3m, 0.4m) + gas;
        return new Condition
        {
            CoPpmMaximum = boiler.IsCondensing ? dice.Between(40, 140) : dice.Between(8, 60),
            CoPpmMinimum = dice.Between(4, 30),
            Co2PercentMaximum = co2,
            Co2PercentMinimum = co2 - dice.Between(0.1m, 0.4m),
            FlueTemperatureC = boiler.IsCondensing ? dice.Around(58, 4) : dice.Around(155, 15),
            TerminalMm = dice.Between(boiler.FlueType == "roomSealedNatural" ? 700 : 450, 2500),
            EarthOhm = dice.Between(0.05m, 0.6m),
            Deposits = dice.Weighted(("none", 25), ("light", 70), ("heavy", 5)),
            InletMbar = boiler.Fuel == "propane" ? dice.Around(36.5m, 0.4m) : dice.Around(20, 0.5m),
            InputShare = dice.Around(1, 0.018m),
            PrechargeBar = dice.Around(0.95m, 0.08m),
        };
    }

    /// <summary>One visit in six finds a danger, one in fifty two.</summary>
    public static IReadOnlyList<Danger> Dangers(Boiler boiler, Dice dice)
    {
        var found = new List<Danger>();
        for (var left = dice.Weighted((0, 83), (1, 15), (2, 2)); left > 0; left--)
        {
            var possible = Danger.All.Where(danger => danger.Fits(boiler) && found.TrueForAll(other => other.Topic != danger.Topic)).Select(danger => (danger, danger.Share)).ToArray();
            found.Add(dice.Weighted<Danger>(possible));
        }

        return found;
    }
}
