using Calculations;
using Visits.Computations;

namespace Visits.Figures;

/// <summary>The uncertainty of a figure from those of its inputs, first order, inputs independent (GUM).</summary>
internal static class Propagation
{
    // Uncertainties are estimates; more digits would only look better.
    private const int Digits = 4;

    /// <summary>
    /// Standard uncertainty in the unit of the result. Where a measured input states no accuracy there is none to give: to leave that
    /// input out would make the figure look surer than it is.
    /// </summary>
    public static decimal? UncertaintyOf(Computation computation, InputValues values, Given[] givens)
    {
        foreach (var given in givens)
        {
            if (given is { IsExact: false, Uncertainty: null })
                return null;
        }

        return OfMeasured(computation, values, givens);
    }

    private static decimal? OfMeasured(Computation computation, InputValues values, Given[] givens)
    {
        var measured = givens.Where(given => !given.IsExact).ToList();
        if (measured.Count == 0)
            return null;

        var names = measured.ConvertAll(given => given.Name);
        var inputs = measured.Select(given => Inside(computation.Inputs.First(input => input.Name == given.Name), given)).OfType<Measured>().ToArray();
        return inputs.Length == measured.Count && CanMove(computation, values, names, inputs)
            ? Computations.Digits.Keep(Uncertainty.Combined(x => (double)computation.NumberOf(values.With(names, x))!.Value, inputs), Digits)
            : null;
    }

    // The slope is taken a fiftieth of the uncertainty inside the formula's range: at CO = 0 there is no slope to the left.
    private static Measured? Inside(ComputationInput input, Given given)
    {
        var uncertainty = given.Uncertainty!.Value;
        var (low, high) = ((double)input.Min!.Value + uncertainty / 50, (double)input.Max!.Value - uncertainty / 50);
        return low <= high ? new Measured(Math.Clamp((double)(decimal)given.Value!, low, high), uncertainty) : null;
    }

    // Every point that the slopes are taken from must be one that the computation accepts.
    private static bool CanMove(Computation computation, InputValues values, List<string> names, Measured[] inputs)
    {
        var at = inputs.Select(input => input.Value).ToArray();
        return Enumerable.Range(0, inputs.Length).All(i => Accepts(i, -0.01) && Accepts(i, 0.01));

        bool Accepts(int i, double share)
        {
            at[i] = inputs[i].Value + share * inputs[i].StandardUncertainty;
            var accepted = computation.Accepts(values.With(names, at));
            at[i] = inputs[i].Value;
            return accepted;
        }
    }
}
