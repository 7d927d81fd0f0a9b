using Findings;

namespace Kernel.Catalogues;

/// <summary>The known days on which rules, limits or documents change, for one fuel, or any, in one jurisdiction.</summary>
internal sealed class LawCalendar(RuleCatalogue catalogue, string? fuel, string jurisdiction)
{
    /// <summary>The first day after <paramref name="day"/> on which something changes, with what; null when nothing is known.</summary>
    public (DateOnly On, IReadOnlyList<LawChange> What)? After(DateOnly day) => Days()
        .Where(change => change > day)
        .Distinct()
        .Order()
        .Select(change => (On: change, What: On(change)))
        .Cast<(DateOnly On, IReadOnlyList<LawChange> What)?>()
        .FirstOrDefault(change => change!.Value.What.Count > 0);

    private IReadOnlyList<LawChange> On(DateOnly day) => [.. RulesOn(day), .. LimitsOn(day), .. DocumentsOn(day)];

    private IEnumerable<DateOnly> Days() => catalogue.Limits.Changes
        .Concat(catalogue.Rules.SelectMany(rule => DaysOf(rule.Info.InForceFrom, rule.Info.InForceTo)))
        .Concat(Periods().SelectMany(period => DaysOf(period.From, period.To)));

    private IEnumerable<LawChange> RulesOn(DateOnly day) => catalogue.Rules
        .Where(rule => rule.Info.IsInForce(day) != rule.Info.IsInForce(day.AddDays(-1)) && MayApplyHere(rule.Info))
        .Select(rule => Change(LawKind.Rule, rule.Info.Id, rule.Info.IsInForce(day), rule.Info.Title));

    /// <summary>A rule that rests on law of other places alone does not.</summary>
    private bool MayApplyHere(RuleInfo rule) => rule.Citations.Count == 0
        || rule.Citations.Any(citation => catalogue.References.Find(citation.Reference)!.Jurisdictions.Contains(jurisdiction, StringComparer.Ordinal));

    private IEnumerable<LawChange> LimitsOn(DateOnly day)
    {
        var before = catalogue.Limits.InForce(fuel, jurisdiction, day.AddDays(-1));
        var after = catalogue.Limits.InForce(fuel, jurisdiction, day);
        return before.Concat(after).Select(lines => lines.Key).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
            .Where(id => !before[id].SequenceEqual(after[id]))
            .Select(id => before.Contains(id) && after.Contains(id)
                ? new LawChange(LawKind.Limit, id, LawEvent.Changes, $"{after[id].First().What}: from {Bounds(before[id])} to {Bounds(after[id])}")
                : Change(LawKind.Limit, id, after.Contains(id), $"{before[id].Concat(after[id]).First().What}: {Bounds(before[id].Concat(after[id]))}"));
    }

    private IEnumerable<LawChange> DocumentsOn(DateOnly day) => Periods()
        .Where(period => day == period.From || day == period.To?.AddDays(1))
        .Select(period => Change(LawKind.Document, period.Id, day == period.From, period.Title));

    private IEnumerable<(string Id, string Title, DateOnly? From, DateOnly? To)> Periods() => catalogue.References.Documents
        .Where(document => document.Jurisdictions.Contains(jurisdiction, StringComparer.Ordinal))
        .SelectMany(document => (document.Editions ?? [])
            .Select(edition => (document.Id, $"{document.Title}, edition {edition.Edition}", edition.InForceFrom, edition.InForceTo))
            .Prepend((document.Id, document.Title, document.InForceFrom, document.InForceTo)));

    private static LawChange Change(LawKind kind, string id, bool begins, string what) =>
        new(kind, id, begins ? LawEvent.Begins : LawEvent.Ends, $"{(begins ? "comes into force" : "goes out of force")}: {what}");

    private static IEnumerable<DateOnly> DaysOf(DateOnly? from, DateOnly? to)
    {
        if (from is { } first)
            yield return first;
        if (to is { } last && last < DateOnly.MaxValue)
            yield return last.AddDays(1);
    }

    private static string Bounds(IEnumerable<LimitDefinition> lines) =>
        string.Join("; ", lines.Select(line => WireText.Sentence($"{(line.Min is { } min ? WireText.Sentence($"at least {min} ") : "")}{(line.Max is { } max ? WireText.Sentence($"at most {max} ") : "")}{line.Unit}")));
}
