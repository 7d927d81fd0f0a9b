using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class HeatExchangerOpinions
{
    private const string Exchanger = "/heatExchanger";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("cleaning-method", CleaningMethod),
        ("exchanger-approach", Approach),
        ("heat-exchanger-cleaned", Cleaned),
        ("heat-exchanger-inspected", Inspected),
        ("strip-down-time", StripDownTime),
    ];

    // Carbon steel on stainless, acid on aluminium: only as the maker allows.
    private static IEnumerable<Opinion> CleaningMethod(Case c)
    {
        var exchanger = c.Record.HeatExchanger;
        var isTold = exchanger is { Cleaned: true, Method: not null } && c.Record.Appliance.HeatExchangerMaterial is not null;
        return If(c.IsAnnualService() ? exchanger?.Cleaned : isTold, Exchanger, () =>
            (exchanger?.Method, exchanger?.MethodAllowedByMaker, c.Record.Appliance.HeatExchangerMaterial) switch
            {
                (null, _, _) or (_, _, null) => Outcome.Missing,
                (_, false, _) => Outcome.Advisory,
                (_, true, _) => Outcome.Pass,
                (Records.CleaningMethod.Other, _, _) => Outcome.Advisory,
                (Records.CleaningMethod.AcidCleaner, _, HeatExchangerMaterial.Aluminium) => Outcome.Advisory,
                (Records.CleaningMethod.Brush or Records.CleaningMethod.Scraper, _, HeatExchangerMaterial.StainlessSteel) => Outcome.Advisory,
                _ => Outcome.Pass,
            });
    }

    private static IEnumerable<Opinion> Approach(Case c) => If(c.Record.Appliance.Condensing, () =>
        Each(c.Record.Combustion?.Readings, "/combustion/readings", reading => reading.Stage == WorkStage.BeforeWork
            ? null
            : Within(c.Limit("exchanger-approach"), reading.FlueTemperatureC - c.Record.Water?.ReturnTemperatureC), Outcome.Missing));

    private static IEnumerable<Opinion> Cleaned(Case c) => If(c.IsAnnualService(), Exchanger, () =>
        (c.Record.HeatExchanger?.Deposits, c.Record.HeatExchanger?.Cleaned) switch
        {
            (null, _) or (_, null) => Outcome.Missing,
            (Deposits.None, _) or (_, true) => Outcome.Pass,
            _ => Outcome.Advisory,
        });

    // Looked at without opening it is not inspected, unless the maker's method is followed.
    private static IEnumerable<Opinion> Inspected(Case c) => If(c.IsAnnualService(), Exchanger, () =>
        (c.Record.HeatExchanger?.Inspected, c.Record.HeatExchanger?.TopPlateRemoved) switch
        {
            (null, _) or (_, null) => Outcome.Missing,
            (false, _) => Outcome.Advisory,
            (_, var opened) => Pass(opened.Value || c.Record.HeatExchanger!.MethodAllowedByMaker == true),
        });

    private static IEnumerable<Opinion> StripDownTime(Case c)
    {
        var exchanger = c.Record.HeatExchanger;
        return If(And(c.IsAnnualService(), exchanger?.TopPlateRemoved), Exchanger, () => exchanger?.Cleaned switch
        {
            null => Outcome.Missing,
            true => Within(c.Limit("strip-down-cleaning-minutes"), exchanger.MinutesSpent),
            false => Within(c.Limit("strip-down-minutes"), exchanger.MinutesSpent),
        });
    }
}
