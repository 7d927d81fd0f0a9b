using Findings;
using Kernel;
using Visits;

namespace Rules.Burner;

[Topic(Topics.Burner)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.ElectrodesClean), CommonPractice]
    [Title("The electrodes are clean")]
    [Why("Dirt on an electrode drains away the spark and weakens the flame signal. A boiler that cannot light, or cannot prove its own flame, locks out and leaves the house without heat or hot water.")]
    [Serves(Part.FireSideDetails)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement ElectrodesClean => Ask(
        visit => visit.Record.Burner?.ElectrodesClean,
        yes: Pass("the electrodes are clean"),
        no: Advisory("the electrodes are not clean",
            warn: Cautions.MakerDecides, advise: "Clean or renew the electrodes, with a new seal where the maker asks for one."));
}
