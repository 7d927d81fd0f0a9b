using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using Records;
using Rules.AmbientAir;
using Visits;

namespace Rules.Flue;

[Name(RuleIds.TerminalClearance), Topic(Topics.Flue), Cites("BS-5440", "1"), Cites("GSIUR-1998", "27")]
[Description("The terminal of a room-sealed flue keeps its distance from openings, surfaces and other terminals")]
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
        if (Clearances.DependsOnInput(to, isFanned)
            && (look.Lacks(visit.Record.Appliance.RatedInputKw, out _) | look.Lacks(visit.Record.Appliance.RatedInputBasis, out _)))
        {
            return look.Missing($"the distance to keep depends on the heat input, which is not recorded");
        }

        var limit = visit.Limits[Clearances.LimitId(to, isFanned, visit.RatedInputNetKw ?? 0)];
        if (limit.Allows(distance))
            return look.Pass($"the terminal is {distance} mm away ({to}), at least {limit.Min}").Against(limit, distance);

        // The table is for new work: what stands is judged by its effect, and products near an opening may come in.
        FormattableString message = $"the terminal is {distance} mm away ({to}), less than {limit.Min}";
        return (to.LeadsIntoABuilding() ? look.Unsafe(message, look.ClassOfEscapingProducts(visit)) : look.Advisory(message))
            .Against(limit, distance).Warn(Cautions.CarbonMonoxide)
            .Advise("Check with the boiler running that no products come into a building, and have the terminal moved or the distance confirmed by the maker.");
    }
}
