using Calculations;
using static Visits.Computations.ComputationInput;

namespace Visits.Computations;

/// <summary>How sure a reading is, and how sure it is within a limit. The numbers have one unit, whatever it is; it is written as 1.</summary>
public static class UncertaintyComputations
{
    private const decimal Most = 1_000_000;

    private static readonly ComputationInput Reading = Within("reading", "1", -Most, Most, 96, "the reading");
    private static readonly ComputationInput U = Within("standardUncertainty", "1", 0.000001m, Most, 5.8m, "its standard uncertainty");
    private static readonly ComputationInput Limit = Within("limit", "1", -Most, Most, 100, "the limit");

    /// <summary>Standard uncertainty of a reading.</summary>
    public static readonly Computation OfReading = new()
    {
        Name = "readingUncertainty",
        What = "standard uncertainty of a reading from the accuracy that its instrument states",
        Inputs =
        [
            Reading,
            Within("absolute", "1", 0, Most, 10, "plus or minus, in the unit of the reading") with { Default = 0m },
            Within("relativePercent", "%", 0, 100, 5, "plus or minus, of the reading") with { Default = 0m },
            Within("resolution", "1", 0, Most, 1, "smallest step shown") with { Default = 0m },
        ],
        Unit = "1",
        Template = "sqrt((larger of {absolute} and {relativePercent} % of {reading})^2 / 3 + {resolution}^2 / 12)",
        Source = "JCGM 100:2008 (GUM) clause 4.3.7, rectangular distributions",
        Real = v => Uncertainty.OfReading(v.Real("reading"), v.Real("absolute"), v.Real("relativePercent"), v.Real("resolution")),
    };

    /// <summary>Probability of being at most a limit.</summary>
    public static readonly Computation AtMost = new()
    {
        Name = "conformityAtMost",
        What = "probability that the true value is at most a limit",
        Inputs = [Reading, U, Limit],
        Unit = "1",
        Template = "Phi(({limit} - {reading}) / {standardUncertainty})",
        Source = "JCGM 106:2012 clause 7",
        Real = v => Conformity.AtMost(MeasuredOf(v), v.Real("limit")),
    };

    /// <summary>Probability of being at least a limit.</summary>
    public static readonly Computation AtLeast = new()
    {
        Name = "conformityAtLeast",
        What = "probability that the true value is at least a limit",
        Inputs = [Reading, U, Limit],
        Unit = "1",
        Template = "1 - Phi(({limit} - {reading}) / {standardUncertainty})",
        Source = "JCGM 106:2012 clause 7",
        Real = v => Conformity.AtLeast(MeasuredOf(v), v.Real("limit")),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Computation> All { get; } = [OfReading, AtMost, AtLeast];

    private static Measured MeasuredOf(InputValues v) => new(v.Real("reading"), v.Real("standardUncertainty"));
}
