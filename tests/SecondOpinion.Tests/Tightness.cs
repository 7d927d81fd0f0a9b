using ServiceRecords;

namespace SecondOpinion.Tests;

/// <summary>What a tightness test shows.</summary>
internal static class Tightness
{
    public static readonly DateOnly Edition4Published = new(2026, 3, 25);
    public static readonly DateOnly Edition3Withdrawn = new(2026, 10, 1);

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

    /// <summary>Did an after-work test that counts, with the appliance valve open, show no leak? Null: the record leaves it open.</summary>
    public static bool? ProofOfInlet(Case one)
    {
        bool? best = false;
        foreach (var test in one.Record.TightnessTests ?? [])
        {
            var proof = Proof(one, test);
            if (proof == true)
                return true;
            best = proof is null ? null : best;
        }

        return best;
    }

    private static bool? Proof(Case one, TightnessTest test)
    {
        if (test.Stage == WorkStage.BeforeWork || test.ApplianceValvesOpen == false)
            return false;
        bool?[] demands = [test.Stage is null ? null : true, test.ApplianceValvesOpen, TightnessOpinions.Shows(one, test)];
        return demands.Contains(false) ? false : demands.Contains(null) ? null : true;
    }
}
