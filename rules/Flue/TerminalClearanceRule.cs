using Findings;
using Kernel;
using Records;
using Rules.AmbientAir;
using Rules.Duties.Work;
using Visits;

namespace Rules.Flue;

[Id(RuleIds.TerminalClearance), Topic(Topics.Flue), Cites("BS-5440", "1"), Cites("GSIUR-1998", "27")]
[Title("The terminal of a room-sealed flue keeps its distance from openings, surfaces and other terminals")]
[Why("Too near a window or air brick, the products from a terminal can come back indoors, and close to a wall or another terminal they do not disperse. New openings and neighbours' flues can spoil a position that was once right.")]
[Serves(Part.Terminal)]
[Uses(LimitIds.AmbientCo, LimitIds.AmbientCoRise, LimitIds.ExistingClearanceShare, LimitIds.ClearanceFannedBelowGutter, LimitIds.ClearanceNaturalBelowGutter, LimitIds.ClearanceFannedBelowEaves,
    LimitIds.ClearanceNaturalBelowEaves, LimitIds.ClearanceFannedBelowBalcony, LimitIds.ClearanceNaturalBelowBalcony,
    LimitIds.ClearanceNaturalVerticalPipe, LimitIds.ClearanceFannedCorner, LimitIds.ClearanceNaturalCorner,
    LimitIds.ClearanceFannedBoundaryAlongside, LimitIds.ClearanceNaturalBoundaryAlongside, LimitIds.ClearanceFannedGround,
    LimitIds.ClearanceNaturalGround, LimitIds.ClearanceFannedFacingSurface, LimitIds.ClearanceNaturalFacingSurface,
    LimitIds.ClearanceFannedFacingTerminal, LimitIds.ClearanceNaturalFacingTerminal, LimitIds.ClearanceFannedCarportOpening,
    LimitIds.ClearanceNaturalCarportOpening, LimitIds.ClearanceFannedVerticalTerminal, LimitIds.ClearanceNaturalVerticalTerminal,
    LimitIds.ClearanceFannedHorizontalTerminal, LimitIds.ClearanceNaturalHorizontalTerminal, LimitIds.ClearanceFannedBelowOpening,
    LimitIds.ClearanceFannedAboveOpening, LimitIds.ClearanceFannedBesideOpening, LimitIds.ClearanceFannedVerticalPipeTo5,
    LimitIds.ClearanceFannedVerticalPipeOver5, LimitIds.ClearanceNaturalBelowOpeningTo7, LimitIds.ClearanceNaturalBelowOpeningTo14,
    LimitIds.ClearanceNaturalBelowOpeningTo32, LimitIds.ClearanceNaturalBelowOpeningOver32, LimitIds.ClearanceNaturalAboveOpeningTo32,
    LimitIds.ClearanceNaturalAboveOpeningOver32, LimitIds.ClearanceNaturalBesideOpeningTo7, LimitIds.ClearanceNaturalBesideOpeningTo14,
    LimitIds.ClearanceNaturalBesideOpeningOver14)]
[Expects("/flue/terminalClearances"), AppliesBy("/appliance/flueType")]
[Coverage(Coverage.MayOverReport, "what stood before an edition is judged by its effect, and the maker may allow less")]
public sealed class TerminalClearanceRule : ComplianceRule<TerminalClearance>
{
    protected override bool? Applies(Visit visit) => visit.IsRoomSealed;

    protected override IEnumerable<Subject<TerminalClearance>>? Subjects(Visit visit) =>
        Kernel.Subjects.Of("/flue/terminalClearances", visit.Record.Flue?.TerminalClearances);

    protected override Verdict Assess(TerminalClearance clearance, Visit visit, Look look)
    {
        if (look.Lacks(clearance.To, out var to) | look.Lacks(clearance.DistanceMm, out var distance))
            return look.Missing();

        var isFanned = visit.IsFanned == true;
        var dependsOnInput = Clearances.DependsOnInput(to, isFanned);
        if (dependsOnInput
            && (look.Lacks(visit.Record.Appliance.RatedInputKw, out _) | look.Lacks(visit.Record.Appliance.RatedInputBasis, out _)))
        {
            return look.Missing($"the distance to keep depends on the heat input, which is not recorded");
        }

        var limit = visit.Limits[Clearances.LimitId(to, isFanned, dependsOnInput ? visit.RatedInputNetKw ?? throw new FuelNeededException() : 0)];
        if (limit.Allows(distance))
            return look.Pass($"the terminal is {distance} mm away ({to}), at least {limit.Min}").Against(limit, distance);

        if (to.LeadsIntoABuilding() && StoodBefore(visit, look) && visit.Limits[LimitIds.ExistingClearanceShare] is var share && share.Allows(distance * 100m / limit.Min!.Value))
            return ByItsEffect(to, distance, limit, visit, look);

        // The table is for new work: what stands is judged by its effect, and products near an opening may come in.
        FormattableString message = $"the terminal is {distance} mm away ({to}), less than {limit.Min}";
        return (to.LeadsIntoABuilding() ? look.Unsafe(message, look.ClassOfEscapingProducts(visit)) : look.Advisory(message))
            .Against(limit, distance).Warn(Cautions.CarbonMonoxide)
            .Advise("Check with the boiler running that no products come into a building, and have the terminal moved or the distance confirmed by the maker.");
    }

    /// <summary>Flue and boiler are as they were, their age is stated, and the opening is no newer: of all that the record says so itself.</summary>
    private static bool StoodBefore(Visit visit, Look look) =>
        look.Note(visit.Record.Flue?.OpeningOlderThanFlue) == true && look.Note(visit.Record.Appliance.InstalledOn) is { } installed && installed < visit.Date
        && visit.Record.JobType != JobType.Commissioning && visit.Record.Commissioning?.NewBoiler != true
        && visit.Record.Work?.Kind != WorkKind.FlueRelocation && visit.Record.Work?.Touched?.Contains(TouchedPart.Flue) != true && !visit.Fitted(PartKind.FlueComponent);

    private static Verdict ByItsEffect(ClearanceTo to, decimal distance, Limit limit, Visit visit, Look look)
    {
        if (look.Note(visit.Record.AmbientCo?.RoomBehindOpeningPpm) is not { } behind)
        {
            return look.Advisory($"the terminal is {distance} mm away ({to}), less than {limit.Min}; of one that was there before, the air of the room behind the opening decides, and that was not measured with the boiler running").AndMissing("/ambientCo/roomBehindOpeningPpm")
                .Against(limit, distance).Warn(Cautions.CarbonMonoxide).Advise("Measure carbon monoxide in the room behind the opening with the boiler at full rate.");
        }

        return (visit.Limits[LimitIds.AmbientCoRise].Allows(behind)
                ? look.Advisory($"the terminal is {distance} mm away ({to}), less than {limit.Min}; it was there before, and the room behind the opening shows {behind} ppm carbon monoxide with the boiler running")
                : look.Unsafe($"the terminal is {distance} mm away ({to}), less than {limit.Min}, and the room behind the opening shows {behind} ppm carbon monoxide with the boiler running", look.ClassOfEscapingProducts(visit)))
            .Against(limit, distance).Warn(Cautions.CarbonMonoxide).Advise("Have the terminal moved when boiler or flue is renewed, and measure behind the opening at every visit.");
    }
}
