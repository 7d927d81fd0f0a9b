using System.Globalization;
using Findings;
using Kernel;
using Rules.Duties.Work;
using Visits;

namespace Rules.Duties;

[Id("put-off-before"), Title("an earlier visit put it off until the boiler is used again"), Cites("GSIUR-1998", "26(9)")]
public sealed class PutOffBeforeRule() : CallRule(null)
{
    public override IReadOnlyList<Call> Calls { get; } =
    [
        Owe.Must(Part.ComingBack).Choosing(visit => PutOff(visit, Weight.Must)).Only("the boiler is left in use, or the record does not say how it was left", UsesTheBoiler),
        Owe.Should(Part.ComingBack).Choosing(visit => PutOff(visit, Weight.Should)).Only("the boiler is left in use, or the record does not say how it was left", UsesTheBoiler),
        Owe.Must(Part.ComingBack).Choosing(visit => PutOff(visit, Weight.Must)).Only("the boiler is left off", visit => !UsesTheBoiler(visit)).PutOffAgain(),
        Owe.Should(Part.ComingBack).Choosing(visit => PutOff(visit, Weight.Should)).Only("the boiler is left off", visit => !UsesTheBoiler(visit)).PutOffAgain(),
    ];

    protected override bool IsCalledBy(Visit visit) => !visit.HadNoAccess && visit.DeferredBefore.Count > 0;

    private static bool UsesTheBoiler(Visit visit) => !visit.IsLeftOutOfUse && !visit.IsRemoval();

    private static IEnumerable<CalledParts> PutOff(Visit visit, Weight weight) =>
        from deferral in visit.DeferredBefore
        where deferral.Weight == weight && Part.ComingBack.Contains(deferral.Part, StringComparer.Ordinal)
        group deferral.Part by (deferral.On, deferral.EvaluationId) into before
        let words = string.Create(CultureInfo.InvariantCulture, $"the visit of {before.Key.On:yyyy-MM-dd} put it off until the boiler is used again")
        select new CalledParts([.. before], new DutyCause(null, words) { EvaluationId = before.Key.EvaluationId });
}
