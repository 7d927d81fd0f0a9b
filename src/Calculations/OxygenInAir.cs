namespace Calculations;

/// <summary>
/// Oxygen in dry air, volume per cent. Three values are in use; a chain of formulas that mixes them is off by up to half a per cent,
/// so every combustion formula here takes the value as a named parameter.
/// </summary>
public static class OxygenInAir
{
    /// <summary>20.95 %: the physical value, which the maximum CO2 of each gas family rests on.</summary>
    public const decimal PhysicalPercent = 20.95m;

    /// <summary>20.9 %: the value of 40 CFR part 60 appendix A (methods 3B and 19), and of CO referred to air-free flue gas.</summary>
    public const decimal FieldPercent = 20.9m;

    /// <summary>21 %: the value the Siegert formula is written with.</summary>
    public const decimal SiegertPercent = 21m;
}
