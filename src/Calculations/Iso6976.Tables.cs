namespace Calculations;

public sealed partial class Iso6976
{
    private const double None = double.NaN;

    /// <summary>
    /// ISO 6976:2016, tables A.1 to A.4. Columns: summation factor at 0, 15, 15.55, 20 C; gross kJ/mol at 0, 15, 15.55, 20, 25 C.
    /// Read in a public transcription of the standard; a second one agrees for the alkanes, nitrogen and carbon dioxide.
    /// </summary>
    public static Iso6976 Edition2016 { get; } = new(8.3144621, 28.96546, [0.999419, 0.999595, 0.999601, 0.999645], new()
    {
        [GasComponent.Methane] = new(16.04246, [0.04886, 0.04452, 0.04437, 0.04317], [892.92, 891.51, 891.46, 891.05, 890.58]),
        [GasComponent.Ethane] = new(30.06904, [0.0997, 0.0919, 0.0916, 0.0895], [1564.35, 1562.14, 1562.06, 1561.42, 1560.69]),
        [GasComponent.Propane] = new(44.09562, [0.1465, 0.1344, 0.1340, 0.1308], [2224.03, 2221.10, 2220.99, 2220.13, 2219.17]),
        [GasComponent.NButane] = new(58.12220, [0.2022, 0.1840, 0.1834, 0.1785], [2883.35, 2879.76, 2879.63, 2878.58, 2877.40]),
        [GasComponent.IsoButane] = new(58.12220, [0.1885, 0.1722, 0.1717, 0.1673], [2874.21, 2870.58, 2870.45, 2869.39, 2868.20]),
        [GasComponent.NPentane] = new(72.14878, [0.2586, 0.2361, 0.2354, 0.2295], [3542.91, 3538.60, 3538.45, 3537.19, 3535.77]),
        [GasComponent.IsoPentane] = new(72.14878, [0.2458, 0.2251, 0.2244, 0.2189], [3536.01, 3531.68, 3531.52, 3530.25, 3528.83]),
        [GasComponent.NeoPentane] = new(72.14878, [0.2245, 0.2040, 0.2033, 0.1979], [3521.75, 3517.44, 3517.28, 3516.02, 3514.61]),
        [GasComponent.NHexane] = new(86.17536, [0.3319, 0.3001, 0.2990, 0.2907], [4203.24, 4198.24, 4198.06, 4196.60, 4194.95]),
        [GasComponent.Propene] = new(42.07974, [0.1381, 0.1267, 0.1263, 0.1232], [2061.57, 2059.43, 2059.35, 2058.73, 2058.02]),
        [GasComponent.Hydrogen] = new(2.01588, [-0.01, -0.01, -0.01, -0.01], [286.64, 286.15, 286.13, 285.99, 285.83]),
        [GasComponent.CarbonMonoxide] = new(28.0101, [0.0258, 0.0217, 0.0215, 0.0203], [282.80, 282.91, 282.91, 282.95, 282.98]),
        [GasComponent.Nitrogen] = new(28.0134, [0.0214, 0.0170, 0.0169, 0.0156], [0, 0, 0, 0, 0]),
        [GasComponent.Oxygen] = new(31.9988, [0.0311, 0.0276, 0.0275, 0.0265], [0, 0, 0, 0, 0]),
        [GasComponent.CarbonDioxide] = new(44.0095, [0.0821, 0.0752, 0.0749, 0.0730], [0, 0, 0, 0, 0]),
        [GasComponent.Water] = new(18.01528, [0.3093, 0.2562, 0.2546, 0.2419], [45.064, 44.431, 44.408, 44.222, 44.013]),
    });

    /// <summary>
    /// ISO 6976:1995, for the test gases of EN 437:2003+A1:2009, which rest on it. Same columns, none at 15.55 C. One public
    /// transcription; air, gas constant and the summation factor of hydrogen from memory.
    /// </summary>
    public static Iso6976 Edition1995 { get; } = new(8.314510, 28.9626, [0.99941, 0.99958, None, 0.99963], new()
    {
        [GasComponent.Methane] = new(16.043, [0.0490, 0.0447, None, 0.0436], [892.97, 891.56, None, 891.09, 890.63]),
        [GasComponent.Propane] = new(44.097, [0.1453, 0.1338, None, 0.1288], [2224.01, 2221.10, None, 2220.13, 2219.17]),
        [GasComponent.NButane] = new(58.123, [0.2069, 0.1871, None, 0.1783], [2883.82, 2879.76, None, 2878.57, 2877.40]),
        [GasComponent.IsoButane] = new(58.123, [0.2049, 0.1789, None, 0.1703], [2874.20, 2870.58, None, 2869.38, 2868.20]),
        [GasComponent.Propene] = new(42.081, [0.1378, 0.1265, None, 0.1225], [2061.57, 2059.43, None, 2058.72, 2058.02]),
        [GasComponent.Hydrogen] = new(2.0159, [-0.0040, -0.0048, None, -0.0051], [286.63, 286.15, None, 285.99, 285.83]),
        [GasComponent.Nitrogen] = new(28.0135, [0.0224, 0.0173, None, 0.0173], [0, 0, None, 0, 0]),
        [GasComponent.Water] = new(18.0153, [0.2646, 0.2345, None, 0.2191], [45.074, 44.433, None, 44.224, 44.016]),
    });
}
