using Findings;
using NRules.Fluent.Dsl;
using RuleModel;
using ServiceRecords;

namespace Rules;

[Name(RuleIds.MakersSealRenewed), Topic(Topics.Joints), Cites("GSIUR-1998", "26(9)"), CommonPractice]
[Description("The seals that the maker wants renewed at this service are renewed")]
[Expects("/makerLimits/sealsToRenew"), AppliesBy("/disturbedJoints")]
public sealed class MakersSealRenewedRule : ComplianceRule<JointPlace>
{
    protected override bool? Applies(Visit visit) => visit.IsAnnualService ? true : visit.DisturbedJoints?.Any();

    protected override IEnumerable<Subject<JointPlace>>? Subjects(Visit visit) =>
        RuleModel.Subjects.Of("/makerLimits/sealsToRenew", visit.Maker.SealsToRenew);

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
        var verdict = atPlace.Exists(joint => joint.Value.IsOfTheCombustionCircuit())
            ? look.Unsafe(message).Warn(Cautions.CarbonMonoxide)
            : look.Advisory(message).Warn(Cautions.MakerDecides);
        return verdict.Advise("Fit a new seal of the maker's part number and size for this output, then check the joint.");
    }
}
