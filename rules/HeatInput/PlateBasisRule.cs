using Findings;
using Kernel;
using Records;
using Rules.Duties;
using Visits;

namespace Rules.HeatInput;

[Id(RuleIds.PlateBasis), Topic(Topics.HeatInput), CommonPractice]
[Title("The rated input is recorded with its basis, net or gross, and the two are not mixed up")]
[Why("Net and gross figures for one boiler lie about a tenth apart. Mixed up, they show a fault that is not there or cover one that is.")]
[Serves(Part.Rate, AtMost = Weight.Should)]
[Uses(LimitIds.BasisMixUpDeviation)]
[Coverage(Coverage.MayOverReport, "a real deviation of the same size looks like a mix-up")]
public sealed class PlateBasisRule : VisitRule
{
    protected override string SubjectPointer => "/appliance/ratedInputBasis";

    protected override Verdict Assess(Visit visit, Look look)
    {
        if (look.Lacks(visit.Record.Appliance.RatedInputBasis, out var basis) | look.Lacks(visit.Record.Appliance.RatedInputKw, out _))
            return look.Missing();

        var other = basis == InputBasis.Net ? InputBasis.Gross : InputBasis.Net;
        var mixUp = visit.Limits[LimitIds.BasisMixUpDeviation];
        return visit.DeviationPercent(other) is { } deviation && mixUp.Allows(deviation)
            ? look.Advisory($"the measured heat input is {deviation:+0.0;-0.0;0.0} % from the plate when that is read as {other}, not {basis}: the two may be mixed up")
                .Against(mixUp, deviation).Advise("Look at the data plate again and record which basis its input figure has.")
            : look.Pass($"the rated input is {basis}");
    }
}
