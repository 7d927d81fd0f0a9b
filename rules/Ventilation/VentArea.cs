using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Ventilation;

/// <summary>How much vent a boiler needs. Areas in cm2 of free opening, inputs in kW (net).</summary>
internal static class VentArea
{
    /// <summary>
    /// Stands in a compartment whose vents matter: for a condensing room-sealed boiler the maker's instructions decide, and often ask for none.
    /// </summary>
    public static bool? NeedsCompartmentVents(this Visit visit) =>
        visit.Record.Ventilation?.Compartment & (visit.IsOpenFlued | !visit.Appliance.Condensing);

    /// <summary>
    /// Open-flued, and fed with air through a room: it stands in the room, or in a compartment of which nobody says that it opens to outside.
    /// </summary>
    public static bool? BreathesFromARoom(this Visit visit) => visit.IsOpenFlued & (visit.Record.Ventilation switch
    {
        { Compartment: false } or { OpensTo: VentilationOpensTo.Room } => true,
        { Compartment: true, OpensTo: var to } => to is null,
        _ => null,
    });

    /// <summary>True, and asks, while nobody says where the vents of the compartment open to.</summary>
    public static bool LacksOpening(this Look look, Visit visit) =>
        visit.Record.Ventilation?.Compartment == true && look.Lacks(visit.Record.Ventilation?.OpensTo, out _);

    /// <summary>Of the size for which the domestic standard is written; null while the plate's input (net) is not known.</summary>
    public static bool? IsOfDomesticSize(this Visit visit) =>
        visit.RatedInputNetKw is { } netKw ? visit.Limits[LimitIds.DomesticScopeInput].Allows(netKw) : null;

    /// <summary>True, and asks, while the plate's input is not recorded.</summary>
    /// <exception cref="FuelNeededException">It is recorded gross, and the fuel is not.</exception>
    public static bool LacksInput(this Look look, Visit visit, out decimal netKw)
    {
        var lacks = look.Lacks(visit.Record.Appliance.RatedInputKw, out _) | look.Lacks(visit.Record.Appliance.RatedInputBasis, out _);
        netKw = lacks ? 0 : visit.RatedInputNetKw ?? throw new FuelNeededException();
        return lacks;
    }

    /// <summary>The share of the plain area that is needed: more where the air comes through inner rooms.</summary>
    public static decimal ShareOf(Visit visit, bool throughInnerRooms) => throughInnerRooms ? visit.Limits[LimitIds.InnerRoomShare].Min!.Value / 100 : 1;

    /// <summary>The area that <paramref name="netKw"/> needs by <paramref name="perKw"/>, as a limit of its own.</summary>
    public static Limit For(Limit perKw, decimal netKw, decimal share = 1) => new()
    {
        // Rounded where nobody measures, so that what a sentence shows is what is compared.
        Min = decimal.Round(perKw.Min!.Value * Math.Max(0, netKw) * share, 4),
        Unit = "cm2",
        Origin = perKw.Origin,
        Source = $"{perKw.Source}: {WireText.Of(perKw.Min.Value)} cm2 for each kW net",
        Verified = perKw.Verified,
    };
}
