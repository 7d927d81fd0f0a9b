using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

[Id(RuleIds.TightnessResult), Topic(Topics.Tightness), Cites("IGEM-UP-1B"), Cites("GSIUR-1998", "6(6)")]
[Title("The tightness test after the work shows no leak: no smell, and no movement beyond what the standard permits")]
[Why("Escaping gas gathers unseen under floors and in rooms until a flame or a switch sets it off. After the work this test is the last check of the whole installation before the gas is left on.")]
[Serves(Part.Tightness)]
[Serves(Part.LandlordPipework)]
[Uses(LimitIds.PerceptibleMovementWater, LimitIds.PerceptibleMovementElectronic, LimitIds.StatedDropShare, LimitIds.TightnessTablePipe,
    LimitIds.PermittedDropEdition3None28, LimitIds.PermittedDropEdition3None35, LimitIds.PermittedDropEdition3U628,
    LimitIds.PermittedDropEdition3U635, LimitIds.PermittedDropEdition3U1628, LimitIds.PermittedDropEdition3U1635,
    DeployersTables.PermittedDropEdition4)]
[Expects("/tightnessTests")]
[Coverage(Coverage.MayUnderReport, "a stated permitted drop is believed, as an advisory, until a deployer fills the table")]
public sealed class TightnessResultRule : TightnessTestRule
{
    protected override Verdict Judge(TightnessTest test, Visit visit, Look look)
    {
        var verdict = WhatItProves(test, visit, look);
        return verdict.Outcome is Outcome.Unsafe or Outcome.Missing && visit.IsPutRight(look.Subject, Topics.Tightness) && TightnessProof.IsFollowedByATightTest(look.Subject, visit)
            ? verdict.PutRight($"a later test shows no leak")
            : verdict;
    }

    /// <summary>What smell and gauge say, and only if the test was made as it must be.</summary>
    internal static Verdict WhatItProves(TightnessTest test, Visit visit, Look look)
    {
        var verdict = WhatItShows(test, visit, look);
        if (verdict.Outcome is Outcome.Unsafe or Outcome.Missing)
            return verdict;

        var objections = TightnessProof.ObjectionsTo(look.Subject, visit);
        return objections.Count == 0
            ? verdict
            : look.Missing($"no leak showed, and that does not count yet: other parts of the test are absent or void it", objections);
    }

    /// <summary>What smell and gauge say, whether or not the test was made as it must be.</summary>
    internal static Verdict WhatItShows(TightnessTest test, Visit visit, Look look)
    {
        var lacks = look.Lacks(test.GasSmell, out var smelt) | look.Lacks(test.DropMbar, out var drop);
        var none = Movement.PerceptibleOn(test, visit);
        if (smelt)
            return look.Unsafe($"gas was smelt, whatever the gauge showed", ExpectedClass.ImmediatelyDangerous).IsALeak();
        if (Movement.OfThePipeworkAlone(test, visit))
        {
            var alone = Math.Abs(look.Note(test.PipeworkOnlyMovementMbar)!.Value);
            return look.Unsafe($"with the appliances isolated the gauge moved by {alone} mbar, more than {none.Max} mbar: the pipework leaks",
                ExpectedClass.ImmediatelyDangerous)
                .Against(none, alone).IsALeak();
        }

        if (lacks)
            return look.Missing();
        if (drop < -none.Max)
        {
            return look.Missing($"the pressure rose by {-drop} mbar during the test, so it shows nothing: a passing valve or warming pipework hides a leak",
                $"{look.Subject}/dropMbar")
                .Against(none, -drop).Advise("Find the cause of the rise and repeat the test.");
        }

        return none.Allows(drop)
            ? look.Pass($"no smell, and a drop of {drop} mbar, which counts as no movement up to {none.Max} mbar").Against(none, drop, look.DoubtOf(visit, test.DropMbar))
            : PermittedDrop.Judge(test, drop, visit, look);
    }
}
