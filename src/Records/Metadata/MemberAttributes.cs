namespace Records.Metadata;

/// <summary>A measured number: its unit and the closed range outside which no value can exist at all (never a pass limit).</summary>
/// <param name="unit">UCUM unit; <c>1</c> for a plain ratio, <c>{reading}</c> where the unit is that of the quantity beside it.</param>
/// <param name="minimum">Lowest possible value.</param>
/// <param name="maximum">Highest possible value.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class QuantityAttribute(string unit, double minimum, double maximum) : Attribute
{
    /// <summary>UCUM unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>Lowest possible value, in <see cref="Unit"/>.</summary>
    public double Minimum { get; } = minimum;

    /// <summary>Highest possible value, in <see cref="Unit"/>.</summary>
    public double Maximum { get; } = maximum;
}

/// <summary>A text of 1 to <paramref name="maxLength"/> Unicode characters.</summary>
/// <param name="maxLength">Greatest length.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class TextAttribute(int maxLength) : Attribute
{
    /// <summary>Greatest length, in Unicode characters.</summary>
    public int MaxLength { get; } = maxLength;

    /// <summary>Whether the empty text has a meaning of its own.</summary>
    public bool MayBeEmpty { get; set; }
}

/// <summary>A list of at most <paramref name="max"/> items; an empty one states that there are none.</summary>
/// <param name="max">Greatest number of items.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ItemsAttribute(int max) : Attribute
{
    /// <summary>Greatest number of items.</summary>
    public int Max { get; } = max;
}

/// <summary>The question by which the engineer is asked for this member.</summary>
/// <param name="question">One question in plain words, with the unit where there is one.</param>
/// <param name="answered">When it can still be answered.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class AskAttribute(string question, While answered) : Attribute
{
    /// <summary>The question.</summary>
    public string Question { get; } = question;

    /// <summary>When it can still be answered.</summary>
    public While Answered { get; } = answered;
}

/// <summary>What a member is to a judgement, and so what its absence may change.</summary>
/// <param name="of">The one class of the member; of a section or a list, what is lost with the whole of it.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ClassAttribute(MemberClass of) : Attribute
{
    /// <summary>The class.</summary>
    public MemberClass Of { get; } = of;
}

/// <summary>What a member is to a judgement.</summary>
public enum MemberClass
{
    /// <summary>What was measured, seen or proved, or done about a danger: it can be good or bad, and a duty may ask for it.</summary>
    Evidence,

    /// <summary>What settles which duties and which limits apply to the visit; where it is absent the stricter case is taken.</summary>
    DecidingFact,

    /// <summary>A trace of what was worked on: it adds to what the visit owes and takes nothing away.</summary>
    WorkDone,

    /// <summary>Who, what and which: numbers, names and references.</summary>
    Identity,

    /// <summary>When something was, or is to be.</summary>
    Time,

    /// <summary>What the engineer says unasked against the installation: without it the record would look better, so it may go only with a reason.</summary>
    Volunteered,
}

/// <summary>When a question can still be answered, the shortest-lived first.</summary>
public enum While
{
    /// <summary>Only while the appliance runs.</summary>
    Running,

    /// <summary>Only while the appliance is open.</summary>
    Open,

    /// <summary>Only while on site.</summary>
    OnSite,

    /// <summary>Later as well: paperwork.</summary>
    Paper,
}
