using BenchmarkDotNet.Running;
using Benchmarks;

if (args is ["--quick", ..])
    return Quick.Run(args[1..]);

BenchmarkSwitcher.FromAssembly(typeof(Month).Assembly).Run(args);
return 0;
