using System.Reflection;
using Kernel;
using Mono.Cecil;
using Mono.Cecil.Cil;
using Rules.Law;
using Visits;
using Visits.Facts;

namespace Rules.Tests;

/// <summary>
/// Which limits the code of a rule can read: every id of a limit in its methods and in all that they call. A rule that is
/// asked for its judgement is not followed: it says for itself what it reads.
/// </summary>
internal sealed class LimitReads : IDisposable
{
    private readonly ModuleDefinition[] _modules;
    private readonly HashSet<string> _limits;
    private readonly Dictionary<string, TypeDefinition> _types;

    public LimitReads(IEnumerable<string> limits)
    {
        var resolver = new DefaultAssemblyResolver();
        resolver.AddSearchDirectory(AppContext.BaseDirectory);
        var reading = new ReaderParameters { AssemblyResolver = resolver };
        _modules = [ModuleDefinition.ReadModule(typeof(VisitLaw).Assembly.Location, reading), ModuleDefinition.ReadModule(typeof(Visit).Assembly.Location, reading)];
        _limits = [.. limits];
        _types = _modules.SelectMany(module => module.GetTypes()).Where(type => type.Namespace.Length > 0).ToDictionary(type => type.FullName);
    }

    /// <summary>The limits that the code of <paramref name="rule"/> can read.</summary>
    public IReadOnlySet<string> Of(IComplianceRule rule)
    {
        var found = new HashSet<string>();
        var seen = new HashSet<MethodDefinition>();
        var open = new Stack<MethodDefinition>();
        for (var type = _types[rule.GetType().FullName!]; type is not null; type = _types.GetValueOrDefault(type.BaseType.GetElementType().FullName))
            Push(type);
        if (rule.Info.Member is PropertyInfo row)
            Add(_types[row.DeclaringType!.FullName!].Properties.Single(property => property.Name == row.Name).GetMethod);

        while (open.TryPop(out var method))
        {
            foreach (var instruction in method.Body.Instructions)
            {
                if (instruction.OpCode == OpCodes.Ldstr && _limits.Contains((string)instruction.Operand))
                    found.Add((string)instruction.Operand);
                if (instruction.Operand is MethodReference called && Called(called) is { HasBody: true } next && _modules.Contains(next.Module))
                {
                    Add(next);
                    // A lambda that holds something, or an iterator, is a class of its own; those that hold nothing are called by name, and share one.
                    if (instruction.OpCode == OpCodes.Newobj && next.DeclaringType is { IsNested: true, Name: not "<>c" })
                        Push(next.DeclaringType);
                }

                if (instruction.Operand is FieldReference field && field.Resolve()?.DeclaringType is { } owner && _modules.Contains(owner.Module) && owner.Methods.FirstOrDefault(one => one.Name == ".cctor") is { } made)
                    Add(made);
            }
        }

        return found;

        void Push(TypeDefinition type)
        {
            foreach (var method in type.Methods.Where(method => method.HasBody))
                Add(method);
        }

        void Add(MethodDefinition method)
        {
            if (seen.Add(method))
                open.Push(method);
        }
    }

    // What is asked of the law beside the rules is answered by the one class of it.
    private MethodDefinition? Called(MethodReference reference) => reference.DeclaringType.Name is nameof(IVisitLaw) or nameof(IRecordLaw)
        ? _types[typeof(VisitLaw).FullName!].Methods.FirstOrDefault(method => method.Name == reference.Name)
        : reference.Resolve();

    public void Dispose() => Array.ForEach(_modules, module => module.Dispose());
}
