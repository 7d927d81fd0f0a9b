using System.Globalization;
using System.Text;

namespace ComplianceApi.Api.Requests;

/// <summary>A part of a list.</summary>
public sealed class Page<T>
{
    /// <summary>The items of this part.</summary>
    public required IReadOnlyList<T> Items { get; init; }

    /// <summary>To be given as the parameter next, with all others unchanged, for the following part; absent on the last one.</summary>
    public string? Next { get; init; }

    /// <summary>How many items the whole list has.</summary>
    public int? Total { get; init; }
}

/// <summary>Cuts lists into parts.</summary>
public static class Paging
{
    /// <summary>How many items at most.</summary>
    public static readonly QueryParameter<int?> Limit = Query.Whole("limit", "How many items at most.", 1, 500, absent: 100);

    /// <summary>Where to go on.</summary>
    public static readonly QueryParameter<int> Next = Query.Cursor("next", "The value of next in the answer before.");

    /// <summary>The part of <paramref name="all"/> that <paramref name="request"/> asks for.</summary>
    public static Page<T> PageOf<T>(this IEnumerable<T> all, HttpRequest request)
    {
        var items = all.ToList();
        var start = Next.Of(request);
        var end = start + Limit.Of(request)!.Value;
        return new Page<T>
        {
            Items = [.. items.Skip(start).Take(end - start)],
            Next = end < items.Count ? CursorOf(end) : null,
            Total = items.Count,
        };
    }

    /// <summary>A part of a list that a store holds: it was asked for one item more than are shown, which tells whether another part follows.</summary>
    public static Page<T> PageOf<T>(IReadOnlyList<T> oneMore, int limit, Func<T, string> next, int? total) => new()
    {
        Items = [.. oneMore.Take(limit)],
        Next = oneMore.Count > limit ? next(oneMore[limit - 1]) : null,
        Total = total,
    };

    /// <summary>A position as an opaque text.</summary>
    internal static string CursorOf(int position) =>
        Convert.ToBase64String(Encoding.ASCII.GetBytes(position.ToString(CultureInfo.InvariantCulture))).TrimEnd('=');

    /// <summary>The position behind a text that <see cref="CursorOf"/> made.</summary>
    internal static bool TryPosition(string cursor, out int position)
    {
        var bytes = new byte[16];
        position = 0;
        return cursor.Length <= 16
            && Convert.TryFromBase64String(cursor.PadRight((cursor.Length + 3) / 4 * 4, '='), bytes, out var length)
            && int.TryParse(Encoding.ASCII.GetString(bytes, 0, length), NumberStyles.None, CultureInfo.InvariantCulture, out position)
            && cursor == CursorOf(position);
    }
}
