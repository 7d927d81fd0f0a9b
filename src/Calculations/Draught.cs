namespace Calculations;

/// <summary>Natural draught of a flue, in double.</summary>
public static class Draught
{
    /// <summary>
    /// Draught, Pa: g h (p / R_air)(1/T_outside - 1/T_flue), kelvin. Flue gas taken as air (wet natural-gas flue gas is about 1.6 % lighter);
    /// no friction, flue temperature the mean over the height. Negative where the flue is colder than the outside. Hydrostatics; teaching texts
    /// write it 0.0342 p h (1/T_outside - 1/T_flue).
    /// </summary>
    /// <param name="heightM">Height of the flue above the appliance, m, 0 to 200.</param>
    /// <param name="outsideC">Outside temperature, degree Celsius, -40 to 50.</param>
    /// <param name="flueC">Mean flue temperature, degree Celsius, -40 to 600.</param>
    /// <param name="pressurePa">Atmospheric pressure, Pa, 60 000 to 110 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double PressurePa(double heightM, double outsideC, double flueC, double pressurePa = Constants.StandardPressurePa) =>
        Constants.GravityMPerS2 / Constants.AirGasConstantJPerKgK
        * Guard.Within(heightM, 0, 200) * Guard.Within(pressurePa, 60_000, 110_000)
        * (1 / Constants.Kelvin(Guard.Within(outsideC, -40, 50)) - 1 / Constants.Kelvin(Guard.Within(flueC, -40, 600)));
}
