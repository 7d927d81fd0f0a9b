using Findings;
using Wire;
using Wording;

namespace ComplianceApi.Commands.Terminal;

/// <summary>An evaluation for a terminal, in the words of the pages: what is dangerous first, then the open questions, then advice.</summary>
internal static class EvaluationText
{
    private const int HeadWidth = 10;

    /// <summary>Writes <paramref name="evaluation"/> of the record at <paramref name="place"/>.</summary>
    public static void Write(Sheet sheet, Evaluation evaluation, string place)
    {
        var word = WireNames.Of(evaluation.Outcome);
        sheet.Wrapped("", $"{place}, record {evaluation.RecordId}, judged by the law of {Say.Day(evaluation.AsOf)}");
        sheet.Wrapped($"{word.ToUpperInvariant()}  ", OutcomeWords.Verdict(evaluation.Outcome), headStyle: Sheet.StyleOf(word));
        sheet.Wrapped("", OutcomeWords.Closing(evaluation.Closing));
        sheet.Wrapped("", CountsOf(evaluation.Counts));

        Dangers(sheet, evaluation.Situation);
        Findings(sheet, "ACT ON THIS", evaluation, Outcome.Unsafe);
        Findings(sheet, "RULES THAT COULD NOT BE RUN", evaluation, Outcome.Error);
        Questions(sheet, evaluation.Missing);
        NotLookedAt(sheet, evaluation.NotLookedAt);
        Findings(sheet, "TO MIND", evaluation, Outcome.Advisory);
        if (evaluation.Due.Count > 0)
        {
            Section(sheet, "COMING DUE");
            foreach (var due in evaluation.Due)
                sheet.Wrapped("  ", due.BeforeUse == true ? Say.Sentence(due.What) : $"By {Say.Day(due.By)}: {due.What}");
        }

        Section(sheet, "CAUTIONS");
        foreach (var caution in evaluation.Cautions)
            sheet.Wrapped("  - ", caution);
        sheet.Blank();
    }

    /// <summary>What was found, what to mind and to do; and where it comes from, unless it is to be brief.</summary>
    public static void WriteFinding(Sheet sheet, Finding finding, bool isBrief = false)
    {
        var word = WireNames.Of(finding.Outcome);
        sheet.Wrapped($"  {word.ToUpperInvariant(),-HeadWidth}", Say.Sentence(finding.Message ?? finding.Title), headStyle: Sheet.StyleOf(word));
        if (finding.ExpectedClass is { } expected)
            Line("Class", $"{OutcomeWords.Class(expected)} would be expected; the engineer on site decides, and this never lowers the engineer's own class.");
        Line("Mind", finding.Caution);
        Line("Do", finding.Remedy);
        if (!isBrief)
            WriteGrounds(finding, Line);
        Line("Rule", $"{finding.RuleId}, on {Say.Place(finding.Subject)}");
        sheet.Blank();

        void Line(string head, string? text) => sheet.Wrapped($"  {head,-HeadWidth}", text);
    }

    private static void WriteGrounds(Finding finding, Action<string, string?> line)
    {
        if (finding.Conformity is { } conformity)
            line("Sureness", $"{Say.Share(conformity)} that the true value conforms, by the stated accuracy of the instrument.");
        if (finding.Limit is { } limit)
            line("Limit", LimitOf(limit));
        if (finding.Loosened == true)
            line("Loosened", "A limit was read here that the organisation running this service has loosened.");
        if (finding.References is { Count: > 0 } references)
            line("Rests on", string.Join("; ", references.Select(reference => reference.Clause is { } clause ? $"{reference.Title}, {clause}" : reference.Title)));
    }

    /// <summary>A limit with whose it is.</summary>
    public static string LimitOf(Limit limit) =>
        $"{OutcomeWords.Limit(limit)}: {limit.Source} ({OutcomeWords.Origin(limit.Origin)}{(limit.Verified ? "" : $"; {OutcomeWords.Known(limit.Strength, limit.ReadOn)}")})";

    /// <summary>The counts in words.</summary>
    public static string CountsOf(OutcomeCounts counts) => string.Join(", ", new[]
    {
        (counts.Unsafe, "unsafe"), (counts.Error, "failed to run"), (counts.Missing, "missing"), (counts.NotLookedAt, "not looked at"), (counts.Advisory, "advisory"), (counts.Pass, "met"), (counts.NotApplicable, "not applicable"),
    }.Where(one => one.Item1 > 0).Select(one => $"{Say.Count(one.Item1)} {one.Item2}"));

    /// <summary>Numbered in the order in which they can be answered.</summary>
    public static void Questions(Sheet sheet, IReadOnlyList<MissingItem> missing)
    {
        if (missing.Count == 0)
            return;

        Section(sheet, "QUESTIONS THAT THE RECORD LEAVES OPEN");
        var asked = missing.CountBy(item => item.Ask, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        var number = 0;
        foreach (var group in missing.GroupBy(item => item.WhileOnSite))
        {
            sheet.Wrapped("  ", group.Key ? "While on site:" : "Can be answered later:");
            foreach (var item in group)
                sheet.Wrapped($"  {++number,4}. ", (asked[item.Ask] > 1 ? $"{item.Ask} ({Say.Place(item.Pointer)})" : item.Ask) + (item.Because is [var cause, ..] ? $" (because of: {cause})" : ""));
        }
    }

    private static void Dangers(Sheet sheet, Situation? situation)
    {
        if (situation is null)
            return;

        Section(sheet, "DANGERS, AND WHAT WAS DONE ABOUT THEM");
        sheet.Wrapped("  ", OutcomeWords.Situation(situation));
        foreach (var danger in situation.Dangers)
        {
            var where = danger.IsolatedAt is { } at ? $", isolated at: {Say.Value(at)}" : "";
            sheet.Wrapped("  - ", $"{Say.Upper(Say.Place(danger.Subject))} ({danger.RuleId}): {OutcomeWords.Of(danger.State)}{where}; what it calls for is {(danger.Handled ? "all recorded" : "not all recorded")}.");
        }
    }

    private static void NotLookedAt(Sheet sheet, IReadOnlyList<MissingItem> items)
    {
        if (items.Count == 0)
            return;

        Section(sheet, "NOT LOOKED AT, AND GOOD PRACTICE");
        foreach (var item in items)
            sheet.Wrapped("  - ", item.Ask);
    }

    private static void Findings(Sheet sheet, string heading, Evaluation evaluation, Outcome outcome)
    {
        var found = evaluation.Findings.Where(finding => finding.Outcome == outcome).ToList();
        if (found.Count == 0)
            return;

        Section(sheet, heading);
        foreach (var finding in found)
            WriteFinding(sheet, finding);
    }

    private static void Section(Sheet sheet, string heading)
    {
        sheet.Blank();
        sheet.Heading(heading);
    }
}
