using Findings;
using Records;
using Rules.Tightness;
using Visits;

namespace Rules.Situation;

/// <summary>What was done about gas or products that escape.</summary>
internal static class EscapeWords
{
    /// <summary>
    /// What escaped was put right and shown right, no other defect leaves gas or products to escape, and a tightness test shows what the gas was
    /// let into again: nobody can tell from the word "escape" whether it was gas.
    /// </summary>
    public static bool EscapeIsPutRight(this Visit visit)
    {
        var escaping = visit.RecordedDefects.Where(recorded => recorded.IsDangerous && IsOfAnEscape(recorded, visit)).ToList();
        return escaping.Count > 0 && visit.TestsAfterWork?.Any(test => TightnessProof.ShowsTight(test.Pointer, visit, []) == true) == true && escaping.All(recorded => recorded.Defect.Action == DefectAction.Rectified && Handling.IsShownRight(recorded, visit));
    }

    /// <summary>To shut the gas off or to put it right was refused, and the emergency provider was called.</summary>
    public static bool EscapeIsLeftByRefusal(this Visit visit) =>
        visit.EscapeIsCalledIn() && visit.RecordedDefects.Any(recorded => recorded.IsRefusalDealtWith && !string.IsNullOrWhiteSpace(recorded.Defect.EmergencyReference));

    private static bool IsOfAnEscape(RecordedDefect recorded, Visit visit) => recorded.IsOfGas(visit)
        || recorded.Defect.Mechanism is DefectMechanism.GasLeak or DefectMechanism.ProductsNotRemoved or DefectMechanism.IncompleteCombustion || recorded.Defect.Topic == Topics.AmbientAir;
}
