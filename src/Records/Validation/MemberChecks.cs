using System.Buffers;
using System.Collections;
using System.Globalization;
using FluentValidation;
using FluentValidation.Results;
using Records.Faults;
using Records.Members;
using Records.Values;

namespace Records.Validation;

/// <summary>Makes the attributes of each member into its check, once.</summary>
internal static class MemberChecks
{
    private const int LongestName = 100;
    private static readonly char[] Controls = [.. Enumerable.Range(0, 256).Select(c => (char)c).Where(char.IsControl)];
    private static readonly SearchValues<char> NotInNames = SearchValues.Create(Controls);
    private static readonly SearchValues<char> NotInProse = SearchValues.Create([.. Controls.Except("\n\r\t")]);

    /// <summary>The check of a member; null when every value of its type will do.</summary>
    public static MemberCheck<T>? Of<T>(RecordMember member)
    {
        var type = member.Property.PropertyType;
        return member switch
        {
            { IsList: true } => OfList<T>(member),
            _ when type == typeof(decimal?) => OfNumber<T>(member),
            _ when type == typeof(string) => OfText<T>(member),
            _ when type == typeof(DateOnly?) => OfYear<T, DateOnly?>(member, date => date?.Year),
            _ when type == typeof(Timestamp?) => OfYear<T, Timestamp?>(member, time => time?.Value.Year),
            _ when type == typeof(Timestamp) => OfYear<T, Timestamp>(member, time => time.Text is null ? null : time.Value.Year),
            _ => null,
        };
    }

    private static MemberCheck<T> OfNumber<T>(RecordMember member)
    {
        var get = Getter<T, decimal?>(member);
        var (minimum, maximum) = (member.Minimum!.Value, member.Maximum!.Value);
        return new(
            section => get(section) is not { } number || (number >= minimum && number <= maximum),
            (section, context) => context.AddFault(
                member.Property.Name, FaultCodes.OutOfRange, Text($"{get(section)} is impossible; expected {minimum} to {maximum}, unit {member.Unit}.")));
    }

    private static MemberCheck<T> OfText<T>(RecordMember member)
    {
        var get = Getter<T, string?>(member);
        var most = member.MaxLength!.Value;
        var (forbidden, detailOfForbidden) = most > LongestName
            ? (NotInProse, "The text has control characters; only line breaks and tabs are read.")
            : (NotInNames, "The text has control characters (line breaks and tabs count).");
        return new(
            section => get(section) is not { } text || !(IsTooLong(text) || IsBlank(text) || HasForbidden(text)),
            (section, context) =>
            {
                var text = get(section)!;
                if (IsTooLong(text))
                {
                    var detail = Text($"The text has {text.EnumerateRunes().Count()} characters; at most {most} are read.");
                    context.AddFault(member.Property.Name, FaultCodes.TextLength, detail);
                }
                else if (IsBlank(text))
                {
                    context.AddFault(member.Property.Name, FaultCodes.TextLength, "The text is blank; what is not recorded is left out.");
                }

                if (HasForbidden(text))
                {
                    context.AddFault(member.Property.Name, FaultCodes.TextCharacters, detailOfForbidden);
                }
            });

        bool IsTooLong(string text) => text.Length > most && text.EnumerateRunes().Count() > most;
        bool IsBlank(string text) => string.IsNullOrWhiteSpace(text) && !(member.MayBeEmpty && text.Length == 0);
        bool HasForbidden(string text) => text.AsSpan().ContainsAny(forbidden);
    }

    private static MemberCheck<T> OfList<T>(RecordMember member)
    {
        var get = Getter<T, IEnumerable?>(member);
        var most = member.MaxItems!.Value;
        return new(
            section => get(section) is not { } list || (list is IList { Count: var count } items && count <= most && !items.Contains(null)),
            (section, context) =>
            {
                var items = get(section)!.Cast<object?>().ToList();
                foreach (var (index, _) in items.Index().Where(entry => entry.Item is null))
                {
                    context.AddFault(Text($"{member.Property.Name}[{index}]"), FaultCodes.NullItem, FaultTexts.NullItem);
                }

                if (items.Count > most)
                {
                    context.AddFault(member.Property.Name, FaultCodes.TooManyItems, FaultTexts.TooMany(items.Count, member));
                }
            });
    }

    private static MemberCheck<T> OfYear<T, TValue>(RecordMember member, Func<TValue, int?> yearOf)
    {
        var get = Getter<T, TValue>(member);
        return new(
            section => yearOf(get(section)) is not (< CalendarDay.FirstYear or > CalendarDay.LastYear),
            (_, context) => context.AddFault(member.Property.Name, FaultCodes.OutOfRange, Text($"The year must lie between {CalendarDay.FirstYear} and {CalendarDay.LastYear}.")));
    }

    public static Func<T, TValue> Getter<T, TValue>(RecordMember member) => member.Property.GetMethod!.CreateDelegate<Func<T, TValue>>();

    /// <summary>Notes a fault at a place in C# names as seen from the section.</summary>
    public static void AddFault<T>(this ValidationContext<T> context, string place, string code, string detail) =>
        context.AddFailure(new ValidationFailure(context.PropertyChain.BuildPropertyPath(place), detail) { ErrorCode = code });

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
