using System.Globalization;
using Findings;

namespace ComplianceApi.Pages;

/// <summary>A measured value against its limit, to scale: every place is a share (0 to 1) of the drawn width.</summary>
/// <param name="Value">The measured value, in the limit's unit.</param>
/// <param name="Low">The number at the left end.</param>
/// <param name="High">The number at the right end.</param>
/// <param name="Limit">The limit.</param>
public sealed record LimitScale(decimal Value, decimal Low, decimal High, Limit Limit)
{
    private const decimal Room = 0.12m;

    /// <summary>
    /// Of a finding that compares a number with a limit; else null. The value is the evidence that has the finding's margin, or,
    /// against a single bound, the bound and the margin themselves.
    /// </summary>
    public static LimitScale? Of(Finding finding)
    {
        if (finding is not { Limit: { } limit, Margin: { } margin } || ValueOf(finding, limit, margin) is not { } value)
            return null;

        var marks = new[] { limit.Min, limit.Max, value }.OfType<decimal>().ToList();
        var (low, high) = (marks.Min(), marks.Max());
        if (limit.Min is null || limit.Max is null)
            (low, high) = (Math.Min(0, low), Math.Max(0, high));
        if (low == high)
            return null;

        var room = (high - low) * Room;
        return new LimitScale(value, low == 0 ? 0 : low - room, high == 0 ? 0 : high + room, limit);
    }

    /// <summary>Where the conforming range begins.</summary>
    public decimal From => Limit.Min is { } min ? Share(min) : 0;

    /// <summary>Where it ends.</summary>
    public decimal To => Limit.Max is { } max ? Share(max) : 1;

    /// <summary>Where the value lies.</summary>
    public decimal At => Share(Value);

    /// <summary>A share as a length in SVG.</summary>
    public static string Percent(decimal share) => (100 * share).ToString("0.###", CultureInfo.InvariantCulture) + "%";

    private decimal Share(decimal number) => (number - Low) / (High - Low);

    private static decimal? ValueOf(Finding finding, Limit limit, decimal margin) =>
        (finding.Evidence ?? []).FirstOrDefault(evidence => evidence.Number is { } number && evidence.Unit == limit.Unit && limit.MarginOf(number) == margin)?.Number
        ?? (limit.Min, limit.Max) switch
        {
            (null, { } max) => max - margin,
            ({ } min, null) => min + margin,
            _ => null,
        };
}
