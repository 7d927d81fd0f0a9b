using Findings;

namespace Kernel.Catalogues;

/// <summary>
/// The coverage ledger: what of each law and standard is covered, and by which rules. The rules cite, references.json gives each clause its
/// subject and says of what no rule covers why that is so.
/// </summary>
internal static class Ledger
{
    /// <summary>The document under which rules of common practice stand, together by topic.</summary>
    public const string CommonPractice = "COMMON-PRACTICE";

    /// <summary>The document with the rules that cite it.</summary>
    public static ReferenceDocument Filled(ReferenceDocument document, IReadOnlyList<RuleInfo> rules) => document with
    {
        Clauses = document.Id == CommonPractice
            ? [.. ByTopic(rules), .. document.Clauses]
            : [.. document.Clauses.Select(entry => IsCovered(entry) && Citing(rules, document.Id, entry.Clause) is { Count: > 0 } citing ? entry with { Rules = citing } : entry)],
    };

    /// <summary>What does not fit together.</summary>
    public static IEnumerable<string> Faults(RuleCatalogue catalogue)
    {
        foreach (var document in catalogue.References.Documents)
        {
            if (document.Clauses.Count == 0)
                yield return $"references.json lists no clause of {document.Id}, covered or not";
            foreach (var entry in document.Clauses.Where(entry => new object?[] { entry.Rules, entry.NotAutomatable, entry.NotYet }.Count(part => part is not null) != 1))
            {
                yield return IsCovered(entry)
                    ? $"no rule cites {Named(document, entry)}, and references.json does not say why none can or none does yet"
                    : $"references.json must say of {Named(document, entry)} only one of notAutomatable and notYet";
            }

            foreach (var twins in document.Clauses.Where(entry => entry.Rules is not null && document.Id != CommonPractice).GroupBy(entry => entry.Clause, StringComparer.Ordinal).Where(twins => twins.Skip(1).Any()))
                yield return $"references.json gives {document.Id} {twins.Key} two subjects for the rules that cite it";
        }

        foreach (var rule in catalogue.Rules.Select(rule => rule.Info))
        {
            foreach (var citation in rule.Citations.Where(citation => catalogue.References.Find(citation.Reference) is { } document && !document.Clauses.Any(entry => entry.Clause == citation.Clause && entry.Rules is not null)))
                yield return $"{rule.Id} cites {citation.Reference} {citation.Clause}, and references.json does not give that clause a subject";
        }
    }

    private static string Named(ReferenceDocument document, LedgerEntry entry) =>
        $"{document.Id}{(entry.Clause is null ? "" : " " + entry.Clause)} '{entry.Subject}'";

    private static bool IsCovered(LedgerEntry entry) => entry is { NotAutomatable: null, NotYet: null };

    private static List<string> Citing(IReadOnlyList<RuleInfo> rules, string document, string? clause) =>
        [.. rules.Where(rule => rule.Citations.Any(citation => citation.Reference == document && citation.Clause == clause)).Select(rule => rule.Id)];

    private static IEnumerable<LedgerEntry> ByTopic(IReadOnlyList<RuleInfo> rules) =>
        from topic in Topics.All
        let resting = rules.Where(rule => rule.IsCommonPractice && rule.Topic == topic).Select(rule => rule.Id).ToList()
        where resting.Count > 0
        select new LedgerEntry { Subject = string.Concat(topic.Select(letter => char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : $"{letter}")), Rules = resting };
}
