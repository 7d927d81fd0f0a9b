using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

/// <summary>Paperwork of the Building Regulations.</summary>
internal static class NewBoilerOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("authority-notified", Since(2010, 10, 1, c => Within30Days(c, "/paperwork/authorityNotifiedOn", c.Record.Paperwork?.AuthorityNotifiedOn))),
        ("building-certificate", Since(2010, 10, 1, c => Within30Days(c, "/paperwork/certificateToOccupierOn", c.Record.Paperwork?.CertificateToOccupierOn))),
        ("new-boiler-design-flow", Since(2022, 6, 15, c => If(InEngland(c), "/commissioning/designFlowC", () =>
            Pass(c.Record.Commissioning!.DesignFlowC is { } flow && c.Limit("new-boiler-design-flow")!.Holds(flow))))),
        ("new-boiler-efficiency", Since(2018, 4, 6, c => If(InEngland(c), "/commissioning/seasonalEfficiencyPercent", () =>
            Within(c.Limit("new-boiler-efficiency"), c.Record.Commissioning!.SeasonalEfficiencyPercent)))),
        ("new-boiler-extra-measure", Since(2018, 4, 6, c => If(InEngland(c), "/commissioning/extraMeasure", () => Pass(Given(c.Record.Commissioning!.ExtraMeasure))))),
        ("new-boiler-interlock", Since(2018, 4, 6, c => If(InEngland(c), "/commissioning/interlock", () => Yes(c.Record.Commissioning!.Interlock)))),
    ];

    private static bool? InEngland(Case c) => And(c.IsIn(Nations.England), c.IsNewBoiler());

    private static IEnumerable<Opinion> Within30Days(Case c, string subject, DateOnly? done) =>
        If(And(c.IsIn(Nations.England, Nations.Wales), c.IsNewBoiler()), subject, () =>
            Pass(!(done < c.Day()) && (done ?? c.AsOf) <= c.Day().AddDays((int)c.Limit("building-notice-days")!.Max!)));
}
