using Visits.Computations;

namespace Visits.Figures;

/// <summary>The vents that open flues in a room need.</summary>
internal static class VentilationFigures
{
    public static void AddTo(Worksheet sheet)
    {
        var visit = sheet.Visit;
        if (visit.IsOpenFlued != true || visit.Record.Ventilation is not { Compartment: false, ThroughInnerRooms: { } through } air)
            return;

        string[] pointers = ["/appliance/ratedInputKw", "/appliance/ratedInputBasis", "/ventilation/otherOpenFluedNetKw", "/ventilation/throughInnerRooms"];
        sheet.Add(AirComputations.OpenFlueVentArea, "/ventilation",
        [
            Given.Made("openFluedNetKw", visit.RatedInputNetKw + air.OtherOpenFluedNetKw, pointers),
            Given.Constant("cm2PerKw", visit.Limits.Find(visit.Law.OpenFlueVentPerKw)?.Min),
            Given.Constant("leakageKw", visit.Limits.Find(visit.Law.LeakageInput)?.Max),
            Given.Constant("sharePercent", through ? visit.Limits.Find(visit.Law.InnerRoomShare)?.Min : 100m),
        ]);
    }
}
