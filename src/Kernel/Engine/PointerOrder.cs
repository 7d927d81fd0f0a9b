using System.Globalization;

namespace Kernel.Engine;

/// <summary>JSON Pointers with list indices in numeric order: /readings/2 before /readings/10.</summary>
internal sealed class PointerOrder : IComparer<string>
{
    public static readonly PointerOrder Instance = new();

    public int Compare(string? x, string? y)
    {
        var left = (x ?? "").Split('/');
        var right = (y ?? "").Split('/');
        for (var i = 0; i < Math.Min(left.Length, right.Length); i++)
        {
            var order = int.TryParse(left[i], NumberStyles.None, CultureInfo.InvariantCulture, out var a)
                && int.TryParse(right[i], NumberStyles.None, CultureInfo.InvariantCulture, out var b)
                    ? a.CompareTo(b)
                    : string.CompareOrdinal(left[i], right[i]);
            if (order != 0)
                return order;
        }

        return left.Length.CompareTo(right.Length);
    }
}
