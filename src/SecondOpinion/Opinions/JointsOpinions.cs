using Records;
using static SecondOpinion.Say;

namespace SecondOpinion.Opinions;

/// <summary>Joints that the work opened: their seals, and the proof that they are tight again.</summary>
internal static class JointsOpinions
{
    private const string List = "/disturbedJoints";
    private const string SealsToRenew = "/makerLimits/sealsToRenew";

    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("combustion-circuit-seal", one => EachOf(one, IsOfCombustionCircuit, CircuitSeal)),
        ("combustion-joint-checked", one => EachOf(one, IsOfCombustionCircuit, CircuitChecked)),
        ("disturbed-gas-joint-proved", one => EachGasJoint(one, (joint, at) => Proved(one, joint, at))),
        ("flue-test-point-closed", one => [Yes(one.Record.Combustion?.TestPointClosed, Dangerous("/combustion"))]),
        ("gas-joint-leak-check", one => EachGasJoint(one, LeakChecked)),
        ("gas-joint-listed", one => [GasJointListed(one)]),
        ("gas-valve-union-seal", one => EachOf(one, IsUnion, UnionSeal)),
        ("makers-seal-renewed", MakersSeals),
        ("new-seal-part-number", NewSeals),
        ("other-seal", one => EachOf(one, joint => !IsUnion(joint) && !IsOfCombustionCircuit(joint), OtherSeal)),
    ];

    /// <summary>Gas flows through a gas valve's unions whatever is ticked; elsewhere the tick decides, and without one a joint of the supply carries it and a joint of unknown place may.</summary>
    public static bool CarriesGas(DisturbedJoint joint) => joint switch
    {
        { Place: JointPlace.GasValveInlet or JointPlace.GasValveOutlet } => true,
        { CarriesGas: { } ticked } => ticked,
        _ => joint.Place is null or JointPlace.Other || IsOfSupply(joint),
    };

    /// <summary>On the pipe between meter and boiler, which a tightness test fills with gas.</summary>
    private static bool IsOfSupply(DisturbedJoint joint) =>
        joint.Place is JointPlace.MeterUnion or JointPlace.IsolationValve or JointPlace.Pipework or JointPlace.TestNipple;

    private static bool IsUnion(DisturbedJoint joint) => joint.Place is JointPlace.GasValveInlet or JointPlace.GasValveOutlet;

    private static bool IsOfCombustionCircuit(DisturbedJoint joint) => IsOfCombustionCircuit(joint.Place);

    private static bool IsOfCombustionCircuit(JointPlace? place) =>
        place is JointPlace.TopPlate or JointPlace.BurnerDoor or JointPlace.Fan or JointPlace.Electrode or JointPlace.FlueCollector;

    /// <summary>Opinions on the joints of a kind; a joint that nobody named may be of it.</summary>
    private static IEnumerable<Opinion> EachOf(Case one, Func<DisturbedJoint, bool> isOfKind, Func<DisturbedJoint, string, Opinion> say) =>
        EachWhere(one, joint => joint.Place is null || isOfKind(joint), (joint, at) => joint.Place is null ? Missing(at) : say(joint, at));

    private static IEnumerable<Opinion> EachGasJoint(Case one, Func<DisturbedJoint, string, Opinion> say) => EachWhere(one, CarriesGas, say);

    private static IEnumerable<Opinion> EachWhere(Case one, Func<DisturbedJoint, bool> isMeant, Func<DisturbedJoint, string, Opinion> say)
    {
        if (one.Record.DisturbedJoints is not { } joints)
            return [Missing(List)];
        var said = joints.Select((joint, index) => (joint, at: $"{List}/{index}")).Where(pair => isMeant(pair.joint)).ToList();
        return said.Count == 0 ? [NotApplicable()] : said.Select(pair => say(pair.joint, pair.at));
    }

    private static Opinion CircuitSeal(DisturbedJoint joint, string at) => joint switch
    {
        { Condition: SealCondition.Damaged } => AtRisk(at),
        { Condition: SealCondition.Good } => Pass(at),
        _ => Missing(at),
    };

    private static Opinion OtherSeal(DisturbedJoint joint, string at) => joint switch
    {
        // Where gas is behind it, a new damaged seal is a contradiction and an old one a leak to come.
        { Condition: SealCondition.Damaged } when joint.CarriesGas ?? IsOfSupply(joint) => joint.Renewed == true ? Missing(at) : AtRisk(at),
        { Condition: SealCondition.Damaged } => Advisory(at),
        { Condition: SealCondition.Good } => Pass(at),
        { Condition: SealCondition.Unknown } => Advisory(at),
        _ => Missing(at),
    };

    /// <summary>A union takes a new washer, and a sound one: of a new one that is not, something is written wrongly; an old one that is not lets gas out.</summary>
    private static Opinion UnionSeal(DisturbedJoint joint, string at) => (joint.Renewed, joint.Condition) switch
    {
        (null, _) => Missing(at),
        (true, null or SealCondition.Good) => Pass(at),
        (true, _) => Missing(at),
        (false, SealCondition.Damaged) => AtRisk(at),
        _ => Advisory(at),
    };

    private static Opinion CircuitChecked(DisturbedJoint joint, string at) => joint.LeakChecked == true ? Pass(at) : Advisory(at);

    private static Opinion LeakChecked(DisturbedJoint joint, string at) =>
        joint is { LeakChecked: true, LeakCheckMethod: not null } ? Pass(at) : Advisory(at);

    /// <summary>Where a leak was left to the emergency provider and the gas is off, nobody can prove a joint today.</summary>
    private static Opinion Proved(Case one, DisturbedJoint joint, string at)
    {
        var proof = ProofOf(one, joint, at);
        var isLeftToTheProvider = one.IsLeftOff() && one.IsGasShutAndReported() && Tightness.IsLeftLeaking(one);
        return proof.Outcome != Findings.Outcome.Pass && isLeftToTheProvider ? Advisory(at) : proof;
    }

    /// <summary>A union ticked as one without gas contradicts itself: nobody knows yet what was opened, and so not that it is dangerous.</summary>
    private static Opinion ProofOf(Case one, DisturbedJoint joint, string at)
    {
        var opinion = ProvedForGas(one, joint, at);
        return opinion.Outcome == Findings.Outcome.Unsafe && joint.CarriesGas == false ? Missing(at) : opinion;
    }

    /// <summary>Beyond the gas valve only a check with the burner alight can see a leak; before it a tightness test of the connected appliance, its valve open.</summary>
    private static Opinion ProvedForGas(Case one, DisturbedJoint joint, string at)
    {
        var isChecked = joint.LeakChecked == true;
        if (joint.Place != JointPlace.GasValveInlet && !IsOfSupply(joint))
        {
            return (isChecked, joint.BurnerAlight) switch
            {
                (true, true) => Pass(at),
                // Stated as not checked, it is a leak until the gas is shown to be off: disconnected alone does not show it.
                (false, _) when joint is { LeakChecked: false, Place: not (null or JointPlace.Other) } && IsGasShutOff(one) && Tightness.IsProvedTight(one) == true => Advisory(at),
                // Whatever the gauge said: no test sees this joint.
                (false, _) when joint.LeakChecked == false || Tightness.IsProvedTight(one) == false => AtRisk(at),
                // Nobody can light it, and no gas comes to the joint until somebody may.
                _ when IsShutOff(one) && joint.Place is not (null or JointPlace.Other) && (isChecked || Tightness.IsProvedTight(one) is not null) => Advisory(at),
                _ => Missing(at),
            };
        }

        var isCapped = one.IsLeftOff() && joint.Place is JointPlace.IsolationValve or JointPlace.Pipework;
        return (isCapped ? Tightness.IsPipeProvedTight(one) | Tightness.IsInletProvedTight(one) : Tightness.IsInletProvedTight(one)) switch
        {
            true => Pass(at),
            null => Missing(at),
            false => isChecked ? Missing(at) : AtRisk(at),
        };
    }

    private static bool IsShutOff(Case one) => one.Record.Appliance.StateOnLeaving == StateOnLeaving.Disconnected || IsGasShutOff(one);

    /// <summary>Left off with its outlets sealed, or the gas isolated at its valve or before it.</summary>
    private static bool IsGasShutOff(Case one) => one.IsLeftOff() && (one.Record.Work?.GaswaysSealed == true || one.Record.Escape?.GasIsolated == true
        || ShutsGas(one.Record.Escape?.IsolatedAt) || one.Record.Defects?.Any(defect => ShutsGas(defect.IsolatedAt)) == true);

    private static bool ShutsGas(IsolationPoint? point) =>
        point is IsolationPoint.ApplianceValve or IsolationPoint.PipeSection or IsolationPoint.EmergencyControl or IsolationPoint.Meter;

    /// <summary>Opening the chamber of a condensing boiler opens its gas pipe; connecting a boiler makes a gas joint, whatever boiler it is.</summary>
    private static Opinion GasJointListed(Case one)
    {
        var (removed, cleaned, isNew) = (one.Record.HeatExchanger?.TopPlateRemoved, one.Record.HeatExchanger?.Cleaned, one.IsNewBoiler());
        if (isNew == false)
        {
            var isStripped = one.Record.JobType is JobType.LandlordCheck or JobType.Commissioning
                ? removed == true
                : removed == true || cleaned == true ? true : removed is null || cleaned is null ? null : (bool?)false;
            if (one.Record.Appliance.Condensing == false || isStripped == false)
                return NotApplicable();
            if (one.Record.Appliance.Condensing is null || isStripped is null)
                return Missing();
        }

        if (one.Record.DisturbedJoints is not { } joints)
            return Missing(List);
        if (joints.Any(CarriesGas))
            return Pass(List);
        return isNew == false && removed == false ? Advisory(List) : Missing(List);
    }

    private static IEnumerable<Opinion> MakersSeals(Case one)
    {
        if (one.Record.JobType != JobType.AnnualService && one.Record.DisturbedJoints is null or [])
            return [one.Record.DisturbedJoints is null ? Missing() : NotApplicable()];
        if (one.Record.MakerLimits?.SealsToRenew is not { } places)
            return [Missing(SealsToRenew)];
        if (places.Count == 0)
            return [NotApplicable()];
        return places.Select((place, index) => MakersSeal(one, place, $"{SealsToRenew}/{index}"));
    }

    private static Opinion MakersSeal(Case one, JointPlace place, string at)
    {
        if (one.Record.DisturbedJoints is not { } all)
            return Missing(at);
        var joints = all.Where(joint => joint.Place == place).ToList();
        if (joints.Count == 0)
            return one.Record.JobType == JobType.AnnualService ? Advisory(at) : NotApplicable(at);
        if (joints.Any(joint => joint.Renewed == false))
            return IsOfCombustionCircuit(place) ? AtRisk(at) : Advisory(at);
        return joints.All(joint => joint.Renewed == true) ? Pass(at) : Missing(at);
    }

    private static IEnumerable<Opinion> NewSeals(Case one) => EachWhere(
        one, joint => joint.Renewed != false, (joint, at) => joint is { Renewed: true, PartNumber: not null } ? Pass(at) : Missing(at));
}
