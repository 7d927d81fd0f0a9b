using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Competence;

[Id(RuleIds.CategoryCoversAppliance), Topic(Topics.Competence), Cites("GSIUR-1998", "3(1)"), Cites("GSIUR-1998", "3(3)")]
[Title("The engineer holds a category for this fuel and this size of appliance that is in date on the day of the visit")]
[Why("Skill on one fuel or size of boiler does not carry over by itself: LPG, for one, is heavier than air and gathers low down. The regulations ask for competence in the work at hand, and a lapsed category no longer shows it.")]
[Serves(Part.Competence)]
[Serves(Part.Competence, AtMost = Weight.Should, Of = "/appliance/ratedInputKw")]
[Serves(Part.Competence, AtMost = Weight.Should, Of = "/appliance/ratedInputBasis")]
[Uses(LimitIds.DomesticScopeInput)]
[Coverage(Coverage.MayOverReport, "makers' exceptions at the bound between domestic and other work are not known")]
public sealed class CategoryCoversApplianceRule : VisitRule
{
    private const string Categories = "/engineer/categories";

    protected override string SubjectPointer => Categories;

    protected override Verdict Assess(Visit visit, Look look)
    {
        look.Note(visit.Record.Engineer?.SupervisedBy);
        var hasSize = !(look.Lacks(visit.Record.Appliance.RatedInputKw, out _) | look.Lacks(visit.Record.Appliance.RatedInputBasis, out _));
        if (visit.Record.Engineer?.Categories is not { } held)
            return look.Missing($"the record does not say which categories the engineer holds", Categories);
        if (!hasSize)
            return look.Missing($"without the heat input and its basis nobody can say which category the work needs");

        if (visit.Appliance.Fuel is not { } fuel || visit.RatedInputNetKw is not { } netKw)
            return look.Missing($"without the fuel nobody can say which category the work needs", "/appliance/fuel");

        var limit = visit.Limits[LimitIds.DomesticScopeInput];
        var scope = limit.Allows(netKw) ? CategoryScope.Domestic : CategoryScope.NonDomestic;
        var needed = new NeededCategory(fuel, scope, visit.Date);
        FormattableString demand = $"{fuel} work at {netKw:0.##} kW net asks for a {scope} category";
        if (held.Any(needed.IsMetBy))
            return look.Pass($"{demand}, and one is in date on {visit.Date}").Against(limit, scope == CategoryScope.Domestic ? netKw : null);

        // A small boiler at a place of work: the maker and the register say which scope serves.
        return scope == CategoryScope.Domestic && visit.Record.Premises?.Use == PremisesUse.Workplace && held.Any(needed.IsMetButForScope)
            ? look.Advisory($"{demand} as a rule; at this workplace the engineer holds the other scope").Against(limit, netKw)
                .Advise("Confirm with the register that the category held covers this appliance.")
            : NoneServes(needed, held, look, demand).Against(limit, netKw);
    }

    private static Verdict NoneServes(NeededCategory needed, IReadOnlyList<EngineerCategory> held, Look look, FormattableString demand)
    {
        var reasons = held.Count == 0 ? "none is held" : string.Join("; ", held.Select(needed.WhyNot).Distinct(StringComparer.Ordinal));
        var open = held.SelectMany((category, index) => needed.Open(category, $"{Categories}/{index}"));
        return look.Missing($"{demand}, and none recorded serves: {reasons}", [.. open.DefaultIfEmpty(Categories)])
            .Warn(Cautions.OutsideCompetence)
            .Advise("Have an engineer with the category that is needed examine the appliance, or complete the record if one was held.");
    }
}
