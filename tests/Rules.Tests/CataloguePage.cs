using System.Globalization;
using System.Text;
using Findings;
using Kernel;
using Kernel.Catalogues;
using Wire;

namespace Rules.Tests;

/// <summary>Writes rules/CATALOGUE.md from the rules, their cases and the ledger.</summary>
internal static class CataloguePage
{
    public static string Of(RuleCatalogue catalogue)
    {
        var rules = catalogue.Rules.Select(rule => rule.Info).ToList();
        var counts = string.Join(", ", Enum.GetValues<SetOfRules>().Select(set => string.Create(CultureInfo.InvariantCulture, $"{catalogue.All.Count(rule => rule.Info.Set == set)} of the set {WireNames.Of(set)}")));
        var page = new StringBuilder();
        Line(page, $"# The rule set");
        Line(page, $"");
        Line(page, $"Generated from the rules, their cases and the coverage ledger (`references.json`); a test fails when it is stale. {catalogue.All.Count} rules ({counts}), {catalogue.Cases.Sum(entry => entry.Value.Count) + catalogue.DutyCases.Sum(entry => entry.Value.Count)} cases, {catalogue.Limits.Definitions.Count} lines of limits, {catalogue.References.Documents.Count} documents.");
        Line(page, $"");
        Line(page, $"**Covers** says how far a rule covers its own demand, the record being true. *full*: it finds every breach and nothing else. *may over-report*: it can find fault where the demand is met. *may under-report*: a breach can pass it. {Counts(rules)}.");
        foreach (var topic in Topics.All.Where(topic => rules.Exists(rule => rule.Topic == topic)))
        {
            Line(page, $"");
            Line(page, $"## {Words(topic)}");
            Line(page, $"");
            Line(page, $"| rule | set | demands | why | limits | rests on | covers | cases |");
            Line(page, $"|---|---|---|---|---|---|---|---|");
            foreach (var rule in catalogue.Rules.Where(rule => rule.Info.Topic == topic))
                Line(page, $"| `{rule.Info.Id}`{InForce(rule.Info)} | {WireNames.Of(rule.Info.Set)} | {rule.Info.Title} | {rule.Info.Why} | {string.Join(", ", rule.Info.Uses.Select(id => $"`{id}`"))} | {RestsOn(rule.Info)} | {Covers(rule.Info.Coverage!)} | {catalogue.Cases[rule].Count} |");
        }

        Line(page, $"");
        Line(page, $"# What a visit owes, and because of what");
        Line(page, $"");
        Line(page, $"Rules of the set duties. A part stands behind its kind of duty; *later*: it is put off until the boiler is used again.");
        Line(page, $"");
        Line(page, $"| rule | set | called by | calls for | rests on | covers | cases |");
        Line(page, $"|---|---|---|---|---|---|---|");
        foreach (var rule in catalogue.DutyRules)
            Line(page, $"| `{rule.Info.Id}` | {WireNames.Of(rule.Info.Set)} | {rule.Info.Title} | {CallsFor(rule as DutyCallRule)} | {RestsOn(rule.Info)} | {Covers(rule.Info.Coverage!)} | {catalogue.DutyCases[rule].Count} |");
        Line(page, $"");
        Line(page, $"# What becomes of each danger");
        Line(page, $"");
        Line(page, $"Rules of the set situation that infer; those that conclude stand with their topic.");
        Line(page, $"");
        Line(page, $"| rule | set | infers | covers |");
        Line(page, $"|---|---|---|---|");
        foreach (var rule in catalogue.SituationRules)
            Line(page, $"| `{rule.Info.Id}` | {WireNames.Of(rule.Info.Set)} | {rule.Info.Title} | {Covers(rule.Info.Coverage!)} |");

        Line(page, $"");
        Line(page, $"# What is covered of each law and standard");
        foreach (var document in catalogue.References.Documents)
        {
            Line(page, $"");
            Line(page, $"## {document.Id}");
            Line(page, $"");
            Line(page, $"{document.Title} ({document.Kind}; {string.Join(", ", document.Jurisdictions)}{Days(document.InForceFrom, document.InForceTo)})");
            Line(page, $"");
            Line(page, $"| clause | about | covered by, or why not |");
            Line(page, $"|---|---|---|");
            foreach (var entry in document.Clauses)
                Line(page, $"| {entry.Clause} | {entry.Subject} | {CoveredBy(entry)} |");
        }

        return page.ToString();
    }

    private static string Counts(IReadOnlyCollection<RuleInfo> rules) =>
        string.Join(", ", Enum.GetValues<Coverage>().Select(coverage => string.Create(CultureInfo.InvariantCulture, $"{rules.Count(rule => rule.Coverage!.Coverage == coverage)} {Words(coverage)}")));

    private static string CallsFor(DutyCallRule? rule) => rule is null ? "nothing: it infers what was worked on" : string.Join("; ", rule.Calls
        .Select(call => $"{(call.Weight is { } weight ? WireNames.Of(weight) : "later")}{(call.Where is { } where ? $", where {where}" : "")}: {string.Join(", ", call.Parts.Select(part => $"`{part}`"))}"));

    private static string RestsOn(RuleInfo rule) => string.Join("; ", rule.Citations
        .Select(citation => citation.Clause is null ? citation.Reference : $"{citation.Reference} {citation.Clause}")
        .Concat(rule.IsCommonPractice ? ["common practice"] : []));

    private static string Covers(CoverageAttribute coverage) => $"{Words(coverage.Coverage)}: {coverage.Why}";

    private static string CoveredBy(LedgerEntry entry) => entry.Rules is { } rules
        ? string.Join(", ", rules.Select(rule => $"`{rule}`"))
        : entry.NotAutomatable is { } why ? $"not automatable: {why}" : $"not yet: {entry.NotYet}";

    private static string InForce(RuleInfo rule) => Days(
        rule.InForceFrom == DateOnly.MinValue ? null : rule.InForceFrom, rule.InForceTo == DateOnly.MaxValue ? null : rule.InForceTo);

    private static string Days(DateOnly? from, DateOnly? to) =>
        string.Create(CultureInfo.InvariantCulture, $"{(from is null ? "" : $", from {from:yyyy-MM-dd}")}{(to is null ? "" : $", to {to:yyyy-MM-dd}")}");

    private static string Words(Coverage coverage) => coverage switch
    {
        Coverage.Full => "full",
        Coverage.MayOverReport => "may over-report",
        _ => "may under-report",
    };

    private static string Words(string topic) =>
        string.Concat(topic.Select((letter, index) => index == 0 ? char.ToUpperInvariant(letter).ToString() : char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : letter.ToString()));

    private static void Line(StringBuilder page, FormattableString line) => page.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
