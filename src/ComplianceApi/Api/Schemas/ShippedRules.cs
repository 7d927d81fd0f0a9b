using Kernel.Catalogues;
using Rules;
using Visits;
using Visits.Judging;

namespace ComplianceApi.Api.Schemas;

/// <summary>The rules that the program brings.</summary>
public static class ShippedRules
{
    /// <summary>Where each rule has its page under its id.</summary>
    private const string PagesAt = "/v1/rules/";

    /// <summary>Whose law they hold.</summary>
    public static IReadOnlyList<Jurisdiction> Jurisdictions { get; } = RuleCatalogue.JurisdictionsOf(typeof(RuleIds).Assembly);

    /// <summary>What they say of themselves.</summary>
    public static RuleSetHeader Header { get; } = RuleCatalogue.HeaderOf(typeof(RuleIds).Assembly);

    /// <summary>The catalogue with a deployer's limits.</summary>
    /// <param name="overrides">The limits as JSON; null: none.</param>
    /// <exception cref="CatalogueException">It has a gap, or the limits do not fit; everything is named.</exception>
    public static RuleCatalogue Read(byte[]? overrides = null) => RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, overrides, PagesAt);

    /// <inheritdoc cref="Read" />
    public static ComplianceEngine Start(byte[]? overrides) => ComplianceEngine.Start(Read(overrides));
}
