using Records.Metadata;

namespace Records;

/// <summary>What only the commissioning of a new boiler records.</summary>
public sealed class Commissioning
{
    /// <summary>Whether the boiler is new or a replacement.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Is the boiler new or a replacement?", While.Paper)]
    public bool? NewBoiler { get; init; }

    /// <summary>Whether it was put into use as the maker's instructions say. Regulation 33(1)(c) of the Gas Safety (Installation and Use) Regulations 1998.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Were the maker's instructions followed?", While.Paper)]
    public bool? InstructionsFollowed { get; init; }

    /// <summary>Seasonal space-heating efficiency of the product label, %.</summary>
    [Quantity("%", 0, 120)]
    [Class(MemberClass.Evidence)]
    [Ask("What seasonal efficiency in % does the product label give?", While.Paper)]
    public decimal? SeasonalEfficiencyPercent { get; init; }

    /// <summary>The circumstance that allows a boiler of lower efficiency, in words. Absent: none is claimed.</summary>
    [Text(500)]
    [Class(MemberClass.DecidingFact)]
    [Ask("Which exceptional circumstance allows the lower efficiency?", While.Paper)]
    public string? ExceptionalCircumstance { get; init; }

    /// <summary>Whether controls stop the boiler when there is no demand.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is there a boiler interlock?", While.OnSite)]
    public bool? Interlock { get; init; }

    /// <summary>The further energy measure fitted with a combination boiler, in words.</summary>
    [Text(200)]
    [Class(MemberClass.Evidence)]
    [Ask("Which further energy measure was fitted?", While.Paper)]
    public string? ExtraMeasure { get; init; }

    /// <summary>Design flow temperature of the system, degrees Celsius.</summary>
    [Quantity("Cel", 0, 400)]
    [Class(MemberClass.Evidence)]
    [Ask("For what flow temperature in degrees Celsius is the system designed?", While.Paper)]
    public decimal? DesignFlowC { get; init; }
}
