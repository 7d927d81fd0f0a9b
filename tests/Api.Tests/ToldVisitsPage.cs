using System.Globalization;
using System.Text;
using Findings;
using Wording;

namespace Api.Tests;

/// <summary>The page of the told visits.</summary>
internal static class ToldVisitsPage
{
    public static string Of(IReadOnlyList<ToldVisit> visits)
    {
        var page = new StringBuilder();
        page.Append("""
            # Three visits, told

            Made by `tests/rewrite`: what was done is told by the engineer, all else is what the running service answered. The records lie in `tests/records/told`; premises, people, makers and numbers are invented.

            > The service says what a record shows. It never says that a boiler is safe: that judgement is the registered engineer's on site. The maker's instructions and the law and codes in force where the boiler stands come first.

            """);
        foreach (var visit in visits)
            Tell(page, visit);
        page.Append("\n## Cautions\n");
        List(page, "The service says with each answer:", visits.SelectMany(visit => visit.Whole.Cautions).Distinct());
        return page.ToString();
    }

    private static void Tell(StringBuilder page, ToldVisit visit)
    {
        var (half, whole) = (visit.HalfFilled, visit.Whole);
        page.Append(CultureInfo.InvariantCulture, $"\n## {visit.Title}\n\n{string.Join("\n\n", visit.Done)}\n\n### What it called for, and why\n\n| duty | weight | because of | rests on | by the record |\n|---|---|---|---|---|\n");
        foreach (var duty in whole.Duties)
            page.Append(CultureInfo.InvariantCulture, $"| {Say.Sentence(duty.Title)} | {OutcomeWords.Of(duty.Weight)} | {string.Join("; ", duty.Because.Select(cause => cause.Words).Distinct())} | {string.Join("; ", duty.References.Select(Clause))} | {OutcomeWords.Of(duty.State)} |\n");

        page.Append(CultureInfo.InvariantCulture, $"\n### Half filled\n\nNot yet written: {string.Join("; ", visit.Later.Select(Say.Place))}. {Verdict(half)}\n");
        Dangers(page, half);
        page.Append("\nIt asked:\n\n");
        foreach (var (index, item) in half.Missing.Index())
            page.Append(CultureInfo.InvariantCulture, $"{index + 1}. {item.Ask}{(item.Because.Count > 0 ? $" Asked because of: {string.Join(", ", item.Because)}." : "")}\n");

        page.Append(CultureInfo.InvariantCulture, $"\n### At the end\n\n{Verdict(whole)}\n");
        Dangers(page, whole);
        List(page, "Points to mind:", whole.Findings.Where(finding => finding.Outcome == Outcome.Advisory).Select(finding => Say.Sentence(finding.Message!)));
        List(page, "Good practice, and not looked at:", whole.NotLookedAt.Select(item => item.Ask));
        List(page, "Coming up:", whole.Due.Select(due => $"{(due.BeforeUse == true ? Say.Sentence(due.What) : $"By {Say.Day(due.By)}: {due.What}.")}{(due.Reference is { } reference ? $" ({Clause(reference)})" : "")}"));
    }

    private static string Verdict(Evaluation said) =>
        $"**{Say.Upper(Wire.WireNames.Of(said.Outcome))}.** {OutcomeWords.Verdict(said.Outcome)} {OutcomeWords.Closing(said.Closing)}";

    private static void Dangers(StringBuilder page, Evaluation said)
    {
        if (said.Situation is not { } situation)
            return;
        List(page, $"{OutcomeWords.Situation(situation)} The dangers:", situation.Dangers.Select(danger =>
            $"{Say.Sentence(Found(said, danger).Message!)} {Say.Upper(OutcomeWords.Of(danger.State))}{(danger.IsolatedAt is { } at ? $", isolated at: {Say.Value(at)}" : "")}."));
        List(page, "What is dangerous, in the order of its weight:", said.Findings.Where(finding => finding.Outcome == Outcome.Unsafe).Select(finding =>
            $"{Say.Sentence(finding.Message!)}{(finding.Caution is { } caution ? $" {caution}" : "")}{(finding.Remedy is { } remedy ? $" {remedy}" : "")}"));
    }

    private static Finding Found(Evaluation said, Danger danger) => said.Findings.First(finding => finding.RuleId == danger.RuleId && finding.Subject == danger.Subject);

    private static void List(StringBuilder page, string head, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count > 0)
            page.Append(CultureInfo.InvariantCulture, $"\n{head}\n\n{string.Join('\n', all.Select(line => $"- {line}"))}\n");
    }

    private static string Clause(Reference reference) => reference.Clause is { } clause ? $"{reference.Id} {clause}" : reference.Id;
}
