using Findings;

namespace Kernel.Catalogues;

/// <summary>The gaps for which the service refuses to start.</summary>
internal static class CatalogueCheck
{
    private static readonly Type[] AskedKinds = [typeof(FirstPassRule), typeof(InferenceRule), typeof(SituationRule), typeof(DutyFactRule), typeof(VisitCallRule), typeof(FactCallRule)];

    /// <summary>
    /// An instance of every rule among <paramref name="types"/>, and the rows of every table; one that the engine's scan would skip in silence
    /// is refused.
    /// </summary>
    public static IReadOnlyList<IComplianceRule> InstantiateRules(IReadOnlyList<Type> types)
    {
        var rules = Of<IComplianceRule>(types);
        var tables = Of<IRuleTable>(types);
        var hidden = rules.Concat(tables).Where(type => !type.IsPublic).Select(type => $"{type.FullName} is a rule or a table of rules and must be public and not nested").ToList();
        if (hidden.Count > 0)
            throw new CatalogueException(hidden);

        var unasked = rules.Where(type => !AskedKinds.Any(kind => kind.IsAssignableFrom(type)))
            .Select(type => $"{type.FullName} is a rule of no kind that the engine asks").ToList();
        if (unasked.Count > 0)
            throw new CatalogueException(unasked);

        return [.. rules.Select(type => (IComplianceRule)Activator.CreateInstance(type)!), .. tables.SelectMany(type => ((IRuleTable)Activator.CreateInstance(type)!).Rows)];
    }

    /// <summary>An instance of every class of the kind <typeparamref name="T"/> among <paramref name="types"/>.</summary>
    public static IEnumerable<T> InstancesOf<T>(IReadOnlyList<Type> types) => Of<T>(types).Select(type => (T)Activator.CreateInstance(type)!);

    private static List<Type> Of<T>(IEnumerable<Type> types) => [.. types.Where(type => typeof(T).IsAssignableFrom(type) && !type.IsAbstract)];

    /// <param name="catalogue">What is checked.</param>
    /// <param name="isWhole">Whether it holds every rule of its assembly; only then can the ledger be held against it.</param>
    public static void Demand(RuleCatalogue catalogue, bool isWhole)
    {
        var gaps = Gaps(catalogue).Concat(isWhole ? Ledger.Faults(catalogue) : []).ToList();
        if (gaps.Count > 0)
            throw new CatalogueException(gaps);
    }

    private static IEnumerable<string> Gaps(RuleCatalogue catalogue)
    {
        if (catalogue.Rules.Count == 0)
            yield return "the catalogue holds no rule";
        if (!IsWord(catalogue.Header.Id) || !IsWord(catalogue.Header.Version))
            yield return "rule-set.json gives no id or no version, or one with a blank in it";
        if (!catalogue.JurisdictionCodes.Contains(catalogue.Header.UsualJurisdiction, StringComparer.Ordinal))
            yield return $"rule-set.json names the jurisdiction '{catalogue.Header.UsualJurisdiction}', whose law the rules do not hold";
        if (catalogue.Header.Cautions.Count == 0 || catalogue.Header.Cautions.Any(string.IsNullOrWhiteSpace))
            yield return "rule-set.json gives no cautions, or an empty one: every answer carries them";
        foreach (var twins in catalogue.JurisdictionCodes.GroupBy(code => code, StringComparer.Ordinal).Where(group => group.Skip(1).Any()))
            yield return $"two folders are of the jurisdiction '{twins.Key}'";
        foreach (var code in catalogue.JurisdictionCodes.Where(code => !catalogue.References.Documents.Any(document => document.Jurisdictions.Contains(code, StringComparer.Ordinal))))
            yield return $"no document of references.json is of the jurisdiction '{code}': its law is not held";
        if (catalogue.Limits.Definitions.Count == 0)
            yield return "limits.json holds no limit";

        foreach (var twins in catalogue.All.GroupBy(rule => rule.Info.Id, StringComparer.Ordinal).Where(group => group.Skip(1).Any()))
            yield return $"the id '{twins.Key}' belongs to {string.Join(" and ", twins.Select(rule => rule.Info.Name))}";

        foreach (var part in PartsCalledFor(catalogue).Distinct(StringComparer.Ordinal).Where(part => catalogue.KindOf(part) < 0))
            yield return $"'{part}' is no part of a duty that duties.json names";

        foreach (var fault in LimitProof.Faults(catalogue.Limits, catalogue.Model.Fuels, catalogue.JurisdictionCodes))
            yield return fault;

        foreach (var gap in catalogue.All.SelectMany(rule => GapsOf(rule, catalogue).Select(gap => $"{rule.Info.Name} {gap}")))
            yield return gap;
    }

    private static IEnumerable<string> PartsCalledFor(RuleCatalogue catalogue) =>
        catalogue.DutyRules.OfType<DutyCallRule>().SelectMany(rule => rule.Calls).SelectMany(call => call.Parts);

    private static bool IsWord(string text) => text.Length > 0 && !text.Any(char.IsWhiteSpace);

    private static IEnumerable<string> GapsOf(IComplianceRule rule, RuleCatalogue catalogue)
    {
        var info = rule.Info;
        if (info.Id.Length == 0)
            yield return "has no id ([Id])";
        if (info.Title.Length == 0)
            yield return "has no title ([Title])";
        if (!Topics.All.Contains(info.Topic, StringComparer.Ordinal))
            yield return $"has no known topic ('{info.Topic}')";
        if (string.IsNullOrWhiteSpace(info.Coverage?.Why))
            yield return "does not say how far it covers its demand ([Coverage])";
        foreach (var citation in info.Citations.Where(citation => catalogue.References.Find(citation.Reference) is null))
            yield return $"cites '{citation.Reference}', which references.json does not know";
        if (rule is DutyRule duty ? catalogue.DutyCases[duty].Count == 0 : rule is not SituationRule && catalogue.Cases[rule].Count == 0)
            yield return $"has no cases ({info.Name}.cases.json)";
        foreach (var gap in rule is DutyRule or SituationRule ? [] : GapsOfAnAnswer(rule, catalogue))
            yield return gap;
    }

    /// <summary>What a rule lacks that answers about a record, besides what is asked of every rule.</summary>
    private static IEnumerable<string> GapsOfAnAnswer(IComplianceRule rule, RuleCatalogue catalogue)
    {
        var info = rule.Info;
        if (info.Why.Length == 0)
            yield return "does not say why it is asked ([Why])";
        foreach (var limit in info.Uses.Where(limit => !catalogue.Limits.Knows(limit)))
            yield return $"uses the limit '{limit}', which limits.json does not have";
        if (info.Citations.Count == 0 && !info.IsCommonPractice)
            yield return "cites nothing and is not marked [CommonPractice]";
        if (info.InForceFrom > info.InForceTo)
            yield return "goes out of force before it comes into force";
        foreach (var pointer in info.AppliesBy.Append(info.Expects).OfType<string>().Where(pointer => !catalogue.Model.Has(pointer)))
            yield return $"names '{pointer}', which no record has";

        foreach (var gap in (rule as FirstPassRule)?.Gaps ?? [])
            yield return gap;
    }
}

/// <summary>The rule set is not whole.</summary>
public sealed class CatalogueException(IReadOnlyList<string> gaps)
    : Exception($"The rule set is not whole, so nothing is judged: {string.Join("; ", gaps)}.")
{
    /// <summary>Every gap.</summary>
    public IReadOnlyList<string> Gaps { get; } = gaps;
}
