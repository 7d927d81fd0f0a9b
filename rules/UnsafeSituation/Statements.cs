using Findings;
using Kernel;
using Visits;

namespace Rules.UnsafeSituation;

[Topic(Topics.UnsafeSituation)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.AlteredSinceLastVisit), Cites("GSIUR-1998", "8")]
    [Title("Nothing near appliance, flue or vents was altered since the last visit")]
    [Why("A conservatory round the terminal, a kitchen unit over a vent or a boxed-in flue can make an untouched boiler dangerous. Regulation 8 forbids alterations with that effect, and those who order them seldom know it.")]
    [Serves(Part.Alterations, AtMost = Weight.Should)]
    [Coverage(Coverage.MayUnderReport, "what an alteration does is for the person on site")]
    public Statement AlteredSinceLastVisit => Ask(
        visit => visit.Record.Premises?.AlteredSinceLastVisit, aboutItself: true,
        no: Pass("nothing near appliance, flue or vents is recorded as altered"),
        yes: Advisory("something near appliance, flue or vents was altered since the last visit; by its effect that may be a danger",
            warn: Cautions.CarbonMonoxide, advise: "Look at terminal, flue route and vents for what was built around them, and record a defect where the alteration endangers anyone.",
            asks: visit => visit.RecordedDefects.Count > 0 ? [] : ["/defects"]));
}
