using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Joints;

[Id(RuleIds.MakersSealRenewed), Topic(Topics.Joints), Cites("GSIUR-1998", "26(9)"), CommonPractice]
[Title("The seals that the maker wants renewed at this service are renewed")]
[Why("Heat and age take the spring out of a seal long before it looks worn, which is why some have a renewal date from the manufacturer. Left in past that date, it can fail between services with nobody there to notice.")]
[Serves(Part.CombustionSeals, AtMost = Weight.Should)]
[Serves(Part.GasJoints, AtMost = Weight.Should)]
[Serves(Part.WhereRecorded, AtMost = Weight.Should, Of = "/makerLimits/sealsToRenew")]
[Expects("/makerLimits/sealsToRenew"), AppliesBy("/disturbedJoints")]
[Coverage(Coverage.MayUnderReport, "only seals that record or profile list are known")]
public sealed class MakersSealRenewedRule : ComplianceRule<JointPlace>
{
    protected override bool? Applies(Visit visit) => visit.IsAnnualService ? true : visit.DisturbedJoints?.Any();

    protected override IEnumerable<Subject<JointPlace>>? Subjects(Visit visit) =>
        Kernel.Subjects.Of("/makerLimits/sealsToRenew", visit.Maker.SealsToRenew);

    protected override Verdict Assess(JointPlace place, Visit visit, Look look)
    {
        if (visit.DisturbedJoints is not { } joints)
            return look.Missing($"the record does not say which joints were disturbed", "/disturbedJoints");

        var atPlace = joints.Where(joint => joint.Value.Place == place).ToList();
        var unsaid = atPlace.Where(joint => joint.Value.Renewed is null).Select(joint => $"{joint.Pointer}/renewed").ToList();
        if (unsaid.Count > 0 && !atPlace.Exists(joint => joint.Value.Renewed == false))
            return look.Missing($"the record does not say whether the {place} seal was renewed", unsaid);

        if (atPlace.Count == 0 && !visit.IsAnnualService)
            return look.NotApplicable($"the {place} joint was not disturbed on this visit");
        if (atPlace.Count > 0 && atPlace.TrueForAll(joint => joint.Value.Renewed == true))
            return look.Pass($"the {place} seal was renewed, as the maker wants");

        FormattableString message = atPlace.Count == 0
            ? (FormattableString)$"the maker wants the {place} seal renewed at this service, and the joint was not opened"
            : $"the maker wants the {place} seal renewed at this service, and the old one went back";
        if (IsOfProfileAlone(place, visit))
        {
            return look.Advisory($"the stored profile wants the {place} seal renewed at this service, and the maker's list that the record gives with its source does not; it was not renewed")
                .Warn(Cautions.MakerDecides).Advise("Make sure of the maker's list in its source, and correct the record or the profile.");
        }

        var verdict = atPlace.Exists(joint => joint.Value.IsOfTheCombustionCircuit())
            ? look.Unsafe(message).Warn(Cautions.CarbonMonoxide)
            : look.Advisory(message).Warn(Cautions.MakerDecides);
        return verdict.Advise("Fit a new seal of the maker's part number and size for this output, then check the joint.");
    }

    /// <summary>Listed by the profile, and left out of a list that the record gives with its source. A list without one takes nothing away.</summary>
    private static bool IsOfProfileAlone(JointPlace place, Visit visit) =>
        visit.Record.MakerLimits is { SealsToRenew: { } own, Source: var source } && !string.IsNullOrWhiteSpace(source) && !own.Contains(place);
}
