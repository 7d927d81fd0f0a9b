using Kernel;
using Kernel.Catalogues;
using Visits.Judging;

namespace ComplianceApi.Api.Rules;

/// <summary>The rules as the catalogue shows them.</summary>
public sealed class RuleShelf(ComplianceEngine engine)
{
    private readonly RuleCatalogue _catalogue = engine.Catalogue;

    /// <summary>Every rule, sorted by id.</summary>
    public IEnumerable<RuleView> All => _catalogue.Rules.Select(ViewOf);

    /// <summary>One rule with its limits and cases, or null.</summary>
    public RuleView? Find(string id) => _catalogue.Rules.FirstOrDefault(candidate => candidate.Info.Id == id) is { } rule
        ? ViewOf(rule) with { Limits = LimitsOf(rule), Cases = _catalogue.Cases[rule] }
        : null;

    private RuleView ViewOf(IComplianceRule rule) => new()
    {
        Id = rule.Info.Id,
        Title = rule.Info.Title,
        Why = rule.Info.Why,
        Uses = rule.Info.Uses,
        Topic = rule.Info.Topic,
        CommonPractice = rule.Info.IsCommonPractice,
        Coverage = rule.Info.Coverage!.Coverage,
        CoverageWhy = rule.Info.Coverage.Why,
        InForceFrom = rule.Info.InForceFrom == DateOnly.MinValue ? null : rule.Info.InForceFrom,
        InForceTo = rule.Info.InForceTo == DateOnly.MaxValue ? null : rule.Info.InForceTo,
        AppliesBy = rule.Info.AppliesBy,
        Expects = rule.Info.Expects,
        References = _catalogue.References.Of(rule.Info),
    };

    private List<LimitDefinition> LimitsOf(IComplianceRule rule) =>
        [.. _catalogue.Limits.Definitions.Concat(_catalogue.Limits.Overrides).Where(line => rule.Info.Uses.Contains(line.Id, StringComparer.Ordinal))];
}
