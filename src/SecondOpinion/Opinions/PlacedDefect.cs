using System.Globalization;
using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

/// <summary>
/// A defect, what it answers, and whether what was done about it counts: put right and shown right, taken out of use where the thing that is
/// dangerous is cut off, or left by a refusal with what is then owed. Source: the page of duties, section 4; regulations 26, 34 and 37.
/// </summary>
internal sealed class PlacedDefect(Case c, int place, Defect defect)
{
    /// <summary>Where a danger may be recorded besides: at what lets the products out that a sweep or a test shows.</summary>
    private static readonly Dictionary<string, string[]> AlsoRecordedAt = new(StringComparer.Ordinal)
    {
        ["ambient-co-before"] = ["/ambientCo", "/flue", "/combustion", "/ventilation"],
        ["ambient-co-running"] = ["/ambientCo", "/flue", "/combustion", "/ventilation"],
        ["ambient-co-after"] = ["/ambientCo", "/flue", "/combustion", "/ventilation"],
        ["spillage-test"] = ["/ambientCo", "/flue/visualOk", "/flue/spillageTestPassed", "/flue/flowTestPassed", "/flue/effectivenessConfirmed"],
        ["flue-flow-test"] = ["/ambientCo", "/flue/visualOk", "/flue/spillageTestPassed", "/flue/flowTestPassed", "/flue/effectivenessConfirmed"],
        ["flue-effective"] = ["/ambientCo", "/flue/visualOk", "/flue/spillageTestPassed", "/flue/flowTestPassed", "/flue/effectivenessConfirmed"],
        ["flue-examined"] = ["/flue"],
        ["flue-supports"] = ["/flue/visualOk"],
        ["case-seal"] = ["/ambientCo"],
        ["escape-made-safe"] = [""],
    };

    public static IEnumerable<PlacedDefect> Of(Case c) => (c.Record.Defects ?? []).Index().Select(one => new PlacedDefect(c, one.Index, one.Item));

    public string Pointer => FormattableString.Invariant($"/defects/{place}");

    public Defect Is => defect;

    private string? Subject => string.IsNullOrEmpty(defect.Subject) ? null : defect.Subject;

    public bool IsDangerous => defect.Class is DefectClass.AtRisk or DefectClass.ImmediatelyDangerous;

    public bool IsOff => defect.Action is DefectAction.TurnedOff or DefectAction.Disconnected;

    /// <summary>Said so, not said otherwise, or with a place of this record: duties 9.</summary>
    public bool IsOfThisBoiler => defect.Concerns is not (DefectConcern.OtherAppliance or DefectConcern.Supply) || Subject is not null;

    /// <summary>Of another appliance: labelled, and its user told; of the supply: whoever it belongs to told. Duties 3, danger elsewhere; 34(3).</summary>
    public bool IsMadeKnownElsewhere => defect.Concerns == DefectConcern.Supply
        ? defect.Told?.Any(told => told is ToldParty.Supplier or ToldParty.Transporter or ToldParty.EmergencyService) == true
        : defect is { Labelled: true, UserToldNotToUse: true, Told.Count: > 0 };

    /// <summary>By what it names, or by what the finding read, or by where the same danger may be recorded; without a subject by its topic.</summary>
    public bool Answers(Finding finding)
    {
        if (finding.Subject == Pointer)
            return true;
        if (Subject is not { } at)
        {
            return defect.Topic == finding.Topic && (defect.Concerns is not (DefectConcern.OtherAppliance or DefectConcern.Supply)
                || finding.Topic is Topics.Tightness or Topics.Joints or Topics.GasPressure or Topics.UnsafeSituation);
        }

        return Pages.IsWithin(finding.Subject, at)
            || (!IsReadToGrade(finding, at) && finding.Evidence?.Any(read => read.Pointer == at) == true)
            || (IsAsGraveAs(finding.ExpectedClass) && AlsoRecordedAt.GetValueOrDefault(finding.RuleId, []).Any(section => Pages.IsWithin(at, section)));
    }

    /// <summary>
    /// Products in the room make what lets them out immediately dangerous (<see cref="Facts.AtRiskOrWorse"/>): a finding that read the sweep or
    /// the spillage test only for its class is another danger than theirs.
    /// </summary>
    private static bool IsReadToGrade(Finding finding, string at) =>
        (Pages.IsWithin(at, "/ambientCo") && finding.Topic is not (Topics.AmbientAir or Topics.UnsafeSituation))
        || (at == "/flue/spillageTestPassed" && finding.RuleId != "spillage-test");

