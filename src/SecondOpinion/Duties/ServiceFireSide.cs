using Records;

namespace SecondOpinion.Duties;

/// <summary>Exchanger and burner inspected, cleaned where there are deposits.</summary>
internal static class ServiceFireSide
{
    private const DutyKind Kind = DutyKind.ServiceFireSide;
    private const string Why = "an annual service";

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached || !visit.IsService)
            yield break;
        var exchanger = visit.Record.HeatExchanger;
        var inspected = visit.Must(Kind, "/heatExchanger/inspected", exchanger?.Inspected == true ? true : null, Why, Seen.InTheJob);
        yield return inspected;
        var burner = visit.Must(Kind, "/burner/condition", visit.Recorded("/burner/condition"), Why, Seen.InTheJob);
        // Behind an exchanger that the maker wants left shut the burner is not seen either.
        yield return burner.State == DutyState.Missing && inspected.State == DutyState.ByReason ? burner with { State = DutyState.ByReason } : burner;
        if (exchanger?.Deposits is Deposits.Light or Deposits.Heavy)
        {
            var isCleaned = exchanger.Cleaned ?? (exchanger.Deposits == Deposits.Heavy ? null : false);
            yield return visit.Must(Kind, "/heatExchanger/cleaned", isCleaned, "there were deposits", Seen.InTheJob, holdsIfBad: exchanger.Deposits == Deposits.Heavy);
        }
        else
        {
            // Whether it had to be cleaned turns on what was found: of one that was looked at and not cleaned it is asked.
            yield return exchanger is { Inspected: true, Deposits: null, Cleaned: not true }
                ? visit.Must(Kind, "/heatExchanger/deposits", null, Why, Seen.InTheJob)
                : visit.Should(Kind, "/heatExchanger/deposits", visit.Recorded("/heatExchanger/deposits"), Why, Seen.InTheJob);
        }

        if (visit.LacksMakersSource)
            yield return visit.Must(Kind, "/makerLimits/source", null, "the maker's word has to stand somewhere");
        if (exchanger?.Cleaned == true)
        {
            yield return visit.Should(Kind, "/heatExchanger/method", visit.Recorded("/heatExchanger/method"), "it was cleaned");
            yield return visit.Should(Kind, "/heatExchanger/minutesSpent", visit.Recorded("/heatExchanger/minutesSpent"), "it was cleaned");
        }

        yield return visit.Should(Kind, "/burner/electrodeGapMm", visit.Recorded("/burner/electrodeGapMm"), Why, Seen.InTheJob);
    }
}
