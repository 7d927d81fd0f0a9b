using System.Collections.Concurrent;
using System.Reflection;
using Kernel;
using Kernel.Catalogues;
using Rules;
using Rules.Tests;
using SecondOpinion.Tests;
using SecondOpinion.Tests.Records;
using Visits;
using Visits.Judging;

namespace Mutation;

/// <summary>Switches one mutant on at a time and runs what it may break: the cases of its rule, the second opinion on it, then other tests of the rules.</summary>
internal sealed class Trial
{
    private const int Off = -1, Records = 2000, RecordsOfAll = 200;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private static readonly FieldInfo Active = typeof(RuleIds).Assembly.GetTypes().Single(type => type.Name == "MutantControl").GetField("ActiveMutant")!;

    private readonly RuleCatalogue _catalogue;
    private readonly ComplianceEngine _all;
    private readonly ConcurrentDictionary<string, ComplianceEngine> _alone = new(StringComparer.Ordinal);
    private readonly List<GeneratedRecord> _records = [.. Enumerable.Range(0, Records).Select(RecordGenerator.Make)];
    private readonly ILookup<string, string> _rulesOfFile;
    private readonly IReadOnlyList<(string Name, Action Run)> _others;

    /// <summary>Of a mutant that is on from the start, which reaches what is worked out once for all; else of each in turn.</summary>
    public Trial(int? always = null)
    {
        Active.SetValue(null, always ?? Off);
        _catalogue = RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly);
        _all = ComplianceEngine.Start(_catalogue);
        _rulesOfFile = _catalogue.Rules.Where(rule => rule is not InferenceRule).ToLookup(FileOf, rule => rule.Info.Id, StringComparer.Ordinal);
        _others = [.. TestList.Of(typeof(ClearanceTableTests), typeof(DeadlineTests), typeof(InForceTests), typeof(UnsafeSituationTests), typeof(CombustionTests), typeof(DueDateTests), typeof(CorpusTests), typeof(BoundaryTests))];
        Cases = [.. TestList.Of(typeof(CasesTests))];
    }

    /// <summary>Every case of every rule.</summary>
    public IReadOnlyList<(string Name, Action Run)> Cases { get; }

    /// <summary>killed, timeout or survived.</summary>
    public string Of(Mutant mutant)
    {
        Active.SetValue(null, mutant.Id);
        var run = Task.Run(() => FailureUnder(mutant));
        var ended = run.Wait(Patience);
        Active.SetValue(null, Off);
        if (!ended)
            return "timeout";

        // What one mutant may have left behind must not count against the next.
        return run.Result is not { } failure ? "survived" : FailureUnder(mutant) is { } left ? throw new InvalidOperationException($"{mutant}: {left} after it was switched off.") : $"killed by {failure}";
    }

    /// <summary>What fails first among all that the mutant may break; null when nothing does.</summary>
    public string? FailureUnder(Mutant mutant)
    {
        var rules = _rulesOfFile[mutant.File].ToList();
        return FailureOf(rules.Count == 0 ? Cases : Cases.Where(one => rules.Any(rule => one.Name.Contains($"({rule},", StringComparison.Ordinal))))
            ?? OpinionAgainst(rules)
            ?? FailureOf(_others);
    }

    /// <summary>The first test that fails; null when none does.</summary>
    public static string? FailureOf(IEnumerable<(string Name, Action Run)> tests)
    {
        foreach (var (name, run) in tests)
        {
            try
            {
                run();
            }
            catch (Exception)
            {
                return name;
            }
        }

        return null;
    }

    /// <summary>The file of a rule, or of the table in which it is a row, from the folder of the rules.</summary>
    private static string FileOf(IComplianceRule rule)
    {
        var type = rule.Info.Member as Type ?? rule.Info.Member.DeclaringType!;
        return $"{string.Join('/', type.FullName!.Split('.').Skip(1))}.cs";
    }

    private string? OpinionAgainst(List<string> rules)
    {
        var engine = rules.Count > 0 ? _alone.GetOrAdd(string.Join(' ', rules), _ => ComplianceEngine.Start(_catalogue.With([.. _catalogue.Rules.Where(rule => rules.Contains(rule.Info.Id))]))) : _all;
        return _records.Take(rules.Count > 0 ? Records : RecordsOfAll).SelectMany(record => Comparison.Of(engine, record)).FirstOrDefault() is { } differs ? $"second opinion on {differs.RuleId}" : null;
    }
}
