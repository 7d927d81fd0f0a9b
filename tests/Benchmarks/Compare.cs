using Benchmarks.OtherEngines;
using Kernel;
using SecondOpinion;
using SecondOpinion.Opinions;

namespace Benchmarks;

/// <summary>Our rules beside the same ones by hand, in another library, and (through files) in another language; every verdict compared.</summary>
internal static class Compare
{
    private const int Rounds = 60;

    /// <summary>Writes the month to a folder for the other language, times, and compares with the verdicts that it left there.</summary>
    public static int Run(string folder)
    {
        var records = Month.Records;
        File.WriteAllLines(Path.Combine(folder, "month.ndjson"), Month.Json.Select(json => System.Text.Encoding.UTF8.GetString(json)));

        var same = new SameRules();
        var ours = records.Select(same.VerdictsOfOurs).ToList();
        var others = records.Select(same.VerdictsOfOther).ToList();
        var isEqual = Report("the other .NET library", ours, others);
        var fromElsewhere = Path.Combine(folder, "verdicts.txt");
        if (File.Exists(fromElsewhere))
            isEqual &= Report("the engine in JavaScript", ours, File.ReadAllLines(fromElsewhere));

        var inferring = Month.Catalogue.Rules.OfType<InferenceRule>().Select(rule => rule.Info.Id).ToHashSet(StringComparer.Ordinal);
        var firstPass = records.Select(record => Month.Engine.AnswersTo(record).Where(finding => !inferring.Contains(finding.RuleId)).ToList()).ToList();
        Timed[] all =
        [
            new("read", i => Records.Reading.RecordReader.Read(Month.Json[i])),
            new($"ours, all {Month.Catalogue.Rules.Count} rules: evaluate", i => Month.Engine.Evaluate(records[i])),
            new($"ours, all {Month.Catalogue.Rules.Count} rules: answers", i => Month.Engine.AnswersTo(records[i])),
            new("by hand, all rules: outcomes only", i => ByHand(new Case(records[i], [], firstPass[i]))),
            new($"ours, {same.Count} rules: answers", i => same.Ours.AnswersTo(records[i])),
            new($"the other .NET library, {same.Count} rules", i => same.Other(records[i])),
            new($"ours, {same.Count} rules, on all cores", i => same.Ours.AnswersTo(records[i]), onAllCores: true),
            new($"the other .NET library, {same.Count} rules, on all cores", i => same.Other(records[i]), onAllCores: true),
        ];
        Timed.InTurns(Rounds, all);
        Timed.Print(all);
        return isEqual ? 0 : 1;
    }

    private static int ByHand(Case one)
    {
        var opinions = 0;
        foreach (var say in OpinionTable.All.Values)
        {
            foreach (var _ in say(one))
                opinions++;
        }

        return opinions;
    }

    private static bool Report(string whose, List<string> ours, IReadOnlyList<string> theirs)
    {
        var differing = ours.Zip(theirs).SelectMany((pair, record) => pair.First.Zip(pair.Second).Select((verdict, rule) => (record, rule, verdict)))
            .Where(entry => entry.verdict.First != entry.verdict.Second).ToList();
        Console.WriteLine($"{whose}: {ours.Count} records, {ours.Sum(line => line.Length)} verdicts, {differing.Count} differ {string.Join(' ', differing.Take(10))}");
        return differing.Count == 0 && ours.Count == theirs.Count;
    }
}
