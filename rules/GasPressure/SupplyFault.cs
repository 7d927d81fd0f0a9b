using Kernel;
using Visits;

namespace Rules.GasPressure;

/// <summary>A fault of the supply is not the gas engineer's to mend: it is reported, and the record says to whom.</summary>
internal static class SupplyFault
{
    public static Verdict ToBeReported(this Verdict verdict, Visit visit) => verdict
        .AndMissing(string.IsNullOrWhiteSpace(visit.Record.GasSupply?.ReportedTo) ? ["/gasSupply/reportedTo"] : [])
        .Advise(visit.BurnsNaturalGas
            ? "Report it to the gas emergency provider before anything else is changed, and record to whom. Do not adjust the regulator."
            : "Report it to the gas supplier before anything else is changed, and record to whom. Do not adjust the regulator.");
}
