using RuleModel.Computations;

namespace RuleModel.Figures;

/// <summary>The vents that open flues in a room need.</summary>
internal static class VentilationFigures
{
    // Ids of limits.
    private const string PerKw = "open-flue-vent-per-kw";
    private const string Leakage = "leakage-input";
    private const string InnerRooms = "inner-room-share";

    public static void AddTo(Worksheet sheet)
    {
        var visit = sheet.Visit;
        if (visit.IsOpenFlued != true || visit.Record.Ventilation is not { Compartment: false, ThroughInnerRooms: { } through } air)
            return;

        string[] pointers = ["/appliance/ratedInputKw", "/appliance/ratedInputBasis", "/ventilation/otherOpenFluedNetKw", "/ventilation/throughInnerRooms"];
        sheet.Add(AirComputations.OpenFlueVentArea, "/ventilation",
        [
            Given.Made("openFluedNetKw", visit.RatedInputNetKw + air.OtherOpenFluedNetKw, pointers),
            Given.Constant("cm2PerKw", visit.Limits.Find(PerKw)?.Min),
            Given.Constant("leakageKw", visit.Limits.Find(Leakage)?.Max),
            Given.Constant("sharePercent", through ? visit.Limits.Find(InnerRooms)?.Min : 100m),
        ]);
    }
}
