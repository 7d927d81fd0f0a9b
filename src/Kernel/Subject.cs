using System.Collections.Concurrent;

namespace Kernel;

/// <summary>Something that a rule judges, with its place in the record.</summary>
/// <param name="Pointer">JSON Pointer (RFC 6901); empty for the whole visit.</param>
/// <param name="Value">The thing itself.</param>
public readonly record struct Subject<T>(string Pointer, T Value);

/// <summary>Makes subjects of lists.</summary>
public static class Subjects
{
    private const int MostKept = 1000;
    private static readonly ConcurrentDictionary<(string List, int Index), string> Places = new();

    /// <summary>Each element with its pointer below <paramref name="pointer"/>; null for an absent list.</summary>
    public static IReadOnlyList<Subject<T>>? Of<T>(string pointer, IReadOnlyList<T>? items)
    {
        if (items is null)
            return null;

        var subjects = new Subject<T>[items.Count];
        for (var i = 0; i < subjects.Length; i++)
            subjects[i] = new Subject<T>(PlaceOf(pointer, i), items[i]);
        return subjects;
    }

    // The first places of a list are the same text in every record.
    private static string PlaceOf(string list, int index)
    {
        if (Places.TryGetValue((list, index), out var known))
            return known;

        var place = $"{list}/{index}";
        if (Places.Count < MostKept)
            Places[(list, index)] = place;
        return place;
    }
}
