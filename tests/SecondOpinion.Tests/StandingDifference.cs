using Records;

namespace SecondOpinion.Tests;

/// <summary>
/// Where the rules say something else than the page of duties, shown from the sources to be the rules' fault and not yet mended. Each is
/// looked for among the generated records: one that no longer differs is deleted here.
/// </summary>
internal sealed record StandingDifference(string Name, IReadOnlyList<string> Rules, Func<Disagreement, bool> IsMeant)
{
    private static readonly string[] PutRight = ["at-risk-recorded", "immediately-dangerous-recorded", "unsafe-left-in-use", "escape-made-safe"];

    /// <summary>So seldom that a plain run need not meet it.</summary>
    public bool IsSeldom { get; init; }

    public static IReadOnlyList<StandingDifference> All { get; } =
    [
        new(
            "duties 9: a defect with a subject of this boiler is of this boiler, whatever `concerns` says",
            ["at-risk-recorded", "immediately-dangerous-recorded", "danger-isolated", "defect-made-safe", "unsafe-left-in-use", "flue-co", "escape-made-safe"],
            one => DefectsOf(one).Any(defect => defect.Concerns is DefectConcern.OtherAppliance or DefectConcern.Supply && !string.IsNullOrEmpty(defect.Subject))),
        new(
            "duties 4, putRight: the later reading must be a good one",
            PutRight,
            one => DefectsOf(one).Any(defect => defect is { Action: DefectAction.Rectified, Subject: { } at } && at.StartsWith("/combustion/readings/", StringComparison.Ordinal))),
        new(
            "26(5), 33(2): at an installation a refusal settles nothing",
            ["flue-co", "combustion-ratio"],
            one => one.Record.Record.JobType == JobType.Commissioning && DefectsOf(one).Any(defect => defect.Permission == Consent.Refused)),
        new(
            "otherAppliances is this one and the others, so that it cuts off what is of this boiler",
            ["danger-isolated", "unsafe-left-in-use"],
            one => DefectsOf(one).Any(defect => defect.IsolatedAt == IsolationPoint.OtherAppliances)),
        new(
            "duties 4, putRight: a leak needs a tight test after it, whether or not one was made before",
            PutRight,
            one => one.Record.Record.TightnessTests is null or [] && DefectsOf(one).Any(defect => defect.Action == DefectAction.Rectified)),
        new(
            "no tightness test sees a joint of the combustion circuit or beyond the gas valve",
            [.. PutRight, "danger-isolated", "defect-made-safe"],
            one => DefectsOf(one).Any(defect => defect.Subject?.StartsWith("/disturbedJoints/", StringComparison.Ordinal) == true)),
        new(
            "what a defect is about stands in its subject too: electrical, flue",
            ["danger-isolated", "unsafe-left-in-use"],
            one => DefectsOf(one).Any(defect => defect.Subject is { } at && (at.StartsWith("/flue", StringComparison.Ordinal) || at.StartsWith("/electrical", StringComparison.Ordinal) || at.StartsWith("/ambientCo", StringComparison.Ordinal)))),
        new(
            "duties 4: of a shared flue the others are told, whatever else the defect is",
            ["danger-isolated", "unsafe-left-in-use"],
            one => one.Record.Record.Appliance.SharedFlue == true),
        new(
            "duties 6.4: an escape left by a refusal does not settle another defect that was put right and not shown right",
            ["unsafe-left-in-use"],
            one => DefectsOf(one) is { Count: > 1 } defects && one.Record.Record.Escape?.Reported == true
                && defects.Any(defect => defect.Permission == Consent.Refused) && defects.Any(defect => defect.Action == DefectAction.Rectified))
        { IsSeldom = true },
        new(
            "duties 6.4: a defect at a member that a finding read only for its class does not answer that finding",
            ["unsafe-finding-answered", "unsafe-finding-documented", "class-lower-than-expected", "low-class-without-action", "unsafe-left-in-use"],
            one => DefectsOf(one).Any(defect => defect.Subject is { } at && (at.StartsWith("/ambientCo", StringComparison.Ordinal) || at == "/flue/spillageTestPassed"))),
        new(
            "duties 4: of carbon monoxide of unknown source every appliance of the room is isolated, which a section of pipe does not say",
            ["danger-isolated", "unsafe-left-in-use"],
            one => DefectsOf(one).Any(defect => defect.IsolatedAt == IsolationPoint.PipeSection)),
        new(
            "the engineer's own class is a floor: a boiler left in use with a danger classed immediately dangerous is that",
            ["unsafe-left-in-use"],
            one => one is { Rule: [{ Class: Findings.ExpectedClass.AtRisk }], SecondOpinion: [{ Class: Findings.ExpectedClass.ImmediatelyDangerous }] }),
        new(
            "a leak that a test shows is shut off neither at an electrical supply nor at appliances",
            ["escape-made-safe", "unsafe-left-in-use", "unsafe-finding-answered"],
            one => one.Record.Record.Escape?.IsolatedAt is IsolationPoint.ElectricalSupply or IsolationPoint.OtherAppliances),
    ];

    private static IReadOnlyList<Defect> DefectsOf(Disagreement one) => one.Record.Record.Defects ?? [];
}
