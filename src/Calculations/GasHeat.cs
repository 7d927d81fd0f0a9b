namespace Calculations;

/// <summary>
/// Sensible heat of flue-gas species as ideal gases, in double: NASA seven-coefficient polynomials for 200 to 1000 K
/// (NASA TM-2002-211556), cp/R = a1 + a2 T + a3 T^2 + a4 T^3 + a5 T^4, integrated.
/// </summary>
internal static class GasHeat
{
    private static readonly double[] CarbonDioxide = [2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13];
    private static readonly double[] WaterVapour = [4.19864056, -2.0364341e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12];
    private static readonly double[] Nitrogen = [3.53100528, -1.23660988e-4, -5.02999433e-7, 2.43530612e-9, -1.40881235e-12];
    private static readonly double[] Oxygen = [3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12];

    /// <summary>Heat that dry flue gas gives up from one temperature to another, kJ per mol fuel.</summary>
    public static double DryKj(FlueProducts gas, double hotC, double coldC) =>
        gas.CarbonDioxide * Between(CarbonDioxide, hotC, coldC)
        + gas.Nitrogen * Between(Nitrogen, hotC, coldC)
        + gas.Oxygen * Between(Oxygen, hotC, coldC);

    /// <summary>Heat that water vapour gives up from one temperature to another without condensing, kJ per mol.</summary>
    public static double VapourKjPerMol(double hotC, double coldC) => Between(WaterVapour, hotC, coldC);

    private static double Between(double[] a, double hotC, double coldC) =>
        (Integral(a, Constants.Kelvin(hotC)) - Integral(a, Constants.Kelvin(coldC))) * Constants.GasConstantJPerMolK / 1000;

    private static double Integral(double[] a, double t) =>
        t * (a[0] + t * (a[1] / 2 + t * (a[2] / 3 + t * (a[3] / 4 + t * a[4] / 5))));
}
