using System.Collections.Concurrent;

namespace RuleModel;

/// <summary>A member as an expression names it, turned into a JSON Pointer.</summary>
internal sealed class MemberPath
{
    private static readonly (string Prefix, string Pointer)[] Roots = [("visit.Record.", ""), ("visit.Maker.", "/makerLimits")];
    private static readonly ConcurrentDictionary<string, MemberPath> Known = new(StringComparer.Ordinal);

    private readonly bool _isAbsolute;
    private readonly string _pointer;

    private MemberPath(string expression)
    {
        var path = expression.Replace("?", "", StringComparison.Ordinal).Replace("!", "", StringComparison.Ordinal);
        var root = Array.Find(Roots, candidate => path.StartsWith(candidate.Prefix, StringComparison.Ordinal));
        _isAbsolute = root.Prefix is not null;
        var members = _isAbsolute ? path[root.Prefix!.Length..].Split('.') : path.Split('.')[1..];
        if (members.Length == 0)
            throw new ArgumentException($"'{expression}' names no member of the record.", nameof(expression));

        _pointer = root.Pointer + string.Concat(members.Select(name => $"/{char.ToLowerInvariant(name[0])}{name[1..]}"));
    }

    public static MemberPath Of(string expression) => Known.GetOrAdd(expression, text => new MemberPath(text));

    public string Below(string subject) => _isAbsolute ? _pointer : subject + _pointer;
}
