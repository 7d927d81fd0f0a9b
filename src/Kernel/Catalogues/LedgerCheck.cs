namespace Kernel.Catalogues;

/// <summary>The coverage ledger in references.json and the citations of the rules must say the same, both ways.</summary>
internal static class LedgerCheck
{
    /// <summary>The document under which rules of common practice stand.</summary>
    public const string CommonPractice = "COMMON-PRACTICE";

    public static IEnumerable<string> Faults(RuleCatalogue catalogue) => catalogue.References.Documents.SelectMany(FaultsOf)
        .Concat(Claimed(catalogue).Except(Cited(catalogue)).Select(line => $"references.json says that {line}, and the rule does not cite it"))
        .Concat(Cited(catalogue).Except(Claimed(catalogue)).Select(line => $"the rule says that {line}, and references.json does not list it"));

    private static IEnumerable<string> FaultsOf(ReferenceDocument document)
    {
        if (document.Clauses.Count == 0)
            yield return $"references.json lists no clause of {document.Id}, covered or not";

        foreach (var entry in document.Clauses)
        {
            if (new object?[] { entry.Rules, entry.NotAutomatable, entry.NotYet }.Count(part => part is not null) != 1)
                yield return $"references.json must say of {document.Id} {entry.Clause} '{entry.Subject}' exactly one of rules, notAutomatable and notYet";
            if (entry.Rules is [] || entry.Rules?.Distinct(StringComparer.Ordinal).Count() < entry.Rules?.Count)
                yield return $"references.json lists no rule, or one twice, at {document.Id} {entry.Clause} '{entry.Subject}'";
        }
    }

    private static IEnumerable<Line> Claimed(RuleCatalogue catalogue) =>
        from document in catalogue.References.Documents
        from entry in document.Clauses
        from rule in entry.Rules ?? []
        select new Line(document.Id, entry.Clause, rule);

    private static IEnumerable<Line> Cited(RuleCatalogue catalogue) => catalogue.Rules.Select(rule => rule.Info).SelectMany(info => info.Citations
        .Select(citation => new Line(citation.Reference, citation.Clause, info.Id))
        .Concat(info.IsCommonPractice ? [new Line(CommonPractice, null, info.Id)] : []));

    private sealed record Line(string Document, string? Clause, string RuleId)
    {
        public override string ToString() => $"{RuleId} rests on {Document}{(Clause is null ? "" : $" {Clause}")}";
    }
}
