using System.Text.Json;
using ComplianceApi.Api.OpenApi;
using ComplianceApi.Api.Requests;
using Jobs.Previews;
using Kernel;
using Kernel.Catalogues;
using Records.Faults;

namespace ComplianceApi.Api.RuleChanges;

/// <summary>The body that asks what a change of rules would do.</summary>
internal static class RuleChangeQuestion
{
    private const string UnfitLimit = "unfitLimit";
    private const int MostLines = 1000;

    private static readonly BodyMember<JsonElement?> Overrides = BodyMember.Objects("overrides",
        "Your own limits, as they would stand in the file that Rules:Overrides names, in place of those that stand there now; an empty list: none. Each line has the form of the items of listLimits.",
        nameof(LimitDefinition), MostLines);

    private static readonly BodyMember<DateOnly?> AsOf = BodyMember.Day("asOf", "The day whose law is to count for every evaluation, in place of the day of each.");

    private static readonly BodyMember<DateOnly?> From = BodyMember.Day("from", "First day of the visits that are looked at (UTC); by default all.");

    private static readonly BodyMember<DateOnly?> To = BodyMember.Day("to", "Last day of the visits that are looked at (UTC); by default all.");

    public static BeyondSchema Beyond { get; } = new(FaultCodes.RequiredMember, UnfitLimit);

    public static BodyShape Shape { get; } = new("RuleChangeQuestion", "A change of rules: overrides, asOf, or both.", Overrides, AsOf, From, To);

    /// <summary>The candidate, whose limits fit; null where <paramref name="body"/> has faults.</summary>
    public static Candidate? Of(BodyValues body, CandidateEngines engines)
    {
        if (!body.HasMembers)
            return null;
        if (!body.Has(Overrides) && !body.Has(AsOf))
            body.Add("#/overrides", FaultCodes.RequiredMember, "Say what is to change: overrides, asOf, or both.");
        if (To.Of(body) < From.Of(body))
            body.Add("#/to", FaultCodes.OutOfOrder, "The last day lies before the first.");

        var candidate = new Candidate { Overrides = Overrides.Of(body), AsOf = AsOf.Of(body), From = From.Of(body), To = To.Of(body) };
        try
        {
            engines.Of(candidate);
        }
        catch (CatalogueException unfit)
        {
            foreach (var gap in unfit.Gaps)
                body.Add(global::Kernel.Catalogues.Overrides.LineOf(gap) is { } line ? FormattableString.Invariant($"#/overrides/{line - 1}") : "#/overrides", UnfitLimit, gap);
        }

        return body.Faults.Count > 0 ? null : candidate;
    }
}
