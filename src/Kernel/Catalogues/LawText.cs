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
/// <item><c>rules</c>: every rule as an item of <c>/v1/rules</c>, of its references only id and clause.</item>
/// <item><c>limits</c>: every limit, shipped or of the deployer, as an item of <c>/v1/limits</c>.</item>
/// <item><c>references</c>: every law and standard with its clauses, as an item of <c>/v1/references</c>.</item>
/// </list>
/// Members, numbers, days and texts are written as in <see cref="CanonicalText"/>. No order means anything here, so the items of every list
/// are sorted by the text that they are written as, comparing UTF-16 code units.
/// </remarks>
internal static class LawText
{
    /// <summary>SHA-256 over the text, lower-case hex.</summary>
    public static string HashOf(RuleSetHeader header, IEnumerable<RuleInfo> rules, LimitBook limits, ReferenceBook references) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Of(header, rules, limits, references))));

    /// <summary>The text.</summary>
    public static string Of(RuleSetHeader header, IEnumerable<RuleInfo> rules, LimitBook limits, ReferenceBook references)
    {
        var law = new
        {
            ruleSet = new { header.Id, header.Version, header.CountsFrom, header.KnownFrom, header.ReviewedOn },
            rules = rules.Select(Shown),
            limits = limits.Definitions.Concat(limits.Overrides),
            references = references.Documents,
        };
        return Canonical(JsonSerializer.SerializeToNode(law, CatalogueJson.Options)!);
    }

    private static object Shown(RuleInfo rule) => new
    {
        rule.Id,
        rule.Title,
        rule.Why,
        rule.Uses,
        rule.Topic,
        CommonPractice = rule.IsCommonPractice,
        rule.Coverage!.Coverage,
        CoverageWhy = rule.Coverage.Why,
        InForceFrom = rule.InForceFrom == DateOnly.MinValue ? (DateOnly?)null : rule.InForceFrom,
        InForceTo = rule.InForceTo == DateOnly.MaxValue ? (DateOnly?)null : rule.InForceTo,
        rule.AppliesBy,
        rule.Expects,
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
