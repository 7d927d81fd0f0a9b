using Findings;
using Records;

namespace SecondOpinion;

/// <summary>
/// How sure a reading is by what its instrument states of its accuracy, and what becomes of a pass that is not sure enough. Source:
/// JCGM 106:2012, conformity of a normally distributed measurand; the 95 % are the service's own.
/// </summary>
internal static class Sureness
{
    private const double Enough = 0.95;

    /// <summary>
    /// Standard uncertainty of a reading: the larger of the absolute and the relative limit and half a step, each taken as a rectangle;
    /// null where the one instrument that can be meant does not state it.
    /// </summary>
    public static double? Of(Case one, string quantity, decimal? value, InstrumentKind kind, string? serial = null)
    {
        var instruments = (one.Record.Instruments ?? []).Where(instrument => serial is null ? instrument.Kind == kind : instrument.SerialNumber == serial).ToList();
        var stated = instruments is [var instrument] ? instrument.Accuracies?.Where(accuracy => accuracy.Quantity == quantity).ToList() : null;
        if (value is not { } read || stated is not [var accuracy] || (accuracy.Absolute ?? accuracy.RelativePercent) is null || accuracy.RelativePercent > 100)
            return null;

        var limit = Math.Max((double)(accuracy.Absolute ?? 0), (double)(Math.Abs(read) * (accuracy.RelativePercent ?? 0)) / 100);
        var halfStep = (double)(accuracy.Resolution ?? 0) / 2;
        var uncertainty = Math.Sqrt(((limit * limit) + (halfStep * halfStep)) / 3);
        return uncertainty > 0 ? uncertainty : null;
    }

    public static double? OfGauge(Case one, string quantity, decimal? value) => Of(one, quantity, value, InstrumentKind.PressureGauge);

    public static double? OfAnalyser(Case one, string quantity, decimal? value, string? serial = null) =>
        Of(one, quantity, value, InstrumentKind.FlueGasAnalyser, serial);

    /// <summary>A pass stays one only if the true value is within the bounds with enough probability.</summary>
    public static Opinion IfSure(this Opinion opinion, double? uncertainty, decimal value, decimal? min, decimal? max)
    {
        if (opinion.Outcome != Outcome.Pass || uncertainty is not { } u)
            return opinion;
        var probability = (max is { } most ? Normal((double)(most - value) / u) : 1) - (min is { } least ? Normal((double)(least - value) / u) : 0);
        return probability < Enough ? Say.Advisory(opinion.Subject) : opinion;
    }

    /// <summary>The normal distribution function, by Simpson's rule.</summary>
    public static double Normal(double z)
    {
        const int Steps = 400;
        if (Math.Abs(z) > 8)
            return z > 0 ? 1 : 0;
        var width = z / Steps;
        var sum = 0.0;
        for (var i = 0; i <= Steps; i++)
            sum += (i is 0 or Steps ? 1 : i % 2 == 1 ? 4 : 2) * Math.Exp(-i * width * i * width / 2);
        return 0.5 + (sum * width / 3 / Math.Sqrt(2 * Math.PI));
    }
}
