namespace RuleModel;

/// <summary>Something that a rule judges, with its place in the record.</summary>
/// <param name="Pointer">JSON Pointer (RFC 6901); empty for the whole visit.</param>
/// <param name="Value">The thing itself.</param>
public readonly record struct Subject<T>(string Pointer, T Value);

/// <summary>Makes subjects of lists.</summary>
public static class Subjects
{
    /// <summary>Each element with its pointer below <paramref name="pointer"/>; null for an absent list.</summary>
    public static IEnumerable<Subject<T>>? Of<T>(string pointer, IReadOnlyList<T>? items) =>
        items?.Select((item, index) => new Subject<T>($"{pointer}/{index}", item));
}
