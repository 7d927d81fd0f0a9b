namespace Visits.Computations;

/// <summary>Every computation behind a record.</summary>
public static class ComputationTable
{
    /// <summary>All, in the order of a visit: flue gas, gas rate, tightness, water, exchanger, air, dates, uncertainty.</summary>
    public static IReadOnlyList<Computation> All { get; } =
    [
        .. FlueGasComputations.All,
        .. FlueLossComputations.All,
        .. GasRateComputations.All,
        .. TightnessComputations.All,
        .. VesselComputations.All,
        .. WaterComputations.All,
        .. AirComputations.All,
        .. DateComputations.All,
        .. UncertaintyComputations.All,
    ];

    /// <summary>The computation of that name, or null.</summary>
    public static Computation? Find(string name) => All.FirstOrDefault(computation => computation.Name == name);
}
