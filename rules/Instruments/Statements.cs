using Findings;
using Kernel;
using Visits;

namespace Rules.Instruments;

[Topic(Topics.Instruments)]
public sealed class Statements : StatementTable
{
    [Id(RuleIds.AnalyserZeroed), Cites("BS-7967"), Cites("EN-50379-3")]
    [Title("The flue gas analyser is zeroed in outside air before it reads")]
    [Why("Zeroed indoors, an analyser takes any CO already in the room as nothing. Every later figure is then too low by that amount, in the sweep and in the flue alike.")]
    [Serves(Part.TraceReadings, AtMost = Weight.Should)]
    [Coverage(Coverage.Full, "the record states it")]
    public Statement AnalyserZeroed => Ask(
        visit => visit.Record.Combustion?.ZeroedOutdoors,
        yes: Pass("the analyser was zeroed in outside air"),
        no: Advisory("the analyser was not zeroed in outside air, so carbon monoxide in the room may be counted as nothing",
            warn: Cautions.CarbonMonoxide, advise: "Zero the analyser outdoors, then sweep the room, sample the air inlet and read the flue again."));
}
