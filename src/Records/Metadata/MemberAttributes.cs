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
