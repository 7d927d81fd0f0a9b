using Kernel;
using Kernel.Engine;

namespace Benchmarks;

/// <summary>How the time of a record grows with the rules.</summary>
internal static class Growth
{
    private const int Rounds = 12;

    public static int Run()
    {
        var types = new List<Type> { typeof(Copy<object>) };
        while (types.Count < 480)
            types.Add(typeof(Copy<>).MakeGenericType(types[^1].GetGenericArguments()[0] == typeof(object) ? typeof(List<object>) : typeof(List<>).MakeGenericType(types[^1].GetGenericArguments()[0])));

        var all = new List<Timed>();
        foreach (var count in (int[])[30, 60, 120, 240, 480])
        {
            var rules = new CompiledRules(types.Take(count).Select(type => (FirstPassRule)Activator.CreateInstance(type)!).ToList());
            all.Add(new Timed($"{count} rules of one kind", i => rules.Run([Month.Engine.VisitOf(Month.Records[i])])));
        }

        Timed.InTurns(Rounds, all);
        Timed.Print(all);
        return 0;
    }
}
