using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.HeatExchanger;

[Id(RuleIds.CleaningMethod), Topic(Topics.HeatExchanger), CommonPractice]
[Title("The heat exchanger is cleaned in a way that its metal bears")]
[Why("Carbon steel bristles leave specks that rust stainless steel, and acid eats into aluminium. The harm comes out later as pitting or a water leak, long after the cleaning looked a success.")]
[Serves(Part.FireSideDetails)]
[AppliesBy("/heatExchanger/cleaned")]
[Coverage(Coverage.Full, "method is held against metal and maker")]
public sealed class CleaningMethodRule : VisitRule
{
    protected override string SubjectPointer => "/heatExchanger";

    // Asked for at a service; a cleaning that another visit records is judged by what it records.
    protected override bool? Applies(Visit visit) => visit.IsAnnualService
        ? visit.Record.HeatExchanger?.Cleaned
        : visit.Record is { HeatExchanger: { Cleaned: true, Method: not null }, Appliance.HeatExchangerMaterial: not null };

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.HeatExchanger?.Method, out var method) | look.Lacks(visit.Record.Appliance.HeatExchangerMaterial, out var metal))
            return look.Missing();

        return look.Note(visit.Record.HeatExchanger?.MethodAllowedByMaker) switch
        {
            true => look.Pass($"the maker's instructions allow the method ({method}) on {metal}"),
            false => Doubt(look, $"the maker's instructions do not allow the method ({method}) on {metal}"),
            _ when DoubtOf(method, metal) is { } doubt => Doubt(look, doubt),
            _ => look.Pass($"the method ({method}) suits {metal}"),
        };
    }

    private static FormattableString? DoubtOf(CleaningMethod method, HeatExchangerMaterial metal) => (method, metal) switch
    {
        (CleaningMethod.Brush or CleaningMethod.Scraper, HeatExchangerMaterial.StainlessSteel) =>
            $"stainless steel was cleaned with a {method}; bristles or blades of carbon steel make it rust",
        (CleaningMethod.AcidCleaner, HeatExchangerMaterial.Aluminium) => $"aluminium was cleaned with acid, which can eat it",
        (CleaningMethod.Other, _) => $"the method of cleaning is not one that is known to suit {metal}",
        _ => null,
    };

    private static Verdict Doubt(Look look, FormattableString message) => look.Advisory(message).Warn(Cautions.MakerDecides)
        .Advise("Look the method up in the maker's instructions, inspect the surface, and rinse off what remains.");
}
