using System.Globalization;
using System.Text.Json.Nodes;
using Records.Members;
using Records.Values;

namespace SecondOpinion.Tests.Records;

/// <summary>
/// The states that a member is tried in: every value of a choice, numbers on and one step beside every limit in the member's unit, and days
/// beside those that a deadline or a change of law would turn on.
/// </summary>
internal static class States
{
    private static readonly string[] Texts = ["a note", "FA-1", "3"];

    private static readonly int[] DayOffsets =
        [-4000, -400, -366, -365, -364, -31, -30, -29, -28, -27, -15, -14, -13, -2, -1, 0, 1, 2, 14, 28, 30, 31, 364, 365, 366, 800];

    private static readonly int[] MonthOffsets = [-61, -60, -24, -14, -13, -12, -11, -10, -2, 2, 10, 12, 14, 24];

    private static readonly ILookup<string, decimal> LimitValues = Limits.All
        .SelectMany(limit => new[] { limit.Bounds.Min, limit.Bounds.Max }.OfType<decimal>().SelectMany(value => new[]
        {
            (limit.Unit, value), (limit.Unit, value - limit.Bounds.Resolution), (limit.Unit, value + limit.Bounds.Resolution),
        }))
        .Distinct()
        .ToLookup(pair => pair.Item1, pair => pair.Item2, StringComparer.Ordinal);

    private static readonly Dictionary<RecordMember, IReadOnlyList<decimal>> Numbers = RecordMembers.All
        .Where(member => member.ClrType == typeof(decimal))
        .ToDictionary(member => member, NumbersOf);

    /// <summary>Days on which a law, a standard or a limit changed, with the day before and the day after.</summary>
    public static IReadOnlyList<DateOnly> ChangeDays { get; } =
    [
        .. new DateOnly[]
        {
            new(2013, 1, 1), new(2014, 4, 1), new(2014, 5, 31), new(2018, 4, 6), new(2019, 6, 1), new(2021, 4, 15), new(2022, 2, 1), new(2022, 6, 15),
            new(2022, 10, 1), new(2022, 12, 1), new(2026, 3, 25), new(2026, 10, 1),
        }
        .SelectMany(day => new[] { day.AddDays(-1), day, day.AddDays(1) }),
    ];

    /// <summary>A state of a member that is neither a section nor a list of sections; null: absent.</summary>
    public static JsonNode? Draw(RecordMember member, DateOnly visit, Dice dice)
    {
        if (!IsAlwaysThere(member) && dice.Chance(0.15))
            return null;
        if (member is { IsList: true, AllowedValues.Count: > 0 })
            return new JsonArray([.. Enumerable.Range(0, dice.UpTo(4)).Select(_ => (JsonNode)dice.OneOf(member.AllowedValues))]);
        if (ValuesOf(member) is { Count: > 0 } values)
            return dice.OneOf(values);
        if (member.ClrType == typeof(bool))
            return dice.Chance(0.5);
        if (member.ClrType == typeof(decimal))
            return dice.OneOf(Numbers[member]);
        if (member.ClrType == typeof(DateOnly))
            return DrawDay(visit, dice).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        if (member.ClrType == typeof(Timestamp))
            return DrawMoment(visit, dice);
        return dice.OneOf(KnownValues.Texts.GetValueOrDefault(member.Pattern, Texts));
    }

    /// <summary>Required; the fuel is, but for the few records that <see cref="RecordGenerator.WithoutFuel"/> makes.</summary>
    public static bool IsAlwaysThere(RecordMember member) => member.IsRequired || member.Pattern == "/appliance/fuel";

    /// <summary>The values of a choice; none for another member.</summary>
    public static IReadOnlyList<string> ValuesOf(RecordMember member) => member.Pattern == "/jurisdiction" ? KnownValues.Jurisdictions : member.AllowedValues;

    private static DateOnly DrawDay(DateOnly visit, Dice dice) => dice.UpTo(5) switch
    {
        0 => dice.OneOf(ChangeDays),
        1 or 2 => visit.AddMonths(dice.OneOf(MonthOffsets)).AddDays(dice.UpTo(3) - 1),
        _ => visit.AddDays(dice.OneOf(DayOffsets)),
    };

    private static string DrawMoment(DateOnly visit, Dice dice)
    {
        var day = dice.Chance(0.7) ? visit : DrawDay(visit, dice);
        var clock = dice.OneOf(["08:59:59", "09:00:00", "09:30:00", "10:05:00", "10:12:00", "10:25:00", "10:25:01", "23:59:59", "00:00:00"]);
        return string.Create(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd}T{clock}{dice.OneOf(["+01:00", "+01:00", "Z", "-05:00"])}");
    }

    private static IReadOnlyList<decimal> NumbersOf(RecordMember member)
    {
        var known = KnownValues.Numbers.GetValueOrDefault(member.Pattern, []);
        // What is known to matter for this member is drawn as often as all the limits of its unit together.
        var limits = LimitValues[member.Unit!].Append(0).ToList();
        var repeated = known.Length == 0 ? [] : Enumerable.Repeat(known, Math.Max(1, limits.Count / known.Length)).SelectMany(value => value);
        return [.. repeated.Concat(limits).Where(value => member.Minimum <= value && value <= member.Maximum)];
    }
}
