using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Findings;
using Kernel;
using Kernel.Catalogues;
using Microsoft.AspNetCore.Http.HttpResults;
using Records;
using Visits.Judging;
using Wire;

namespace ComplianceApi.Api.Rules;

/// <summary>The catalogue: rules with their cases, limits by date, laws and standards.</summary>
public static class CatalogueRoutes
{
    private static readonly QueryParameter<string?> Topic = Query.Word("topic", "Only rules of this subject area.", Topics.All);

    private static readonly QueryParameter<SetOfRules?> Set = Query.OneOfOrAny<SetOfRules>("set", "Only rules of this set.");

    private static readonly QueryParameter<DateOnly?> InForceOn = Query.Day("date", "Only limits in force on this day.");

    private static readonly QueryParameter<Fuel?> ForFuel = Query.OneOfOrAny<Fuel>("fuel", "Only limits for this gas.");

    private static readonly QueryParameter<string?> Where = Query.JurisdictionOrAny("Only limits that apply there (ISO 3166-2).");

    /// <summary>Maps the routes.</summary>
    public static void MapCatalogue(this IEndpointRouteBuilder v1)
    {
        var routes = v1.MapGroup("").WithTags("Catalogue").NeedsAnyKey().Revalidated();
        routes.MapGet("/rules", ListRules).WithName("listRules").Takes(Topic, Set, Paging.Limit, Paging.Next);
        routes.MapGet("/rules/{ruleId}", GetRule).WithName("getRule").Fails(ProblemKind.NotFound);
        routes.MapGet("/rule-sets", ListRuleSets).WithName("listRuleSets").Takes(Paging.Limit, Paging.Next);
        routes.MapGet("/duties", ListDuties).WithName("listDuties").Takes(Paging.Limit, Paging.Next);
        routes.MapGet("/reasons", GetReasons).WithName("getReasons");
        routes.MapGet("/limits", ListLimits).WithName("listLimits").Takes(InForceOn, ForFuel, Where, Paging.Limit, Paging.Next);
        routes.MapGet("/references", ListReferences).WithName("listReferences").Takes(Paging.Limit, Paging.Next);
    }

    /// <summary>List the rules of all sets, sorted by id.</summary>
    /// <remarks>Each with its set, what it demands or calls for, the laws and standards it rests on and since when it is in force. Limits and cases stand on a rule's own page.</remarks>
    private static Ok<Page<RuleView>> ListRules(HttpRequest request, RuleShelf shelf)
    {
        var (topic, set) = (Topic.Of(request), Set.Of(request));
        return TypedResults.Ok(shelf.All.Where(rule => (topic is null || rule.Topic == topic) && (set is null || rule.Set == set)).PageOf(request));
    }

    /// <summary>Read one rule with its limits and its cases.</summary>
    /// <remarks>The page to which a finding's documentation leads.</remarks>
    /// <param name="ruleId">Id of the rule, as in a finding.</param>
    private static Results<Ok<RuleView>, ProblemResult> GetRule(string ruleId, RuleShelf shelf) =>
        shelf.Find(ruleId) is { } rule ? TypedResults.Ok(rule) : ProblemResult.NotFound("There is no such rule.");

    /// <summary>List the rule sets that judge.</summary>
    /// <remarks>lawHash changes whenever what the rules demand does, in words or numbers, and is the same in every build; codeHash changes with the program. Each evaluation names both. lawHash can be worked out: it is SHA-256 over an object of ruleSet (id, version, countsFrom, knownFrom and reviewedOn as here), rules, limits, references and duties (all items of /v1/rules, of whose references only id and clause count, of /v1/limits, of /v1/references and of /v1/duties) and reasons (the answer of /v1/reasons), written as JSON in UTF-8 without blanks: members sorted by name and absent ones left out, the items of every list sorted by the text that they are written as, numbers in plain notation without needless zeros, in texts only the quotation mark, the backslash and U+0000 to U+001F escaped, the last as \u and four lower-case hexadecimal digits; sorted is by UTF-16 code units.</remarks>
    private static Ok<Page<RuleSetSummary>> ListRuleSets(HttpRequest request, ComplianceEngine engine)
    {
        var catalogue = engine.Catalogue;
        RuleSetSummary only = new()
        {
            Id = catalogue.Info.Id,
            Version = catalogue.Info.Version,
            CountsFrom = catalogue.Header.CountsFrom,
            LawHash = catalogue.Info.LawHash,
            CodeHash = catalogue.Info.CodeHash,
            KnownFrom = catalogue.Header.KnownFrom,
            ReviewedOn = catalogue.Header.ReviewedOn,
            Rules = catalogue.All.Count,
            Sets = [.. Enum.GetValues<SetOfRules>().Select(set => new SetCount { Set = set, Rules = catalogue.All.Count(rule => rule.Info.Set == set) })],
            Limits = catalogue.Limits.Definitions.Count,
            Overrides = catalogue.Limits.Overrides.Count,
            References = catalogue.References.Documents.Count,
        };
        return TypedResults.Ok(new[] { only }.PageOf(request));
    }

    /// <summary>List the kinds of duty.</summary>
    /// <remarks>What a visit can owe, in the order in which an answer shows it. A rule of the set duties calls for parts of them, a demand serves parts of them.</remarks>
    private static Ok<Page<DutyKind>> ListDuties(HttpRequest request, ComplianceEngine engine) => TypedResults.Ok(engine.Catalogue.DutyKinds.PageOf(request));

    /// <summary>Read which reason counts for what was not done.</summary>
    /// <remarks>A reason of work.notDone excuses only what has a row here, and only under its conditions; what it excuses is an advisory, and never met.</remarks>
    private static Ok<ReasonBook> GetReasons(ComplianceEngine engine) => TypedResults.Ok(engine.Catalogue.Reasons);

    /// <summary>List the limits.</summary>
    /// <remarks>Value, unit, where and when each applies, who set it, and whether the figure was read in its source (verified). Those of the deployer come last. The filters leave out what cannot apply.</remarks>
    private static Ok<Page<LimitDefinition>> ListLimits(HttpRequest request, ComplianceEngine engine)
    {
        var day = InForceOn.Of(request);
        var fuel = ForFuel.Of(request);
        var jurisdiction = Where.Of(request);
        return TypedResults.Ok(engine.Catalogue.Limits.Definitions.Concat(engine.Catalogue.Limits.Overrides)
            .Where(limit => !(limit.InForceFrom > day) && !(limit.InForceTo < day))
            .Where(limit => fuel is null || limit.Fuels?.Contains(WireNames.Of(fuel.Value), StringComparer.Ordinal) != false)
            .Where(limit => jurisdiction is null || limit.Jurisdictions?.Contains(jurisdiction, StringComparer.Ordinal) != false)
            .PageOf(request));
    }

    /// <summary>List the laws and standards that rules rest on.</summary>
    /// <remarks>Each with the clauses that are covered, and with those that are not and why. Titles and dates only: the documents themselves are their publishers'.</remarks>
    private static Ok<Page<ReferenceDocument>> ListReferences(HttpRequest request, ComplianceEngine engine) =>
        TypedResults.Ok(engine.Catalogue.References.Documents.PageOf(request));
}
