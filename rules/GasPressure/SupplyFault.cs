using Kernel;
using Records;
using Visits;

namespace Rules.GasPressure;

/// <summary>A fault of the supply is not the gas engineer's to mend: it is reported, and the record says to whom.</summary>
internal static class SupplyFault
{
    public static Verdict ToBeReported(this Verdict verdict, Visit visit) => verdict
        .AndMissing(string.IsNullOrWhiteSpace(visit.Record.GasSupply?.ReportedTo) ? ["/gasSupply/reportedTo"] : [])
        .Advise(visit.Appliance.Fuel switch
        {
            null => "Report it to the gas emergency provider, or where the gas is liquefied to its supplier, before anything else is changed, and record to whom. Do not adjust the regulator.",
            Fuel.NaturalGas => "Report it to the gas emergency provider before anything else is changed, and record to whom. Do not adjust the regulator.",
            _ => "Report it to the gas supplier before anything else is changed, and record to whom. Do not adjust the regulator.",
        });
}
