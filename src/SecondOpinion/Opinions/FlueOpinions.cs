using Records;
using static SecondOpinion.Say;

namespace SecondOpinion.Opinions;

/// <summary>The flue from the case to its terminal.</summary>
internal static class FlueOpinions
{
    private const string Flue = "/flue";
    private const string Clearances = "/flue/terminalClearances";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("case-seal", one => [CaseSeal(one)]),
        ("flue-effective", one => [Effective(one)]),
        ("flue-examined", one => [Yes(one.Record.Flue?.VisualOk, one.AtRiskOrWorse(Flue))]),
        ("flue-flow-test", one => [OpenOnly(one, () => Yes(one.Record.Flue?.FlowTestPassed, one.AtRiskOrWorse(Flue)))]),
        ("flue-gas-suits-flue", one => [GasSuitsFlue(one)]),
        ("flue-in-void", one => one.AsOf < new DateOnly(2013, 1, 1) ? [] : [InVoid(one)]),
        ("flue-supports", one => [Yes(one.Record.Flue?.SupportsOk, one.AtRiskOrWorse(Flue))]),
        ("open-flue-room", one => [OpenOnly(one, () => OpenFlueRoom(one))]),
        ("spillage-test", one => [OpenOnly(one, () => Spillage(one))]),
        ("terminal-clearance", TerminalClearances),
        ("terminal-guard", one => [TerminalGuard(one)]),
    ];

    private static Opinion OpenOnly(Case one, Func<Opinion> say) => one.IsOpenFlued() switch
    {
        true => say(),
        false => NotApplicable(),
        null => Missing(),
    };

    private static Opinion CaseSeal(Case one)
    {
        var flue = one.Record.Flue;
        if (one.IsOpenFlued() is not { } isOpen)
            return Missing();
        if (isOpen)
            return NotApplicable();
        // Under fan pressure the leak blows products into the room; else it is one where they are found.
        if (flue?.CaseSealOk == false && one.Record.Appliance.CasePressure != CasePressure.Positive)
            return CombustionOpinions.ProductsAtInlet(one) || one.CoIsInRoom() ? one.AtRiskOrWorse(Flue) : Advisory(Flue);
        if (one.Record.Appliance.CasePressure == CasePressure.Negative)
        {
            return flue is { CaseSealChecked: { } isChecked, CaseSealOk: true } ? isChecked ? Pass(Flue) : Advisory(Flue) : Missing(Flue);
        }

        return (one.Record.Appliance.CasePressure, flue) switch
        {
            (_, { CaseSealOk: false }) => Dangerous(Flue),
            (null, _) or (_, not { CaseSealChecked: true, CaseSealOk: true, CaseSealMethod: not null }) => Missing(Flue),
            (_, { CaseSealMethod: CaseSealMethod.Other }) => Advisory(Flue),
            _ => Pass(Flue),
        };
    }

    private static Opinion Effective(Case one) => one.Record.Flue switch
    {
        { EffectivenessConfirmed: false } => one.AtRiskOrWorse(Flue),
        { EffectivenessConfirmed: true, WholeRouteSeen: true } => Pass(Flue),
        { EffectivenessConfirmed: true, WholeRouteSeen: false } => Advisory(Flue),
        _ => Missing(Flue),
    };

    /// <summary>A flue of metal bears what one of plastic, or of nobody knows what, does not; a defect of the flue says what becomes of it.</summary>
    private static Opinion GasSuitsFlue(Case one)
    {
        const string Material = "/flue/material";
        var hottest = (one.Record.Combustion?.Readings ?? []).Where(reading => reading.Stage != WorkStage.BeforeWork).Max(reading => reading.FlueTemperatureC);
        if (one.Record.MakerLimits?.FlueTemperatureCMax is not { } most || hottest is not { } temperature)
            return NotApplicable();
        if (temperature <= most)
            return Pass(Material);
        var isKnown = one.Record.Flue?.Material == FlueMaterial.Metal || one.Record.Defects?.Any(defect => defect.IsOf(Findings.Topics.Flue, Flue)) == true;
        return isKnown ? Advisory(Material) : Missing(Material);
    }

    private static Opinion InVoid(Case one)
    {
        var flue = one.Record.Flue;
        if (flue?.InVoid == false || one.Record.Appliance.FlueType is FlueType.OpenFlued or FlueType.OpenFluedFanned or FlueType.RoomSealedNatural)
            return NotApplicable();
        if (flue?.InVoid is null || one.Record.Appliance.FlueType is null)
            return Missing();
        if (flue.InspectionHatches == false)
            return one.AtRiskOrWorse(Flue);
        if (flue.InspectionHatches is null)
            return Missing(Flue);
        var isOutOfReach = flue.HatchWidthMm < 300 || flue.HatchToJointMm > 1500;
        if (isOutOfReach && flue.EffectivenessConfirmed == false)
            return one.AtRiskOrWorse(Flue);
        if (flue.HatchWidthMm is null || flue.HatchToJointMm is null)
            return Missing(Flue);
        return !isOutOfReach ? Pass(Flue) : flue.EffectivenessConfirmed is null ? Missing(Flue) : Advisory(Flue);
    }

    private static Opinion OpenFlueRoom(Case one)
    {
        const string Room = "/premises";
        var premises = one.Record.Premises;
        var unsafeHere = one.AtRiskOrWorse(Room);
        var isSleeping = premises?.RoomIsSleeping == true || premises?.Room == Records.Room.Bedroom;
        if (premises?.Room == Records.Room.Bathroom)
            return unsafeHere;
        if (isSleeping)
        {
            // Regulation 36(12) lifts 36(11) of a tenant's room slept in since before the Regulations: no danger, and nothing that is newly installed.
            if (premises is { SleptInSinceBeforeRegulations: true } && one.IsLet() == true && one.Record.JobType != JobType.Commissioning && !one.ProductsAreInRoom())
                return Advisory(Room);
            var gross = one.GrossInputKw();
            if (gross > 14 || one.Record.Appliance.VitiationDevice == false)
                return unsafeHere;
            return gross is null || one.Record.Appliance.VitiationDevice is null || premises?.Room is null ? Missing(Room) : Pass(Room);
        }

        return premises?.Room is null || premises.RoomIsSleeping is null ? Missing(Room) : Pass(Room);
    }

    private static Opinion Spillage(Case one)
    {
        var flue = one.Record.Flue;
        if (flue?.SpillageTestPassed is not { } passed)
            return Missing(Flue);
        if (!passed)
            return Dangerous(Flue);
        return one.Record.Ventilation?.ExtractFanInRoom == false || flue.FansRunningDuringSpillage == true ? Pass(Flue) : Missing(Flue);
    }

    private static Opinion TerminalGuard(Case one) => one.Record.Flue switch
    {
        { TerminalGuarded: true } or { TerminalHeightMm: >= 2000 } => Pass(Flue),
        { TerminalGuarded: false, TerminalHeightMm: not null } => Advisory(Flue),
        _ => Missing(Flue),
    };

    private static IEnumerable<Opinion> TerminalClearances(Case one) => one.IsOpenFlued() switch
    {
        true => [NotApplicable()],
        null => [Missing()],
        false => Each(Clearances, one.Record.Flue?.TerminalClearances, (clearance, at) => IsByEffect(one, clearance) && ByTable(one, clearance, at) is { Outcome: Findings.Outcome.Unsafe }
            ? Advisory(at)
            : ByTable(one, clearance, at)),
    };

    /// <summary>
    /// There before anybody measured: flue and boiler unchanged, the opening no newer, the age stated, and short by a quarter at most. Then what
    /// comes through the opening decides, and no carport is judged so. Duties 4; the share is common practice, no source.
    /// </summary>
    private static bool IsByEffect(Case one, TerminalClearance clearance) =>
        one.Record is { Appliance.InstalledOn: not null, Flue.OpeningOlderThanFlue: true, JobType: not JobType.Commissioning }
        && one.Record.Commissioning?.NewBoiler != true
        && !IsFlueWorkedOn(one)
        && clearance is { To: not ClearanceTo.CarportOpening } && clearance.To is { } to && Needed(one, to) is { } needed && clearance.DistanceMm >= 0.75m * needed
        && !(one.Record.AmbientCo is { RoomBehindOpeningPpm: { } behind } air && (behind >= 10 || behind - (air.BeforePpm ?? 0) > 3));

    private static bool IsFlueWorkedOn(Case one) => one.Record.Work?.Kind == WorkKind.FlueRelocation || one.Record.Work?.Touched?.Contains(TouchedPart.Flue) == true
        || one.IsFitted(PartKind.FlueComponent);

    /// <summary>By the table alone, as every clearance stands in it.</summary>
    public static Opinion ByTable(Case one, TerminalClearance clearance, string at)
    {
        if (clearance.To is not { } to || clearance.DistanceMm is not { } distance || Needed(one, to) is not { } needed)
            return Missing(at);
        if (distance >= needed)
            return Pass(at);
        // Near an opening products may enter.
        return to is ClearanceTo.BelowOpening or ClearanceTo.AboveOpening or ClearanceTo.BesideOpening or ClearanceTo.CarportOpening
            ? one.AtRiskOrWorse(at)
            : Advisory(at);
    }

    /// <summary>The table of clearances in mm; null where it turns on an input that the record does not give.</summary>
    public static decimal? Needed(Case one, ClearanceTo to)
    {
        var net = one.NetInputKw();
        return one.Record.Appliance.FlueType == FlueType.RoomSealedFanned
            ? to switch
            {
                ClearanceTo.BelowGutter => 75,
                ClearanceTo.BelowEaves or ClearanceTo.BelowBalcony => 200,
                ClearanceTo.VerticalPipe => net is null ? null : net <= 5 ? 75 : 150,
                ClearanceTo.FacingSurface => 600,
                ClearanceTo.FacingTerminal or ClearanceTo.CarportOpening => 1200,
                ClearanceTo.VerticalTerminal => 1500,
                _ => 300,
            }
            : to switch
            {
                ClearanceTo.BelowOpening => net switch { null => null, <= 7 => 300, <= 14 => 600, <= 32 => 1500, _ => 2000 },
                ClearanceTo.AboveOpening => net switch { null => null, <= 32 => 300, _ => 600 },
                ClearanceTo.BesideOpening => net switch { null => null, <= 7 => 300, <= 14 => 400, _ => 600 },
                ClearanceTo.BelowBalcony or ClearanceTo.Corner or ClearanceTo.BoundaryAlongside => 600,
                ClearanceTo.FacingSurface or ClearanceTo.FacingTerminal => 600,
                ClearanceTo.CarportOpening or ClearanceTo.VerticalTerminal => 1200,
                _ => 300,
            };
    }
}
