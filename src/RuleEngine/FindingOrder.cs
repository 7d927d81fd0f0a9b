using System.Globalization;
using Findings;

namespace RuleEngine;

/// <summary>Gravest first, then by topic, rule and place in the record: the same order however the engine fired.</summary>
internal sealed class FindingOrder : IComparer<Finding>
{
    public static readonly FindingOrder Instance = new();

    private static readonly Dictionary<string, int> TopicOrder =
        Topics.All.Select((topic, index) => (topic, index)).ToDictionary(pair => pair.topic, pair => pair.index, StringComparer.Ordinal);

    public int Compare(Finding? x, Finding? y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        var order = x.Outcome.CompareTo(y.Outcome);
        if (order == 0)
            order = TopicOrder[x.Topic].CompareTo(TopicOrder[y.Topic]);
        if (order == 0)
            order = string.CompareOrdinal(x.RuleId, y.RuleId);
        if (order == 0)
            order = PointerOrder.Instance.Compare(x.Subject, y.Subject);
        return order == 0 ? string.CompareOrdinal(x.Message, y.Message) : order;
    }
}

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