    private bool IsAsGraveAs(ExpectedClass? expected) => defect.Class == DefectClass.ImmediatelyDangerous
        || (defect.Class == DefectClass.AtRisk && expected != ExpectedClass.ImmediatelyDangerous);

    /// <summary>Put right, and a later look or measurement shows it.</summary>
    public bool IsPutRight => defect.Action == DefectAction.Rectified && IsShownRight;

    // No eye sees that a pipe is tight.
    private bool IsShownRight => IsLeak ? IsShownTight : IsLookedAtAgain || IsMeasuredAgain;

    // No tightness test sees a joint beyond the gas valve: it is checked with the burner alight.
    private bool IsShownTight => !Tightness.IsLeftLeaking(c) && (Joint?.Place == JointPlace.GasValveOutlet
        ? Joint is { LeakChecked: true, BurnerAlight: true } && (c.Record.TightnessTests is null or [] || Tightness.IsProvedTight(c) == true)
        : Tightness.IsProvedTight(c) == true);

    private bool IsLookedAtAgain => defect.ReexaminedAt is { Value: var again }
        && again <= c.Record.FinishedAt.Value && !(again < c.Record.StartedAt?.Value) && !(again < defect.FoundAt?.Value);

    private bool IsMeasuredAgain => Reading is { } found && CombustionOpinions.IsShownRight(c, found);

    /// <summary>Gas that comes out; a joint of the combustion circuit lets products out and no gas.</summary>
    public bool IsLeak => !IsOfCombustionCircuit
        && (defect.Topic is Topics.Tightness or Topics.Joints || IsAt("/escape", "/tightnessTests", "/disturbedJoints", "/pipework")
            || (Subject is null && defect.Mechanism == DefectMechanism.GasLeak));

    private bool IsOfCombustionCircuit => Joint?.CarriesGas != true && Joint?.Place is JointPlace.TopPlate or JointPlace.BurnerDoor or JointPlace.Fan or JointPlace.Electrode or JointPlace.FlueCollector;

    /// <summary>Gas or products that come out: what an escape is made of.</summary>
    public bool IsOfAnEscape => IsLeak || defect.Topic == Topics.AmbientAir
        || defect.Mechanism is DefectMechanism.GasLeak or DefectMechanism.ProductsNotRemoved or DefectMechanism.IncompleteCombustion;

    private DisturbedJoint? Joint => ItemOf("/disturbedJoints/", c.Record.DisturbedJoints);

    private CombustionReading? Reading => ItemOf("/combustion/readings/", c.Record.Combustion?.Readings);

    private T? ItemOf<T>(string list, IReadOnlyList<T>? items)
        where T : class => Subject?.StartsWith(list, StringComparison.Ordinal) == true
            && int.TryParse(Subject[list.Length..].Split('/')[0], NumberStyles.None, CultureInfo.InvariantCulture, out var index) ? items?.ElementAtOrDefault(index) : null;

    private bool IsAt(params ReadOnlySpan<string> sections)
    {
        foreach (var section in sections)
        {
            if (Subject is { } at && Pages.IsWithin(at, section))
                return true;
        }

        return false;
    }

    /// <summary>About this place or what holds it; without a subject about the topic.</summary>
    public bool IsAbout(string at, string topic) => Subject is { } about ? Pages.IsWithin(at, about) : IsOfThisBoiler && defect.Topic == topic;

    /// <summary>The same, whatever it concerns.</summary>
    public bool IsAtOrOf(string at, string topic) => Subject is { } about ? Pages.IsWithin(at, about) : defect.Topic == topic;

    /// <summary>The place tells before the topic does.</summary>
    private bool IsOf(string topic, string section) => Subject is null ? defect.Topic == topic : IsAt(section);

    private bool IsShutUpstream => defect.IsolatedAt is IsolationPoint.PipeSection or IsolationPoint.EmergencyControl or IsolationPoint.Meter;

