using System.Globalization;
using BenchmarkDotNet.Running;
using Benchmarks;

return args switch
{
    ["--quick"] => Quick.Run(),
    ["--quick", "duties"] => Quick.RunDuties(),
    ["--quick", "rules"] => Quick.RunRules(),
    ["--loop", var part, var seconds] => Quick.Loop(part, int.Parse(seconds, CultureInfo.InvariantCulture)),
    ["--compare", var folder] => Compare.Run(folder),
    ["--growth"] => Growth.Run(),
    ["--echo", var url, var answer] => Echo.Run(url, answer),
    _ => Switch(args),
};

static int Switch(string[] args)
{
    BenchmarkSwitcher.FromAssembly(typeof(Month).Assembly).Run(args);
    return 0;
}
