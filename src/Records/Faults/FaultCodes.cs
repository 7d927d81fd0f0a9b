namespace Records.Faults;

/// <summary>The stable codes of <see cref="Fault"/>.</summary>
public static class FaultCodes
{
    /// <summary>The body is empty (400).</summary>
    public const string EmptyBody = "emptyBody";

    /// <summary>The body is not UTF-8 (400).</summary>
    public const string NotUtf8 = "notUtf8";

    /// <summary>The body is not JSON (400).</summary>
    public const string NotJson = "notJson";

    /// <summary>A row of CSV has other columns than the header, or a quote out of place (400).</summary>
    public const string NotCsv = "notCsv";

    /// <summary>One record among many is longer than a record may be (400).</summary>
    public const string TooLong = "tooLong";

    /// <summary>The body is nested too deep (400).</summary>
    public const string TooDeep = "tooDeep";

    /// <summary>An object has two members of one name (400).</summary>
    public const string DuplicateMember = "duplicateMember";

    /// <summary>The record has no such member.</summary>
    public const string UnknownMember = "unknownMember";

    /// <summary>A member that no record can do without is absent or null.</summary>
    public const string RequiredMember = "requiredMember";

    /// <summary>Another type of JSON value is expected.</summary>
    public const string WrongType = "wrongType";

    /// <summary>None of the allowed values.</summary>
    public const string UnknownValue = "unknownValue";

    /// <summary>A list item is null.</summary>
    public const string NullItem = "nullItem";

    /// <summary>A number with more digits than can be held exactly.</summary>
    public const string NotExact = "notExact";

    /// <summary>A number outside what is physically possible.</summary>
    public const string OutOfRange = "outOfRange";

    /// <summary>Not a day of the calendar, written yyyy-MM-dd.</summary>
    public const string NotADate = "notADate";

    /// <summary>Not an RFC 3339 date-time with an offset.</summary>
    public const string NotADateTime = "notADateTime";

    /// <summary>A text that is too long, or blank.</summary>
    public const string TextLength = "textLength";

    /// <summary>A text with control characters or broken Unicode.</summary>
    public const string TextCharacters = "textCharacters";

    /// <summary>A list with too many items.</summary>
    public const string TooManyItems = "tooManyItems";

    /// <summary>A later moment is given as the earlier one, or the other way round.</summary>
    public const string OutOfOrder = "outOfOrder";

    /// <summary>A lower bound lies above its upper bound.</summary>
    public const string BoundsCrossed = "boundsCrossed";

    /// <summary>Two members exclude each other.</summary>
    public const string OneOnly = "oneOnly";

    /// <summary>Two items have the same key.</summary>
    public const string DuplicateItem = "duplicateItem";

    /// <summary>A reference to something that the record does not list.</summary>
    public const string UnknownReference = "unknownReference";

    /// <summary>A record is to replace one of another appliance, or of which it cannot be told that it is the same.</summary>
    public const string OtherAppliance = "otherAppliance";

    /// <summary>A record says better things than the one that it replaces, and not why.</summary>
    public const string ReasonNeeded = "reasonNeeded";

    /// <summary>A visit that has not happened yet.</summary>
    public const string NotYet = "notYet";

    /// <summary>There are more faults than are listed.</summary>
    public const string MoreFaults = "moreFaults";

    internal static bool IsUnreadable(string code) => code is EmptyBody or NotUtf8 or NotJson or NotCsv or TooLong or TooDeep or DuplicateMember;
}
