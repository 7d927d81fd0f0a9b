using Findings;
using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>Dangers that the observations of a record show by themselves.</summary>
internal static class ShownDangers
{
    /// <summary>Said of defects and of papers and not of an observation, or judged here by the page of duties.</summary>
    private static readonly HashSet<string> JudgedElsewhere =
    [
        .. InferenceOpinions.All.Select(one => one.RuleId), .. UnsafeSituationOpinions.All.Select(one => one.RuleId),
        "case-seal", "combustion-ratio", "disturbed-gas-joint-proved", "earth-continuity", "open-flue-room", "terminal-clearance", "trap-refilled", "heat-input",
        "leak-found-before-work", "plate-fuel", "tightness-result",
    ];

    /// <summary>Where an opinion names only the section: the member that it is about.</summary>
    private static readonly Dictionary<string, string> Members = new(StringComparer.Ordinal)
    {
        ["spillage-test"] = "/flue/spillageTestPassed",
        ["flue-examined"] = "/flue/visualOk",
        ["flue-supports"] = "/flue/supportsOk",
        ["flue-effective"] = "/flue/effectivenessConfirmed",
        ["flue-flow-test"] = "/flue/flowTestPassed",
        ["flue-in-void"] = "/flue/inVoid",
        ["lpg-below-ground"] = "/premises/belowGround",
        ["polarity"] = "/electrical/polarityOk",
        ["burner-condition"] = "/burner/condition",
        ["air-supply-examined"] = "/ventilation/airInletClear",
        ["vents-clear"] = "/ventilation/blocked",
        ["vent-kind"] = "/ventilation/closable",
        ["room-vent-area"] = "/ventilation/freeAreaCm2",
        ["flue-test-point-closed"] = "/combustion/testPointClosed",
        ["ambient-co-before"] = "/ambientCo/beforePpm",
        ["ambient-co-running"] = "/ambientCo/runningPeakPpm",
        ["ambient-co-after"] = "/ambientCo/afterPpm",
    };

    public static IEnumerable<Shown> Of(Visit visit) =>
    [
        .. OpinionTable.All.Where(one => !JudgedElsewhere.Contains(one.Key)).SelectMany(one => one.Value(visit.One)
            .Where(opinion => opinion.Outcome == Outcome.Unsafe)
            .Select(opinion => new Shown(Members.GetValueOrDefault(one.Key, opinion.Subject), opinion.Class ?? ExpectedClass.AtRisk))),
        .. Case(visit), .. Readings(visit), .. Earth(visit), .. Rooms(visit), .. Terminals(visit), .. Leaks(visit), .. WrongGas(visit), .. Joints(visit),
    ];

    /// <summary>A case that leaks under pressure lets products into the room; one under suction does so only where they are found there.</summary>
    private static IEnumerable<Shown> Case(Visit visit)
    {
        if (visit.Record.Flue?.CaseSealOk == false && OpinionTable.All["case-seal"](visit.One).FirstOrDefault(opinion => opinion.Outcome == Outcome.Unsafe) is { } said)
            yield return new Shown("/flue/caseSealOk", said.Class ?? ExpectedClass.AtRisk);
    }

    /// <summary>A ratio above the ceiling at any stage, unless a later reading at that rate is in limit and both say when.</summary>
    private static IEnumerable<Shown> Readings(Visit visit)
    {
        var readings = visit.Record.Combustion?.Readings ?? [];
        foreach (var (place, reading) in readings.Index())
        {
            var ratio = CombustionOpinions.RatioOf(reading);
            var isBad = ratio > 0.008m || (visit.IsInstallation && reading.Stage == WorkStage.AfterWork && ratio > CombustionOpinions.RatioLimit(visit.One)
                && visit.Record.MakerLimits?.DecisionReference is null);
            if (isBad && !IsSetRight(visit, reading))
                yield return new Shown($"/combustion/readings/{place}", visit.One.ProductsAreInRoom() ? ExpectedClass.ImmediatelyDangerous : ExpectedClass.AtRisk);
        }
    }

    public static bool IsSetRight(Visit visit, CombustionReading bad) => (visit.Record.Combustion?.Readings ?? []).Any(later =>
        later.Stage == WorkStage.AfterWork && later.Rate is not null && later.Rate == bad.Rate && later.TakenAt?.Value > bad.TakenAt?.Value
        && !CombustionOpinions.IsAir(later) && CombustionOpinions.RatioOf(later) <= CombustionOpinions.RatioLimitUnderCeiling(visit.One));

    /// <summary>Above 200 ohms nothing is earthed, whatever device guards the circuit; the 1,667 ohms are of an electrode.</summary>
    private static IEnumerable<Shown> Earth(Visit visit)
    {
        if (visit.Record.Electrical is { EarthOk: false } or { EarthOhm: > 200 })
            yield return new Shown(visit.Record.Electrical.EarthOk == false ? "/electrical/earthOk" : "/electrical/earthOhm", ExpectedClass.AtRisk);
    }

    /// <summary>An open flue where people wash or sleep.</summary>
    private static IEnumerable<Shown> Rooms(Visit visit)
    {
        if (visit.One.IsOpenFlued() != true || OpinionTable.All["open-flue-room"](visit.One).FirstOrDefault(opinion => opinion.Outcome == Outcome.Unsafe) is not { } said)
            yield break;
        if (visit.IsSleepingRoomExcepted)
            yield break;
        yield return new Shown("/premises/room", said.Class ?? ExpectedClass.AtRisk);
    }

    private static IEnumerable<Shown> Terminals(Visit visit) => Terminal.ShortByTable(visit)
        .Where(opinion => !Terminal.IsJudgedByEffect(visit, opinion.Subject))
        .Select(opinion => new Shown(opinion.Subject, opinion.Class ?? ExpectedClass.AtRisk));

    private static IEnumerable<Shown> Leaks(Visit visit) => (visit.Record.TightnessTests ?? []).Index()
        .Where(one => TightProof.IsLeaking(visit, one.Index))
        .Select(one => new Shown($"/tightnessTests/{one.Index}", ExpectedClass.ImmediatelyDangerous));

    /// <summary>A plate that names another gas than the one burnt: what is fitted next will be for the wrong one (26(7), 5(1)).</summary>
    private static IEnumerable<Shown> WrongGas(Visit visit)
    {
        if (visit.Record.Appliance.PlateFuel is { } plate && visit.Record.Appliance.Fuel is { } burnt && plate != burnt)
            yield return new Shown("/appliance/plateFuel", ExpectedClass.AtRisk);
    }

    /// <summary>A gas joint that was disturbed and stands unproved: stated so, or neither tested nor checked.</summary>
    private static IEnumerable<Shown> Joints(Visit visit)
    {
        foreach (var (place, joint) in visit.Joints.Index())
        {
            var isUnproved = ProveGasPath.IsBelowTheValve(joint) || !TightProof.IsProved(visit)
                ? joint.LeakChecked == false || (joint.LeakChecked is null && visit.Record.TightnessTests?.Any(test => test.Stage != WorkStage.BeforeWork) != true)
                : false;
            if (isUnproved && JointsOpinions.CarriesGas(joint) && joint.CarriesGas != false && !(visit.IsLeftOff && visit.Record.Work?.GaswaysSealed == true))
                yield return new Shown($"/disturbedJoints/{place}/leakChecked", ExpectedClass.AtRisk);
        }
    }
}
