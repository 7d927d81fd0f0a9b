using Findings;

namespace ComplianceApi;

/// <summary>An evaluation as plain text for a terminal: what is dangerous first, then what is missing, then advice.</summary>
internal static class EvaluationText
{
    private const int Width = 110;

    /// <summary>Writes <paramref name="evaluation"/> under the heading <paramref name="place"/>.</summary>
    public static void Write(TextWriter output, Evaluation evaluation, string place)
    {
        var counts = evaluation.Counts;
        output.WriteLine($"{place}: {evaluation.RecordId}, {Words(evaluation.Outcome)}");
        output.WriteLine($"  {counts.Unsafe} unsafe, {counts.Missing} missing, {counts.Advisory} advisory, {counts.Pass} passed, {counts.NotApplicable} not applicable, {counts.Error} failed to run");
        foreach (var finding in evaluation.Findings.Where(finding => finding.Outcome is Outcome.Unsafe or Outcome.Error or Outcome.Advisory))
            WriteFinding(output, finding);

        if (evaluation.Missing.Count > 0)
        {
            output.WriteLine("  What the record does not say:");
            foreach (var item in evaluation.Missing)
                output.WriteLine($"    {item.Pointer}  {item.Ask}");
        }

        foreach (var due in evaluation.Due)
            output.WriteLine($"  Due by {due.By:yyyy-MM-dd}: {due.What}");
        foreach (var caution in evaluation.Cautions)
            WriteWrapped(output, "  ", caution);
        output.WriteLine();
    }

    private static void WriteFinding(TextWriter output, Finding finding)
    {
        output.WriteLine($"  {finding.Outcome.ToString().ToUpperInvariant()}  {finding.RuleId}  {finding.Subject}");
        WriteWrapped(output, "    ", finding.Message);
        if (finding.Limit is { } limit)
            WriteWrapped(output, "    limit set by ", limit.Source);
        WriteWrapped(output, "    mind: ", finding.Caution);
        WriteWrapped(output, "    work: ", finding.Remedy);
        if (finding.References is { } references)
            WriteWrapped(output, "    rests on ", string.Join("; ", references.Select(reference => $"{reference.Title}, {reference.Clause ?? "as a whole"}")));
    }

    private static void WriteWrapped(TextWriter output, string head, string? text)
    {
        if (text is null)
            return;

        var line = head;
        foreach (var word in text.Split(' '))
        {
            if (line.Length + word.Length + 1 > Width)
            {
                output.WriteLine(line.TrimEnd());
                line = "      ";
            }

            line += word + " ";
        }

        output.WriteLine(line.TrimEnd());
    }

    private static string Words(OverallOutcome outcome) => outcome switch
    {
        OverallOutcome.Unsafe => "unsafe: the record shows a danger, or cannot exclude one",
        OverallOutcome.Incomplete => "incomplete: the record does not say enough",
        OverallOutcome.Advisory => "advisory: complete, with points to mind",
        _ => "pass: the record shows what the rules in force demand",
    };
}
