using Findings;

namespace Rules.Tests;

/// <summary>Section 2 of the page of duties: what is absent weighs as a must or as a should, and a duty that has parts of both says which of them is absent.</summary>
public sealed class NotShownTests
{
    [Theory]
    [InlineData("{}", DutyState.Met, null)]
    [InlineData("""{ "/heatExchanger/minutesSpent": null }""", DutyState.Missing, Weight.Should)]
    [InlineData("""{ "/heatExchanger/inspected": null }""", DutyState.Missing, null)]
    [InlineData("""{ "/heatExchanger/inspected": null, "/heatExchanger/minutesSpent": null }""", DutyState.Missing, null)]
    public void A_must_of_which_only_good_practice_is_absent_says_so(string set, DutyState state, Weight? notShown)
    {
        var evaluation = RuleSet.Engine.Evaluate(RuleSet.Example(set));
        var fireSide = evaluation.Duties.Single(duty => duty.Kind == "serviceFireSide");
        Assert.Equal((Weight.Must, state, notShown), (fireSide.Weight, fireSide.State, fireSide.NotShown));
        Assert.Equal(state == DutyState.Met || notShown == Weight.Should, evaluation.Closing.Allowed);
    }
}
