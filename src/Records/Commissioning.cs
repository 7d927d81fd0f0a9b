using Records.Metadata;

namespace Records;

/// <summary>What only the commissioning of a new boiler records.</summary>
public sealed class Commissioning
{
    /// <summary>Whether the boiler is new or a replacement.</summary>
    [Ask("Is the boiler new or a replacement?", While.Paper)]
    public bool? NewBoiler { get; init; }

    /// <summary>Seasonal space-heating efficiency of the product label, %.</summary>
    [Quantity("%", 0, 120)]
    [Ask("What seasonal efficiency in % does the product label give?", While.Paper)]
    public decimal? SeasonalEfficiencyPercent { get; init; }

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
