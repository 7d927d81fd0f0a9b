using System.Collections;
using System.Globalization;
using System.Text;

namespace ServiceRecords;

/// <summary>
/// The one text of a record, whatever the order, spacing and number format in which it was posted, so that anybody can work out
/// its hash.
/// </summary>
/// <remarks>
/// The text is JSON in UTF-8 without byte order mark, without blanks or line breaks between tokens, made thus:
/// <list type="number">
/// <item>An object's members are sorted by name, comparing UTF-16 code units (all names are ASCII). A member that is absent or null is
/// left out. An empty object or list stays: <c>{}</c>, <c>[]</c>.</item>
/// <item>List items keep their order.</item>
/// <item>A number is written in plain notation (no exponent), without a leading plus, without zeros after its last digit behind the
/// point, without a bare point, with one zero before the point where it is below one; zero is <c>0</c>, never <c>-0</c>.
/// 4.50 and 45e-1 become <c>4.5</c>.</item>
/// <item>Dates are <c>"yyyy-MM-dd"</c>. Date-times stand as they were posted, character for character.</item>
/// <item>Enumeration values stand as their wire names, yes/no as <c>true</c> and <c>false</c>.</item>
/// <item>Texts stand as posted after JSON unescaping, without Unicode normalization. Escaped are only the quotation mark
/// (<c>\"</c>), the backslash (<c>\\</c>) and U+0000 to U+001F (<c>\u</c> with four lower-case hexadecimal digits).</item>
/// </list>
/// The hash of a record is SHA-256 over these bytes.
/// </remarks>
public static class CanonicalForm
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The canonical bytes of a record.</summary>
    public static byte[] Write(ServiceRecord record)
    {
        var text = new StringBuilder();
        WriteSection(text, record, RecordMembers.Record);
        return Utf8.GetBytes(text.ToString());
    }

    private static void WriteSection(StringBuilder text, object held, Section section)
    {
        var separator = '{';
        foreach (var member in section.MembersByName)
        {
            if (member.Property.GetValue(held) is { } value)
            {
                text.Append(separator).Append('"').Append(member.Name).Append("\":");
                WriteValue(text, value, member);
                separator = ',';
            }
        }

        text.Append(separator == '{' ? "{}" : "}");
    }

    private static void WriteValue(StringBuilder text, object value, RecordMember member)
    {
        switch (value)
        {
            case string words:
                WriteText(text, words);
                break;
            case decimal number:
                text.Append(number == 0 ? "0" : number.ToString("0.############################", CultureInfo.InvariantCulture));
                break;
            case bool yes:
                text.Append(yes ? "true" : "false");
                break;
            case DateOnly date:
                WriteText(text, date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
                break;
            case Timestamp timestamp:
                WriteText(text, timestamp.Text);
                break;
            case Enum named:
                WriteText(text, WireNames.Of(named));
                break;
            case IList list:
                WriteList(text, list, member);
                break;
            default:
                WriteSection(text, value, member.Section!);
                break;
        }
    }

    private static void WriteList(StringBuilder text, IList list, RecordMember member)
    {
        text.Append('[');
        for (var i = 0; i < list.Count; i++)
        {
            WriteValue(i == 0 ? text : text.Append(','), list[i]!, member);
        }

        text.Append(']');
    }

    private static void WriteText(StringBuilder text, string words)
    {
        text.Append('"');
        foreach (var c in words)
        {
            _ = c switch
            {
                '"' or '\\' => text.Append('\\').Append(c),
                < ' ' => text.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
                _ => text.Append(c),
            };
        }

        text.Append('"');
    }
}
