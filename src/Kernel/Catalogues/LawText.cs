using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Wire;

namespace Kernel.Catalogues;

/// <summary>
/// What a rule set demands, in words and numbers, as one text: the same whoever compiles it, in whatever order and spacing its files are
/// written, and another as soon as a demand, a limit, a citation or a day is.
/// </summary>
/// <remarks>
/// The text is one JSON object in UTF-8 without byte order mark, without blanks or line breaks between tokens. Its members:
/// <list type="bullet">
/// <item><c>ruleSet</c>: id, version, countsFrom, knownFrom and reviewedOn, as an item of <c>/v1/rule-sets</c> has them.</item>
/// <item><c>rules</c>: every rule of every set as an item of <c>/v1/rules</c>, of its references only id and clause.</item>
/// <item><c>limits</c>: every limit, shipped or of the deployer, as an item of <c>/v1/limits</c>.</item>
/// <item><c>references</c>: every law and standard with its clauses, as an item of <c>/v1/references</c>.</item>
/// <item><c>duties</c>: every kind of duty, as an item of <c>/v1/duties</c>.</item>
/// <item><c>reasons</c>: which reason counts for what was not done, as <c>/v1/reasons</c>.</item>
/// </list>
/// Members, numbers, days and texts are written as in <see cref="CanonicalText"/>. No order means anything here, so the items of every list
/// are sorted by the text that they are written as, comparing UTF-16 code units.
/// </remarks>
internal static class LawText
{
    /// <summary>SHA-256 over the text, lower-case hex.</summary>
    public static string HashOf(Law law) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Of(law))));

    /// <summary>The text.</summary>
    public static string Of(Law law)
    {
        var calling = law.Calling.ToDictionary(rule => rule.Info);
        var header = law.Header;
        var text = new
        {
            ruleSet = new { header.Id, header.Version, header.CountsFrom, header.KnownFrom, header.ReviewedOn },
            rules = law.Rules.Select(rule => Shown(rule, calling.GetValueOrDefault(rule))),
            limits = law.Limits.Definitions.Concat(law.Limits.Overrides),
            references = law.References.Documents,
            duties = law.Duties,
            reasons = law.Reasons,
        };
        return Canonical(JsonSerializer.SerializeToNode(text, CatalogueJson.Options)!);
    }

    private static object Shown(RuleInfo rule, DutyCallRule? calling) => new
    {
        rule.Id,
        rule.Set,
        rule.Title,
        Why = rule.Why.Length > 0 ? rule.Why : null,
        rule.Uses,
        rule.Topic,
        CommonPractice = rule.IsCommonPractice,
        rule.Coverage!.Coverage,
        CoverageWhy = rule.Coverage.Why,
        InForceFrom = rule.InForceFrom == DateOnly.MinValue ? (DateOnly?)null : rule.InForceFrom,
        InForceTo = rule.InForceTo == DateOnly.MaxValue ? (DateOnly?)null : rule.InForceTo,
        rule.AppliesBy,
        rule.Expects,
        Serves = rule.Serves.Select(serves => new { serves.Part, serves.AtMost, serves.Of }),
        rule.AlsoRecordedAt,
        CalledBy = calling?.Pointer,
        Calls = calling?.Calls.Select(call => new { call.Weight, call.Parts, call.Pointer, call.Where, PutOffAgain = call.IsPutOffAgain ? true : (bool?)null }),
        References = rule.Citations.Select(citation => new { Id = citation.Reference, citation.Clause }),
    };

    private static string Canonical(JsonNode node) => node switch
    {
        JsonObject members => $"{{{string.Join(',', members.OrderBy(member => member.Key, StringComparer.Ordinal)
            .Where(member => member.Value is not null).Select(member => $"{CanonicalText.Quote(member.Key)}:{Canonical(member.Value!)}"))}}}",
        JsonArray items => $"[{string.Join(',', items.Select(item => Canonical(item!)).Order(StringComparer.Ordinal))}]",
        _ => node.GetValueKind() switch
        {
            JsonValueKind.String => CanonicalText.Quote(node.GetValue<string>()),
            JsonValueKind.Number => NumberOf(node.GetValue<decimal>()),
            _ => node.ToJsonString(),
        },
    };

    private static string NumberOf(decimal number)
    {
        Span<byte> utf8 = stackalloc byte[CanonicalText.LongestNumber];
        return Encoding.UTF8.GetString(utf8[..CanonicalText.Write(number, utf8)]);
    }
}

/// <summary>All that a rule set demands.</summary>
internal sealed record Law
{
    /// <summary>What it says of itself.</summary>
    public required RuleSetHeader Header { get; init; }

    /// <summary>The rules of every set.</summary>
    public required IReadOnlyList<RuleInfo> Rules { get; init; }

    /// <summary>Those of them that call for duties.</summary>
    public required IReadOnlyList<DutyCallRule> Calling { get; init; }

    /// <summary>The limits.</summary>
    public required LimitBook Limits { get; init; }

    /// <summary>The laws and standards.</summary>
    public required ReferenceBook References { get; init; }

    /// <summary>The kinds of duty.</summary>
    public required IReadOnlyList<DutyKind> Duties { get; init; }

    /// <summary>Which reason counts for what was not done.</summary>
    public required ReasonBook Reasons { get; init; }
}
