using Findings;
using Kernel;
using Kernel.Catalogues;
using Records;
using Records.Reading;
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

    /// <summary>A rule does not list its limits; its cases meet them, so the cases are judged and the limits that decided are taken.</summary>
    private List<Limit> LimitsOf(IComplianceRule rule) =>
    [
        .. _catalogue.Cases[rule]
            .Select(one => RecordReader.Read(one.RecordFrom(_catalogue.ExampleRecord)).Record)
            .OfType<ServiceRecord>()
            .SelectMany(record => engine.Evaluate(record).Findings)
            .Where(finding => finding.RuleId == rule.Info.Id)
            .Select(finding => finding.Limit)
            .OfType<Limit>()
            .Where(limit => limit.Origin != LimitOrigin.Maker)
            .DistinctBy(limit => (limit.Min, limit.Max, limit.Text, limit.Unit, limit.Source, limit.InForceFrom)),
    ];
}
