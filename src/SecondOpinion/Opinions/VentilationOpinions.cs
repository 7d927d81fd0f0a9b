using Records;
using static SecondOpinion.Say;

namespace SecondOpinion.Opinions;

/// <summary>Air for the boiler and for its room.</summary>
internal static class VentilationOpinions
{
    private const string Vents = "/ventilation";
    private const string Premises = "/premises";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("air-supply-examined", one => [Yes(one.Record.Ventilation?.AirInletClear, AirShort(one))]),
        ("airtight-home-vent", one => [AirtightHome(one)]),
        ("compartment-vent-area", one => [CompartmentArea(one)]),
        ("compartment-vent-label", one => [CompartmentLabel(one)]),
        ("lpg-below-ground", one => [LpgBelowGround(one)]),
        ("plant-room-vent-area", one => [PlantRoom(one)]),
        ("room-vent-area", one => [RoomArea(one)]),
        ("vent-kind", one => [VentKind(one)]),
        ("vents-clear", one => [VentsClear(one)]),
    ];

    /// <summary>Too little air is a risk, and an immediate danger where products already come into the room.</summary>
    private static Opinion AirShort(Case one) => one.AtRiskOrWorse(Vents);

    private static Opinion LpgBelowGround(Case one)
    {
        if (one.Record.Appliance.Fuel is not { } fuel)
            return Missing();
        if (fuel == Fuel.NaturalGas)
            return NotApplicable();
        return one.Record.Premises?.BelowGround is { } below ? below ? AtRisk(Premises) : Pass(Premises) : Missing(Premises);
    }

    /// <summary>Is the boiler open-flued and of domestic size, and does its air come by way of a room, be it through a cupboard?</summary>
    private static bool? IsOpenFlueInRoom(Case one) => And(one.IsOpenFlued(), IsAirOfRoom(one.Record.Ventilation), IsDomestic(one));

    /// <summary>Only of a cupboard that vents to outside is it known that the room does not matter.</summary>
    private static bool? IsAirOfRoom(Ventilation? vents) => vents?.OpensTo == VentilationOpensTo.Room ? true
        : vents?.Compartment is not { } isCupboard ? null
        : !(isCupboard && vents.OpensTo == VentilationOpensTo.Outside);

    private static bool IsOpeningUnsaid(Case one) => one.Record.Ventilation is { Compartment: true, OpensTo: null };

    private static bool? IsDomestic(Case one) => one.NetInputKw() is { } net ? net <= 70 : null;

    private static bool? And(params ReadOnlySpan<bool?> parts) => parts.Contains(false) ? false : parts.Contains(null) ? null : true;

    /// <summary>Vent area that a room needs in cm2: 5 for each kW net beyond what leaks in, half as much again through inner rooms.</summary>
    private static decimal? NeededArea(Case one, decimal leakageKw)
    {
        var vents = one.Record.Ventilation;
        return vents is { OtherOpenFluedNetKw: not null, ThroughInnerRooms: not null } && one.NetInputKw() is { } net
            ? 5 * Math.Max(0, net + vents.OtherOpenFluedNetKw.Value - leakageKw) * (vents.ThroughInnerRooms.Value ? 1.5m : 1)
            : null;
    }

    private static Opinion RoomArea(Case one)
    {
        switch (IsOpenFlueInRoom(one))
        {
            case null: return Missing();
            case false: return NotApplicable();
        }

        if (one.Record.Ventilation?.FreeAreaCm2 is not { } area || NeededArea(one, 7) is not { } needed || IsOpeningUnsaid(one))
            return Missing(Vents);
        if (area >= needed)
            return Pass(Vents);
        if (one.ProductsAreInRoom())
            return Dangerous(Vents);
        return area >= 0.9m * needed ? Advisory(Vents) : AtRisk(Vents);
    }

    private static Opinion AirtightHome(Case one)
    {
        switch (IsOpenFlueInRoom(one))
        {
            case null: return Missing();
            case false: return NotApplicable();
        }

        if (one.Record.Premises?.AirPermeabilityM3PerHM2 is not { } permeability)
            return Missing(Premises);
        if (permeability > 5)
            return Pass(Premises);
        if (one.Record.Ventilation?.FreeAreaCm2 is not { } area || NeededArea(one, 0) is not { } needed || IsOpeningUnsaid(one))
            return Missing(Premises);
        return area >= needed ? Pass(Premises) : Advisory(Premises);
    }

    /// <summary>Does the boiler stand in a compartment whose vents are of the standard's and not of the maker's making?</summary>
    private static bool? NeedsCompartmentVents(Case one)
    {
        var isOpen = one.IsOpenFlued();
        var isNotCondensing = !one.Record.Appliance.Condensing;
        bool? needs = isOpen == true || isNotCondensing == true ? true : isOpen is null || isNotCondensing is null ? null : false;
        return And(one.Record.Ventilation?.Compartment, needs);
    }

    private static Opinion CompartmentArea(Case one)
    {
        switch (And(NeedsCompartmentVents(one), IsDomestic(one)))
        {
            case null: return Missing();
            case false: return NotApplicable();
        }

        // A flue of unknown type may be open, which needs more.
        var isOpen = one.IsOpenFlued() != false;
        return (isOpen ? IsEnoughForOpen(one) : IsEnoughForSealed(one)) switch
        {
            true => Pass(Vents),
            false => isOpen ? AirShort(one) : Advisory(Vents),
            null => Missing(Vents),
        };
    }

    private static bool? IsEnoughForOpen(Case one)
    {
        var net = one.NetInputKw() + one.Record.Ventilation!.OtherOpenFluedNetKw;
        return one.Record.Ventilation.OpensTo == VentilationOpensTo.Outside ? IsEnough(one, net, 5, 10) : IsEnough(one, net, 10, 20);
    }

    private static bool? IsEnoughForSealed(Case one) => one.Record.Ventilation!.OpensTo == VentilationOpensTo.Outside
        ? IsEnough(one, one.NetInputKw(), 5, 5)
        : IsEnough(one, one.NetInputKw(), 10, 10);

    private static bool? IsEnough(Case one, decimal? netKw, decimal highPerKw, decimal lowPerKw) =>
        netKw is { } net && one.Record.Ventilation is { OpensTo: not null, HighFreeAreaCm2: { } high, LowFreeAreaCm2: { } low }
            ? high >= highPerKw * net && low >= lowPerKw * net
            : null;

    private static Opinion CompartmentLabel(Case one) => NeedsCompartmentVents(one) switch
    {
        null => Missing(),
        false => NotApplicable(),
        true => Yes(one.Record.Ventilation!.Labelled, Advisory(Vents)),
    };

    private static Opinion PlantRoom(Case one)
    {
        switch (And(one.IsOpenFlued(), !IsDomestic(one)))
        {
            case null: return Missing();
            case false: return NotApplicable();
        }

        if (one.Record.Ventilation is not { HighFreeAreaCm2: { } high, LowFreeAreaCm2: { } low, OtherOpenFluedNetKw: { } others, Compartment: { } isEnclosure })
            return Missing(Vents);
        var net = one.NetInputKw()!.Value + others;
        var (highPerKw, lowPerKw) = isEnclosure ? (5, 10) : (2, 4);
        if (high >= highPerKw * net && low >= lowPerKw * net)
            return Pass(Vents);
        return one.ProductsAreInRoom() ? Dangerous(Vents) : Advisory(Vents);
    }

    private static Opinion VentKind(Case one)
    {
        var compartment = NeedsCompartmentVents(one);
        var isOpen = one.IsOpenFlued();
        if (isOpen != true && compartment == false)
            return isOpen is null ? Missing() : NotApplicable();
        if (isOpen != true && compartment is null)
            return Missing();

        var vents = one.Record.Ventilation;
        if (vents?.Closable == true)
            return isOpen == true ? AirShort(one) : Advisory(Vents);
        return Facts.Gravest(Yes(!vents?.Closable, Advisory(Vents)), Yes(!vents?.Gauze, Advisory(Vents)));
    }

    private static Opinion VentsClear(Case one) => one.Record.Ventilation?.Blocked switch
    {
        null => Missing(Vents),
        false => Pass(Vents),
        true => one.IsOpenFlued() == false ? Advisory(Vents) : AirShort(one),
    };
}
