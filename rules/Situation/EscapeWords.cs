using Findings;
using Records;
using Visits;

namespace Rules.Situation;

/// <summary>What was done about gas or products that escape.</summary>
internal static class EscapeWords
{
    /// <summary>After an escape the gas was shut off, and the emergency provider's reference is recorded.</summary>
    public static bool EscapeIsMadeSafe(this Visit visit) => visit.GasIsShutOff() && visit.EscapeIsCalledIn();

    /// <summary>The record says that the gas was shut off, and does not say beside it that nothing was isolated.</summary>
    public static bool GasIsShutOff(this Visit visit) => visit.Record.Escape is { GasIsolated: true, IsolatedAt: not IsolationPoint.NotIsolated };

    /// <summary>The reference of the emergency provider, or of the supplier of LPG, is recorded.</summary>
    public static bool EscapeIsCalledIn(this Visit visit) => !string.IsNullOrWhiteSpace(visit.Record.Escape?.Reference);

    /// <summary>What escaped was put right and shown right, and no other defect leaves gas or products to escape.</summary>
    public static bool EscapeIsPutRight(this Visit visit)
    {
        var escaping = visit.RecordedDefects.Where(recorded => recorded.IsDangerous && IsOfAnEscape(recorded, visit)).ToList();
        return escaping.Count > 0 && escaping.All(recorded => recorded.Defect.Action == DefectAction.Rectified && Handling.IsShownRight(recorded, visit));
    }

    /// <summary>To shut the gas off or to put it right was refused, and the emergency provider was called.</summary>
    public static bool EscapeIsLeftByRefusal(this Visit visit) =>
        visit.EscapeIsCalledIn() && visit.RecordedDefects.Any(recorded => recorded.IsRefusalDealtWith && !string.IsNullOrWhiteSpace(recorded.Defect.EmergencyReference));

    private static bool IsOfAnEscape(RecordedDefect recorded, Visit visit) => recorded.IsOfGas(visit)
        || recorded.Defect.Mechanism is DefectMechanism.GasLeak or DefectMechanism.ProductsNotRemoved or DefectMechanism.IncompleteCombustion || recorded.Defect.Topic == Topics.AmbientAir;
}
