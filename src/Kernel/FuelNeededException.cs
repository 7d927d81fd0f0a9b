namespace Kernel;

/// <summary>
/// Somebody reads what differs by the fuel, and the record does not name it. A rule that runs into it asks for the fuel: no default stands in.
/// </summary>
public sealed class FuelNeededException() : Exception("What was read differs by the fuel, which the record does not name.");