    /// <summary>Is the thing that is dangerous cut off at the place that is named?</summary>
    public bool IsCutOff
    {
        get
        {
            if (defect.IsolatedAt is null or IsolationPoint.NotIsolated)
                return false;
            if (!IsOfThisBoiler)
                return true;
            if (IsOf(Topics.Flue, "/flue") || IsOf(Topics.AmbientAir, "/ambientCo"))
            {
                var areOthersTold = defect.Told?.Any(told => told is ToldParty.BuildingManager or ToldParty.OtherOccupiers) == true;
                if (c.Record.Appliance.SharedFlue == true && !areOthersTold)
                    return false;
            }

            if (IsLeak)
                return IsShutUpstream || (defect.IsolatedAt == IsolationPoint.ApplianceValve && !IsAboveTheBoilersValve);
            if (IsOf(Topics.Electrical, "/electrical"))
                return defect.IsolatedAt == IsolationPoint.ElectricalSupply || c.Record.Electrical?.SupplyOff == true;
            if (IsOfUnknownSource)
                return defect.IsolatedAt is IsolationPoint.EmergencyControl or IsolationPoint.Meter or IsolationPoint.OtherAppliances;
            return defect.IsolatedAt != IsolationPoint.ElectricalSupply || defect.Class != DefectClass.ImmediatelyDangerous;
        }
    }

    /// <summary>A leak is below the valve where its joint is, where the pipes are proved tight, or where it is of the appliance and no pipe leaks.</summary>
    private bool IsAboveTheBoilersValve
    {
        get
        {
            if (Joint is { } joint)
                return joint.Place is null or JointPlace.Other or JointPlace.MeterUnion or JointPlace.IsolationValve or JointPlace.Pipework or JointPlace.TestNipple;
            if (Tightness.IsLeftLeaking(c))
                return true;
            return Tightness.IsProvedTight(c) != true && !IsAt("/appliance");
        }
    }

    /// <summary>Carbon monoxide met on arrival, the boiler never run with the room swept, and nothing of it found that lets products out.</summary>
    private bool IsOfUnknownSource => IsOf(Topics.AmbientAir, "/ambientCo") && c.Record.AmbientCo?.RunningPeakPpm is null
        && c.Record.Flue is not ({ VisualOk: false } or { CaseSealOk: false } or { SpillageTestPassed: false } or { FlowTestPassed: false } or { EffectivenessConfirmed: false });

    /// <summary>
    /// Turned off at risk, disconnected, or of a leak shut off before the boiler; and nobody can use the boiler as it was left, which says
    /// nothing of another one.
    /// </summary>
    public bool IsLeftOff => IsOff && (c.IsLeftOff() || !IsOfThisBoiler || IsCutOffFromOutside)
        && (defect.Class == DefectClass.AtRisk || (IsLeak && IsShutUpstream && defect.Action == DefectAction.TurnedOff)
            || (defect.Action == DefectAction.Disconnected && (!IsOfThisBoiler || c.Record.Appliance.StateOnLeaving is null or StateOnLeaving.Disconnected)));

    /// <summary>Nobody got to the boiler and nobody says how it was left: what was cut off from outside is off.</summary>
    private bool IsCutOffFromOutside => IsNothingReached && c.Record.Appliance.StateOnLeaving is null;

    private bool IsNothingReached => WorkOpinions.IsNothingReached(c);

    public bool IsTakenOutOfUse => IsLeftOff && IsCutOff;

    /// <summary>The same, of this danger: a leak that the pipes of the installation show goes on beside another appliance that was shut off.</summary>
    public bool TakesOutOfUse(Finding finding) => IsTakenOutOfUse && (IsOfThisBoiler || IsShutUpstream || !Pages.IsWithin(finding.Subject, "/tightnessTests"));

    /// <summary>
    /// Nothing was done since it was refused, and what is then owed was done: the emergency provider's reference, or a signature where both the
    /// engineer and what was found say at risk. Whoever installs may not leave a danger connected, whoever signs: 26(5), 33(2).
    /// </summary>
    public bool IsLeftByRefusal(Finding finding) => IsDangerous && defect is { Permission: Consent.Refused, Action: null or DefectAction.None }
        && (c.Record.JobType != JobType.Commissioning || IsNothingReached)
        && (Given(defect.EmergencyReference) || (defect is { Class: DefectClass.AtRisk, UserSigned: true } && finding.ExpectedClass == ExpectedClass.AtRisk));
}
