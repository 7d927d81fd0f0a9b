using System.Collections.Concurrent;

namespace Kernel;

/// <summary>A member as an expression names it, turned into a JSON Pointer.</summary>
public sealed class MemberPath
{
    private static readonly (string Prefix, string Pointer)[] Roots = [("visit.Record.", ""), ("visit.Maker.", "/makerLimits")];

    // By reference: each place in the code has one text for the expression that it reads, and reading it anew would cost more than the rule.
    private static readonly ConcurrentDictionary<string, MemberPath> Known = new(ReferenceEqualityComparer.Instance);

    private readonly bool _isAbsolute;
    private readonly string _pointer;

    private MemberPath(string expression)
    {
        var path = string.Concat(expression.Split("=>")[^1].Where(letter => letter is not ('?' or '!') && !char.IsWhiteSpace(letter)));
        var root = Array.Find(Roots, candidate => path.StartsWith(candidate.Prefix, StringComparison.Ordinal));
        _isAbsolute = root.Prefix is not null;
        var members = _isAbsolute ? path[root.Prefix!.Length..].Split('.') : path.Split('.')[1..];
        if (members.Length == 0)
            throw new ArgumentException($"'{expression}' names no member of the record.", nameof(expression));

        _pointer = root.Pointer + string.Concat(members.Select(name => $"/{char.ToLowerInvariant(name[0])}{name[1..]}"));
        Name = _pointer[(_pointer.LastIndexOf('/') + 1)..];
    }

    /// <summary>The member's own name.</summary>
    public string Name { get; }

    /// <summary>
    /// The member that <paramref name="expression"/> names: the text that the compiler puts in for a caller's argument, be it the value or
    /// a lambda that reads it.
    /// </summary>
    public static MemberPath Of(string expression) => Known.GetOrAdd(expression, static text => new MemberPath(text));

    /// <summary>The JSON Pointer of the member: its own where the expression begins with the record, else below <paramref name="subject"/>.</summary>
    public string Below(string subject) => _isAbsolute ? _pointer : subject + _pointer;
}
