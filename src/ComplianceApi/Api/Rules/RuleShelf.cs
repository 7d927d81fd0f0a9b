using Kernel;
using Kernel.Catalogues;
using Visits.Judging;

namespace ComplianceApi.Api.Rules;

/// <summary>The rules as the catalogue shows them.</summary>
public sealed class RuleShelf(ComplianceEngine engine)
{
    private readonly RuleCatalogue _catalogue = engine.Catalogue;

    /// <summary>Every rule, sorted by id.</summary>
    public IEnumerable<RuleView> All => _catalogue.All.Select(ViewOf);

    /// <summary>The kinds of duty that rules call for and serve.</summary>
    public IReadOnlyList<DutyKind> Duties => _catalogue.DutyKinds;

    /// <summary>One rule with its limits and cases, or null.</summary>
    public RuleView? Find(string id) => _catalogue.All.FirstOrDefault(candidate => candidate.Info.Id == id) is { } rule
        ? ViewOf(rule) with { Limits = LimitsOf(rule), Cases = _catalogue.Cases.GetValueOrDefault(rule), DutyCases = rule is DutyRule duty ? _catalogue.DutyCases[duty] : null }
        : null;

    private RuleView ViewOf(IComplianceRule rule) => new()
    {
        Id = rule.Info.Id,
        Set = rule.Info.Set,
        Title = rule.Info.Title,
        Why = rule.Info.Why.Length > 0 ? rule.Info.Why : null,
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
        Serves = [.. rule.Info.Serves.Select(serves => new ServedPart { Part = serves.Part, AtMost = serves.AtMost, Of = serves.Of })],
        AlsoRecordedAt = rule.Info.AlsoRecordedAt,
        CalledBy = (rule as DutyCallRule)?.Pointer,
        Calls = (rule as DutyCallRule)?.Calls.Select(call => new CalledFor { Weight = call.Weight, Parts = call.Parts, Pointer = call.Pointer, Where = call.Where, PutOffAgain = call.IsPutOffAgain ? true : null }).ToList(),
    };

    private List<LimitDefinition> LimitsOf(IComplianceRule rule) =>
        [.. _catalogue.Limits.Definitions.Concat(_catalogue.Limits.Overrides).Where(line => rule.Info.Uses.Contains(line.Id, StringComparer.Ordinal))];
}
