using Records.Metadata;

namespace Records;

/// <summary>What only the commissioning of a new boiler records.</summary>
public sealed class Commissioning
{
    /// <summary>Whether the boiler is new or a replacement.</summary>
    [Ask("Is the boiler new or a replacement?", While.Paper)]
    public bool? NewBoiler { get; init; }

    /// <summary>Whether it was put into use as the maker's instructions say. Regulation 33(1)(c) of the Gas Safety (Installation and Use) Regulations 1998.</summary>
    [Ask("Were the maker's instructions followed?", While.Paper)]
    public bool? InstructionsFollowed { get; init; }

    /// <summary>Seasonal space-heating efficiency of the product label, %.</summary>
    [Quantity("%", 0, 120)]
    [Ask("What seasonal efficiency in % does the product label give?", While.Paper)]
    public decimal? SeasonalEfficiencyPercent { get; init; }

    /// <summary>The circumstance that allows a boiler of lower efficiency, in words. Absent: none is claimed.</summary>
    [Text(500)]
    [Ask("Which exceptional circumstance allows the lower efficiency?", While.Paper)]
    public string? ExceptionalCircumstance { get; init; }

    /// <summary>Whether controls stop the boiler when there is no demand.</summary>
    [Ask("Is there a boiler interlock?", While.OnSite)]
    public bool? Interlock { get; init; }

    /// <summary>The further energy measure fitted with a combination boiler, in words.</summary>
    [Text(200)]
    [Ask("Which further energy measure was fitted?", While.Paper)]
    public string? ExtraMeasure { get; init; }

    /// <summary>Design flow temperature of the system, degrees Celsius.</summary>
    [Quantity("Cel", 0, 400)]
    [Ask("For what flow temperature in degrees Celsius is the system designed?", While.Paper)]
    public decimal? DesignFlowC { get; init; }
}
