using Records.Metadata;

namespace Records;

/// <summary>One category of work for which the engineer is assessed.</summary>
public sealed class EngineerCategory
{
    /// <summary>The gas that the category covers.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Which fuel does the category cover?", While.Paper)]
    public Fuel? Fuel { get; init; }

    /// <summary>Domestic or non-domestic work.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Does the category cover domestic or non-domestic work?", While.Paper)]
    public CategoryScope? Scope { get; init; }

    /// <summary>Last day on which the category is valid, that day included.</summary>
    [Class(MemberClass.Time)]
    [Ask("On which day does the category expire?", While.Paper)]
    public DateOnly? ExpiresOn { get; init; }
}
