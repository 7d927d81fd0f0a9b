using Findings;
using ServiceRecords;
using static SecondOpinion.Tests.Reply;

namespace SecondOpinion.Tests;

internal static class UnsafeSituationOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("altered-since-last-visit", c => On("/premises/alteredSinceLastVisit", c.Record.Premises?.AlteredSinceLastVisit is { } altered ? Pass(!altered) : Outcome.Missing)),
        ("at-risk-recorded", Defects(AtRisk)),
        ("defect-classed", Defects((_, defect) => defect.Class is null ? Outcome.Missing : Outcome.Pass)),
        ("defect-described", Defects((_, defect) => Given(defect.Description) ? Pass(Given(defect.Location)) : Outcome.Missing)),
        ("defect-labelled", Standing(defect => Pass(defect.Labelled == true))),
        ("defect-made-safe", Defects((_, defect) => defect.Class == DefectClass.Other ? null : MadeSafe(defect))),
        ("defect-notified", Defects(Notified)),
        ("defect-permission", Standing(Permission)),
        ("escape-made-safe", c => Immediately(On("/escape", EscapeMadeSafe(c.Record.Escape)))),
        ("immediately-dangerous-recorded", c => Immediately(Defects((_, defect) => defect.Class switch
        {
            null => Outcome.Missing,
            DefectClass.ImmediatelyDangerous => Outcome.Unsafe,
            DefectClass.AtRisk => Outcome.NotApplicable,
            _ => null,
        })(c))),
        ("notice-copy-left", Standing(defect => Pass(defect.CopyLeft == true))),
        ("notice-signed", Standing(defect => Pass(defect.UserSigned == true || defect.Permission == Consent.NobodyPresent))),
        ("report-decided", Since(2013, 10, 1, Defects(ReportDecided))),
        ("report-in-time", Since(2013, 10, 1, Defects(ReportInTime))),
        ("state-on-leaving-recorded", c => On("/appliance/stateOnLeaving", c.Record.Appliance.StateOnLeaving is null ? Outcome.Missing : Outcome.Pass)),
        ("user-told-not-to-use", Standing(Told)),
        ("warning-notice", Standing(defect => Pass(Given(defect.NoticeNumber)))),
    ];

    private static Func<Case, IEnumerable<Opinion>> Defects(Func<Case, Defect, Outcome?> judge) =>
        c => Each(c.Record.Defects, "/defects", defect => judge(c, defect));

    /// <summary>About each dangerous defect that was not put right.</summary>
    private static Func<Case, IEnumerable<Opinion>> Standing(Func<Defect, Outcome> judge) => Defects((_, defect) => defect switch
    {
        { Class: DefectClass.Other } or { Action: DefectAction.Rectified } => null,
        { Class: null } => Outcome.Missing,
        _ => judge(defect),
    });

    private static Outcome? AtRisk(Case c, Defect defect) => defect switch
    {
        { Class: null } => Outcome.Missing,
        { Class: DefectClass.Other } => null,
        { Class: DefectClass.ImmediatelyDangerous } => Outcome.NotApplicable,
        { Action: DefectAction.Rectified } => Outcome.Advisory,
        _ => Outcome.Unsafe,
    };

    // Turned off is enough for At Risk only; after a refusal At Risk needs a signature, Immediately Dangerous the emergency provider.
    private static Outcome MadeSafe(Defect defect)
    {
        var atRisk = defect.Class == DefectClass.AtRisk;
        return defect switch
        {
            { Class: null } or { Action: null } => Outcome.Missing,
            { Action: DefectAction.Rectified or DefectAction.Disconnected } => Outcome.Pass,
            { Action: DefectAction.TurnedOff } when atRisk => Outcome.Pass,
            { Permission: Consent.Refused } when (atRisk ? defect.UserSigned == true : Given(defect.EmergencyReference)) => Outcome.Pass,
            _ => Outcome.Missing,
        };
    }

    private static Outcome? Notified(Case c, Defect defect) => defect switch
    {
        { NotifiedOn: { } told } => Pass(told <= c.Day()),
        _ => Given(defect.ReportedTo) ? Outcome.Pass : Outcome.Missing,
    };

    private static Outcome Permission(Defect defect) => Pass(defect.Permission is not null
        && !(defect is { Permission: Consent.Refused, Action: DefectAction.TurnedOff or DefectAction.Disconnected }));

    private static Outcome EscapeMadeSafe(Escape? escape) => escape?.Reported switch
    {
        null => Outcome.Missing,
        false => Outcome.Pass,
        true => escape.GasIsolated == true && Given(escape.Reference) ? Outcome.Pass : Outcome.Unsafe,
    };

    private static Outcome Told(Defect defect) => defect switch
    {
        { Permission: Consent.NobodyPresent } => defect.CopyLeft == true ? Outcome.Pass : Outcome.Missing,
        _ => defect.UserToldNotToUse == true ? Outcome.Pass : Outcome.Missing,
    };

    // Regulation 11(2) lists the causes and the mechanisms; what is not told may be one of them.
    private static Outcome? ReportDecided(Case c, Defect defect)
    {
        if (defect.Class is null or DefectClass.Other)
            return defect.Class is null ? Outcome.Missing : null;
        if (Lacks(defect.Cause, defect.Mechanism))
            return Outcome.Advisory;
        if (defect.Cause is DefectCause.Wear or DefectCause.Other || defect.Mechanism == DefectMechanism.Other)
            return Outcome.NotApplicable;

        return defect.Reportable?.Decision switch
        {
            ReportDecision.Yes => Outcome.Pass,
            ReportDecision.No => Pass(Given(defect.Reportable.Reason)),
            ReportDecision.Undecided => Pass(c.AsOf <= LastDay(c, defect.Reportable)),
            _ => Outcome.Advisory,
        };
    }

    private static Outcome? ReportInTime(Case c, Defect defect) => defect.Reportable switch
    {
        { Decision: ReportDecision.Yes } or { Decision: null, ReportedOn: not null } =>
            Pass(!(defect.Reportable.ReportedOn < (defect.Reportable.KnownOn ?? c.Day())) && (defect.Reportable.ReportedOn ?? c.AsOf) <= LastDay(c, defect.Reportable)),
        _ => null,
    };

    private static DateOnly LastDay(Case c, ReportableDecision report) => (report.KnownOn ?? c.Day()).AddDays((int)c.Limit("reportable-days")!.Max!);
}
