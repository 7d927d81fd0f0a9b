using System.Reflection;
using RuleEngine;
using Rules;
using Rules.Tests;

namespace Mutation;

/// <summary>Switches one mutant on at a time and runs the cases that it may break.</summary>
internal sealed class Trial
{
    private const int Off = -1;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly FieldInfo _active = typeof(RuleIds).Assembly.GetTypes().Single(type => type.Name == "MutantControl").GetField("ActiveMutant")!;
    private readonly CasesTests _cases = new();
    private readonly ILookup<string, (string Rule, Action Run)> _byFile;

    public Trial()
    {
        _active.SetValue(null, Off);
        var files = RuleCatalogue.Of(typeof(RuleIds).Assembly).Rules.ToDictionary(rule => rule.Info.Id, rule => $"{rule.GetType().Name}.cs", StringComparer.Ordinal);
        EveryCase =
        [
            .. CasesOf(CasesTests.Alone, _cases.Rule_says_what_its_case_expects),
            .. CasesOf(CasesTests.Inferred, _cases.Inference_says_what_its_case_expects),
        ];
        _byFile = EveryCase.ToLookup(one => files[one.Rule], StringComparer.Ordinal);
    }

    /// <summary>Every case of every rule.</summary>
    public IReadOnlyList<(string Rule, Action Run)> EveryCase { get; }

    /// <summary>killed, timeout or survived. The rule's own cases are run; for what is no rule's file, those of all rules.</summary>
    public string Of(Mutant mutant)
    {
        var own = _byFile[Path.GetFileName(mutant.File)].ToList();
        var cases = own.Count > 0 ? own : EveryCase;
        _active.SetValue(null, mutant.Id);
        var run = Task.Run(() => FailureOf(cases));
        var ended = run.Wait(Patience);
        _active.SetValue(null, Off);
        if (!ended)
            return "timeout";

        // What one mutant may have left behind must not count against the next.
        return run.Result is null ? "survived" : FailureOf(cases) is { } left ? throw new InvalidOperationException($"{mutant}: {left} after it was switched off.") : "killed";
    }

    /// <summary>The first case that fails; null when none does.</summary>
    public string? FailureOf(IEnumerable<(string Rule, Action Run)> cases)
    {
        foreach (var (rule, run) in cases)
        {
            try
            {
                run();
            }
            catch (Exception fault)
            {
                return $"{rule}: {fault.Message}";
            }
        }

        return null;
    }

    private static IEnumerable<(string Rule, Action Run)> CasesOf(IEnumerable<object[]> rows, Action<string, string> test) =>
        rows.Select(row => ((string)row[0], (Action)(() => test((string)row[0], (string)row[1]))));
}
