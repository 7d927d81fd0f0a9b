using Records;
using static SecondOpinion.Say;

namespace SecondOpinion.Opinions;

/// <summary>The gas rate and what it says of the heat input.</summary>
internal static class HeatInputOpinions
{
    private const string Rate = "/gasSupply/rate";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("calorific-value", one => [CalorificValue(one)]),
        ("gas-rate-measurement", one => [Measurement(one)]),
        ("heat-input", one => [HeatInput(one)]),
        ("plate-basis", one => [PlateBasis(one)]),
        ("pressure-or-heat-input-examined", one => [Examined(one)]),
    ];

    private static Opinion CalorificValue(Case one)
    {
        const string At = "/gasSupply/rate/calorificValueMjPerM3";
        if (one.Record.GasSupply?.Rate is not { } rate)
            return Examination.NotMeasured(one, At);
        return (one.Record.Appliance.Fuel, rate.CalorificValueMjPerM3) switch
        {
            (null, _) or (_, null) => Missing(At),
            (Fuel.NaturalGas, >= 37.5m and <= 43) or (Fuel.Propane, >= 93 and <= 96) or (Fuel.Butane, >= 116 and <= 126) => Pass(At),
            _ => Advisory(At),
        };
    }

    /// <summary>Was the rate timed long enough, at maximum, warm, all else off, at a meter that can be read?</summary>
    public static bool? IsProperlyTimed(Case one)
    {
        var demands = Demands(one);
        return demands.Contains(false) ? false : demands.Contains(null) ? null : true;
    }

    private static bool?[] Demands(Case one)
    {
        var rate = one.Record.GasSupply?.Rate;
        bool? isLongEnough = rate?.Seconds is { } seconds ? seconds >= 120 || rate.VolumeFt3 is not null : null;
        bool? isWarm = rate?.WarmMinutes is { } minutes ? minutes >= 10 : null;
        return [isLongEnough, isWarm, rate?.AtMaximum, rate?.OtherAppliancesOff, one.Record.GasSupply?.MeterDisplayWorks];
    }

    private static Opinion Measurement(Case one)
    {
        if (one.Record.GasSupply?.Rate is null)
            return Examination.NotMeasured(one, Rate);
        var demands = Demands(one);
        return demands.Contains(null) ? Missing(Rate) : demands.Contains(false) ? Advisory(Rate) : Pass(Rate);
    }

    private static Opinion HeatInput(Case one)
    {
        if (one.Record.GasSupply?.Rate is null || IsProperlyTimed(one) == false)
            return Examination.NotMeasured(one, Rate);
        if (!Examination.HeatInputExamined(one) || Examination.DeviationPercent(one) is not { } deviation)
            return Missing(Rate);
        return deviation switch
        {
            >= -10 and <= 5 => Pass(Rate),
            >= -15 and <= 10 => Advisory(Rate),
            _ => Examination.BurnIsRight(one) switch { true => Advisory(Rate), false => AtRisk(Rate), null => Missing(Rate) },
        };
    }

    private static Opinion PlateBasis(Case one)
    {
        const string At = "/appliance/ratedInputBasis";
        var appliance = one.Record.Appliance;
        if (appliance.RatedInputBasis is not { } basis || appliance.RatedInputKw is null)
            return Missing(At);
        var other = Examination.MeasuredKw(one, basis == InputBasis.Net ? InputBasis.Gross : InputBasis.Net);
        var deviation = (other - Examination.TargetKw(appliance)) / Examination.TargetKw(appliance) * 100;
        return deviation is >= -1 and <= 1 ? Advisory(At) : Pass(At);
    }

    private static Opinion Examined(Case one)
    {
        const string At = "/gasSupply";
        // What stands in by a reason is never better than an advisory (duties, section 3).
        return Examination.PressureExamined(one) || Examination.HeatInputExamined(one) ? Pass(At) : Examination.MayAnalysisStandIn(one) ? Advisory(At) : Missing(At);
    }
}
