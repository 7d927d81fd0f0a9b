using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class UnsafeSituationOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("altered-since-last-visit", c => On("/premises/alteredSinceLastVisit", c.Record.Premises?.AlteredSinceLastVisit is { } altered ? Pass(!altered) : Outcome.Missing)),
        ("at-risk-recorded", Placed(AtRisk)),
        ("danger-isolated", Placed(defect => defect is { IsDangerous: true, IsOff: true } ? Agrees(defect.IsCutOff) : null)),
        ("defect-classed", Defects((_, defect) => Classed(defect))),
        ("defect-described", Defects((_, defect) => Given(defect.Description) ? Pass(Given(defect.Location)) : Outcome.Missing)),
        ("defect-labelled", Standing(defect => Agrees(defect.Labelled == true))),
        ("defect-made-safe", Placed(defect => defect.Is.Class == DefectClass.Other ? null : MadeSafe(defect))),
        ("defect-notified", Defects(Notified)),
        ("defect-permission", Defects((_, defect) => Permission(defect))),
        ("escape-made-safe", c => Immediately(On("/escape", EscapeMadeSafe(c)))),
        ("immediately-dangerous-recorded", c => Immediately(Placed(defect => defect.Is.Class switch
        {
            null => Outcome.Missing,
            DefectClass.ImmediatelyDangerous => defect.IsPutRight ? Outcome.Advisory : Outcome.Unsafe,
            DefectClass.AtRisk => Outcome.NotApplicable,
            _ => null,
        })(c))),
        ("notice-copy-left", Standing(defect => Pass(defect.CopyLeft == true))),
        ("notice-signed", Standing(defect => Pass(defect.UserSigned == true || defect.Permission == Consent.NobodyPresent))),
        ("rectified-reexamined", Defects((c, defect) => IsDangerous(defect) && defect.Action == DefectAction.Rectified ? Reexamined(c, defect) : null)),
        ("report-decided", Since(2013, 10, 1, Defects(ReportDecided))),
        ("report-in-time", Since(2013, 10, 1, Defects(ReportInTime))),
        ("state-on-leaving-recorded", c => On("/appliance/stateOnLeaving", c.Record.Appliance.StateOnLeaving is null ? Outcome.Missing : Outcome.Pass)),
        ("user-told-not-to-use", Standing(Told)),
        ("warning-notice", Standing(defect => Agrees(Given(defect.NoticeNumber)))),
    ];

    private static Func<Case, IEnumerable<Opinion>> Defects(Func<Case, Defect, Outcome?> judge) =>
        c => Each(c.Record.Defects, "/defects", defect => judge(c, defect));

    private static Func<Case, IEnumerable<Opinion>> Placed(Func<PlacedDefect, Outcome?> judge) => c =>
    {
        var defects = PlacedDefect.Of(c).ToList();
        return Each(c.Record.Defects, "/defects", (_, place) => judge(defects[place]));
    };

    /// <summary>About each dangerous defect that was not put right.</summary>
    private static Func<Case, IEnumerable<Opinion>> Standing(Func<Defect, Outcome> judge) => Defects((_, defect) => defect switch
    {
        { Class: DefectClass.Other } or { Action: DefectAction.Rectified } => null,
        { Class: null } => Outcome.Missing,
        _ => judge(defect),
    });

    // Put right counts once a later look or measurement shows it; what is not of this boiler does not make this one unsafe.
    private static Outcome? AtRisk(PlacedDefect defect) => defect.Is.Class switch
    {
        null => Outcome.Missing,
        DefectClass.Other => null,
        DefectClass.ImmediatelyDangerous => Outcome.NotApplicable,
        _ => defect.IsPutRight || !defect.IsOfThisBoiler ? Outcome.Advisory : Outcome.Unsafe,
    };

    // Turned off is enough for At Risk, and for a leak that is shut off before the boiler; after a refusal At Risk needs a signature,
    // Immediately Dangerous the emergency provider. Written as off while the appliance was left on is nothing done.
    private static Outcome MadeSafe(PlacedDefect defect) => defect.Is switch
    {
        { Class: null } or { Action: null } => Outcome.Missing,
        { Action: DefectAction.Rectified } => Outcome.Pass,
        _ when !defect.IsOfThisBoiler && defect.IsMadeKnownElsewhere => Outcome.Pass,
        { Action: DefectAction.TurnedOff or DefectAction.Disconnected } when defect.IsLeftOff => Outcome.Pass,
        { Action: DefectAction.Disconnected } => Outcome.Missing,
        { Action: DefectAction.TurnedOff, Class: DefectClass.AtRisk } => Outcome.Missing,
        { Permission: Consent.Refused } when (defect.Is.Class == DefectClass.AtRisk ? defect.Is.UserSigned == true : Given(defect.Is.EmergencyReference)) => Outcome.Pass,
        _ => Outcome.Missing,
    };

    // Regulations 26(9) and 34(3): the responsible person and, if different, the owner; where neither can be had, whoever's gas it is. In let
    // premises they differ, and where nobody wrote whose the premises are they may.
    private static Outcome? Notified(Case c, Defect defect)
    {
        if (defect.Told is not { } told)
            return Outcome.Missing;
        var isOwner = told.Any(one => one is ToldParty.Owner or ToldParty.LandlordOrAgent);
        var isResponsible = told.Any(one => one is ToldParty.ResponsiblePerson or ToldParty.OtherOccupiers);
        if (!isOwner && !isResponsible)
            return Agrees(told.Any(one => one is ToldParty.Transporter or ToldParty.Supplier));
        return !isOwner && c.IsLet() != false ? Outcome.Missing : Pass(!(defect.NotifiedOn > c.Day()));
    }

    // A good tightness test or a good reading is the examination itself, if the reading has a time that shows that it came later.
    private static Outcome? Reexamined(Case c, Defect defect)
    {
        if (defect.ReexaminedAt is { Value: var again })
            return Agrees(again <= c.Record.FinishedAt.Value && !(again < c.Record.StartedAt?.Value));
        if (defect.Subject is not { } subject)
            return Outcome.Missing;
        if (Pages.IsWithin(subject, "/tightnessTests"))
            return Outcome.NotApplicable;
        var reading = (c.Record.Combustion?.Readings ?? []).Index().FirstOrDefault(one => $"/combustion/readings/{one.Index}" == subject).Item;
        return reading?.TakenAt is null ? Outcome.Missing : Outcome.NotApplicable;
    }

    private static bool IsDangerous(Defect defect) => defect.Class is DefectClass.AtRisk or DefectClass.ImmediatelyDangerous;

    // Whoever was refused did nothing; of what was put right, and of what endangers nobody, permission is not asked.
    private static Outcome? Permission(Defect defect) => defect switch
    {
        { Action: DefectAction.Rectified, Permission: not Consent.Refused } => null,
        { Class: null } => Outcome.Missing,
        { Action: DefectAction.Rectified } => Outcome.Advisory,
        { Class: DefectClass.Other } => null,
        { Permission: Consent.Refused, Action: DefectAction.TurnedOff or DefectAction.Disconnected } => Outcome.Advisory,
        _ => Pass(defect.Permission is not null),
    };

    // Gas or fumes that still come out are no matter of standards only.
    private static Outcome Classed(Defect defect) => defect switch
    {
        { Class: null } => Outcome.Missing,
        { Class: not DefectClass.Other } or { Action: DefectAction.Rectified } => Outcome.Pass,
        _ => ComesOut(defect) ? Outcome.Missing : Outcome.Advisory,
    };

    private static bool ComesOut(Defect defect) => defect.Mechanism is DefectMechanism.GasLeak or DefectMechanism.ProductsNotRemoved;

    // A leak that was left, and a room left with more than 30 ppm, are escapes whatever was ticked.
    private static Outcome EscapeMadeSafe(Case c)
    {
        var air = c.Record.AmbientCo;
        var isShown = Tightness.IsLeftLeaking(c) || (air?.AfterPpm ?? air?.RunningPeakPpm ?? air?.BeforePpm) > 30;
        var isPutRight = !isShown && IsEscapePutRight(c);
        return c.Record.Escape?.Reported switch
        {
            null when !isShown => Outcome.Missing,
            false when !isShown => Outcome.Pass,
            _ when !isPutRight && !(c.IsGasShutAndReported() && !IsLeakPassedBy(c)) => Outcome.Unsafe,
            _ when isPutRight && !IsConveyorCalled(c) => Outcome.Unsafe,
            _ when !isPutRight && c.Record.Escape is { IsolatedAt: null } or { Told: null or [] } => Outcome.Missing,
            true => Pass(c.Record.Defects is { Count: > 0 }),
            _ => Outcome.Advisory,
        };
    }

    // What was put right and shown right needs neither the gas off nor anybody called, unless the source is the conveyor's or supplier's.
    private static bool IsConveyorCalled(Case c) =>
        c.Record.Defects!.All(defect => defect.Concerns != DefectConcern.Supply) || Given(c.Record.Escape?.Reference);

    // A leak that the pipes show goes on above the boiler's valve, and no spur shuts it off.
    private static bool IsLeakPassedBy(Case c) => Tightness.IsLeftLeaking(c)
        && c.Record.Escape?.IsolatedAt is not (IsolationPoint.PipeSection or IsolationPoint.EmergencyControl or IsolationPoint.Meter);

    // Gas is let in again only into pipes that a test shows tight, whatever escaped: duties 3, escape, gas restored.
    private static bool IsEscapePutRight(Case c)
    {
        if (Tightness.IsProvedTight(c) != true)
            return false;
        var escaped = PlacedDefect.Of(c).Where(defect => defect.IsDangerous && defect.IsOfAnEscape).ToList();
        return escaped.Count > 0 && escaped.TrueForAll(defect => defect.IsPutRight);
    }

    private static Outcome Told(Defect defect) => defect switch
    {
        { Permission: Consent.NobodyPresent } => defect.CopyLeft == true ? Outcome.Pass : Outcome.Missing,
        _ => defect.UserToldNotToUse == true ? Outcome.Pass : Outcome.Missing,
    };

    // Regulation 11(2) lists the causes and the mechanisms; what is not told may be one of them.
    private static Outcome? ReportDecided(Case c, Defect defect)
    {
        if (defect.Class is null)
            return Outcome.Missing;
        if (defect.Class == DefectClass.Other && (defect.Action == DefectAction.Rectified || !ComesOut(defect)))
            return null;
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
