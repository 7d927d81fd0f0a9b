using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Instruments;

[Id(RuleIds.AnalyserStandard), Topic(Topics.Instruments), Cites("EN-50379-3")]
[Title("The flue gas analyser is made to the standard for portable combustion analysers")]
[Why("Hot, wet flue gas holds several gases that can fool a sensor not meant for it. The standard sets what a portable analyser has to withstand and how far out it may be.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Expects("/instruments")]
[Coverage(Coverage.Full, "the record states it")]
public sealed class AnalyserStandardRule : ComplianceRule<Instrument>
{
    // EN 50379 took the place of BS 7927 on 1 March 2007; older units stay acceptable.
    private static readonly string[] Standards = ["50379", "7927"];

    protected override IEnumerable<Subject<Instrument>>? Subjects(Visit visit) =>
        visit.Instruments?.Where(instrument => instrument.Value.Kind == InstrumentKind.FlueGasAnalyser);

    protected override Verdict WhenNone(Visit visit, Look look) =>
        look.Missing($"no flue gas analyser is listed among the instruments", "/instruments");

    protected override Verdict Assess(Instrument instrument, Visit visit, Look look)
    {
        if (look.Lacks(instrument.Standard, out var standard))
            return look.Missing();

        return Array.Exists(Standards, number => standard.Contains(number, StringComparison.Ordinal))
            ? look.Pass($"the analyser is made to {standard}")
            : look.Advisory($"the analyser is recorded as made to '{standard}', which is neither EN 50379 nor the older BS 7927")
                .Advise("Read the standard on the instrument or its certificate; measure with an analyser made to EN 50379-3.");
    }
}
