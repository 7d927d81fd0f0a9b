using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties.Work;

[Id("joints-disturbed"), Title("A joint that was disturbed shows what was worked on"), Topic(Topics.Joints)]
public sealed class JointsDisturbedRule : WorkRule
{
    protected override IEnumerable<(TouchedPart Fact, string Pointer, string Words)> FactsOf(Visit visit)
    {
        foreach (var (pointer, joint) in visit.DisturbedJoints ?? [])
        {
            if (joint.CarriesGasOrMay())
                yield return (joint.IsAboveTheApplianceValve() ? TouchedPart.Pipework : TouchedPart.GasPath, pointer, "a gas joint was disturbed");
            if (joint.IsOfTheCombustionCircuit())
                yield return (TouchedPart.CombustionCircuit, pointer, "a joint of the combustion circuit was disturbed");
            if (joint.Place == JointPlace.CondensateTrap)
                yield return (TouchedPart.CondensatePath, pointer, "the condensate trap was taken off");
        }
    }
}
