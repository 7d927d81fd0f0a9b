using System.Diagnostics;
using Mutation;

// Runs the tests of the rules against every mutant that dotnet-stryker has compiled into Rules.dll, in one process, since a test run for
// each of two thousand mutants takes hours. tests/long/mutation makes the assembly and the list of mutants.
// Usage: Mutation REPORT.json [PART OF]; it calls itself with: REPORT.json alone ID
if (args is [var path, "alone", var id])
{
    var wanted = MutantList.Read(path).Single(mutant => mutant.Id == int.Parse(id, null));
    Console.WriteLine(new Trial(wanted.Id).FailureUnder(wanted) ?? "survived");
    return 0;
}

if (args is not ([_] or [_, _, _]))
{
    Console.Error.WriteLine("Usage: Mutation REPORT.json [PART OF]");
    return 2;
}

var (part, of) = args.Length == 3 ? (int.Parse(args[1], null), int.Parse(args[2], null)) : (0, 1);
var trial = new Trial();
if (Trial.FailureOf(trial.Cases) is { } broken)
{
    Console.Error.WriteLine($"Without a mutant this fails already: {broken}");
    return 2;
}

foreach (var mutant in MutantList.Read(args[0]).Where(mutant => mutant.Id % of == part))
{
    var said = trial.Of(mutant);
    if (said == "survived" && await AloneAsync(mutant) is var failure && failure != said)
        said = $"killed by {failure} (on from the start)";
    Console.WriteLine($"{said}\t{mutant.File}\t{mutant.Line}\t{mutant.Kind}\t{mutant.Before}\t{mutant.After}");
}

return 0;

async Task<string> AloneAsync(Mutant mutant)
{
    using var process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, [typeof(Trial).Assembly.Location, args[0], "alone", $"{mutant.Id}"]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
    _ = process.StandardError.ReadToEndAsync();
    var said = await process.StandardOutput.ReadToEndAsync();
    await process.WaitForExitAsync();
    return process.ExitCode == 0 ? said.Trim() : "the start";
}
