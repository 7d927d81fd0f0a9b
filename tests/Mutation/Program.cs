using Mutation;

// Runs the cases of the rules against every mutant that dotnet-stryker has compiled into Rules.dll, in one process, since a test run for
// each of two thousand mutants takes hours. tests/long/mutation makes the assembly and the list of mutants.
// Usage: Mutation REPORT.json SOURCES [PART OF]
if (args.Length is not (2 or 4))
{
    Console.Error.WriteLine("Usage: Mutation REPORT.json SOURCES [PART OF]");
    return 2;
}

var (part, of) = args.Length == 4 ? (int.Parse(args[2], null), int.Parse(args[3], null)) : (0, 1);
var mutants = MutantList.Read(args[0]).Where(mutant => mutant.Id % of == part).ToList();
var trial = new Trial();
if (trial.FailureOf(trial.EveryCase) is { } broken)
{
    Console.Error.WriteLine($"Without a mutant a case fails already: {broken}");
    return 2;
}

foreach (var mutant in mutants)
    Console.WriteLine($"{trial.Of(mutant)}\t{mutant.File}\t{mutant.Line}\t{mutant.Kind}\t{mutant.Before}\t{mutant.After}");
return 0;
