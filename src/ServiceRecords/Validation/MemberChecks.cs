using System.Buffers;
using System.Collections;
using System.Globalization;
using FluentValidation;
using FluentValidation.Results;

namespace ServiceRecords;

/// <summary>What the attributes of one member demand of its value, made once into a check of a whole section.</summary>
internal static class MemberChecks
{
    private const int FirstYear = 1900;
    private const int LastYear = 2200;
    private const int LongestName = 100;
    private static readonly char[] Controls = [.. Enumerable.Range(0, 256).Select(c => (char)c).Where(char.IsControl)];
    private static readonly SearchValues<char> NotInNames = SearchValues.Create(Controls);
    private static readonly SearchValues<char> NotInProse = SearchValues.Create([.. Controls.Except("\n\r\t")]);

    /// <summary>The check of a member; null when every value of its type will do.</summary>
    public static Action<T, ValidationContext<T>>? Of<T>(RecordMember member)
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

    private static Action<T, ValidationContext<T>> OfNumber<T>(RecordMember member)
    {
        var get = Getter<T, decimal?>(member);
        var (minimum, maximum) = (member.Minimum!.Value, member.Maximum!.Value);
        return (section, context) =>
        {
            if (get(section) is { } number && (number < minimum || number > maximum))
            {
                var detail = Text($"{number} is impossible; expected {minimum} to {maximum}, unit {member.Unit}.");
                context.AddFault(member.Property.Name, FaultCodes.OutOfRange, detail);
            }
        };
    }

    private static Action<T, ValidationContext<T>> OfText<T>(RecordMember member)
    {
        var get = Getter<T, string?>(member);
        var (forbidden, detailOfForbidden) = member.MaxLength > LongestName
            ? (NotInProse, "The text has control characters; only line breaks and tabs are read.")
            : (NotInNames, "The text has control characters (line breaks and tabs count).");
        return (section, context) =>
        {
            if (get(section) is not { } text)
            {
                return;
            }

            if (text.Length > member.MaxLength && text.EnumerateRunes().Count() is var length && length > member.MaxLength)
            {
                var detail = Text($"The text has {length} characters; at most {member.MaxLength} are read.");
                context.AddFault(member.Property.Name, FaultCodes.TextLength, detail);
            }
            else if (string.IsNullOrWhiteSpace(text) && !(member.MayBeEmpty && text.Length == 0))
            {
                context.AddFault(member.Property.Name, FaultCodes.TextLength, "The text is blank; what is not recorded is left out.");
            }

            if (text.AsSpan().ContainsAny(forbidden))
            {
                context.AddFault(member.Property.Name, FaultCodes.TextCharacters, detailOfForbidden);
            }
        };
    }

    private static Action<T, ValidationContext<T>> OfList<T>(RecordMember member)
    {
        var get = Getter<T, IEnumerable?>(member);
        return (section, context) =>
        {
            if (get(section) is not { } list)
            {
                return;
            }

            var count = 0;
            foreach (var item in list)
            {
                if (item is null)
                {
                    context.AddFault(Text($"{member.Property.Name}[{count}]"), FaultCodes.NullItem, FaultTexts.NullItem);
                }

                count++;
            }

            if (count > member.MaxItems)
            {
                context.AddFault(member.Property.Name, FaultCodes.TooManyItems, FaultTexts.TooMany(count, member));
            }
        };
    }

    private static Action<T, ValidationContext<T>> OfYear<T, TValue>(RecordMember member, Func<TValue, int?> yearOf)
    {
        var get = Getter<T, TValue>(member);
        return (section, context) =>
        {
            if (yearOf(get(section)) is < FirstYear or > LastYear)
            {
                context.AddFault(member.Property.Name, FaultCodes.OutOfRange, Text($"The year must lie between {FirstYear} and {LastYear}."));
            }
        };
    }

    private static Func<T, TValue> Getter<T, TValue>(RecordMember member) => member.Property.GetMethod!.CreateDelegate<Func<T, TValue>>();

    /// <summary>Notes a fault at a place in C# names as seen from the section.</summary>
    public static void AddFault<T>(this ValidationContext<T> context, string place, string code, string detail) =>
        context.AddFailure(new ValidationFailure(context.PropertyChain.BuildPropertyPath(place), detail) { ErrorCode = code });

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
