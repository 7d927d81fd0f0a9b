using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Instruments;

[Id(RuleIds.ReadingTraceable), Topic(Topics.Instruments), Cites("BS-7967"), CommonPractice]
[Title("Each flue reading names a listed analyser by its serial number")]
[Why("Readings are worth as much as the instrument that took them. After a complaint or an accident, a figure with no serial number cannot be tied to any calibration certificate.")]
[Serves(Part.TraceReadings, AtMost = Weight.Should)]
[Expects("/combustion/readings")]
[Coverage(Coverage.Full, "serial numbers are compared")]
public sealed class ReadingTraceableRule : ComplianceRule<CombustionReading>
{
    protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.ReadingsAfterWork;

    protected override Verdict Assess(CombustionReading reading, Visit visit, Look look)
    {
        if (look.Lacks(reading.Instrument, out var serial))
            return look.Missing();
        if (visit.Record.Instruments is not { } instruments)
            return look.Missing($"the reading names instrument {serial}, and no instruments are listed", "/instruments");

        // One device may serve as several kinds.
        var named = instruments.Where(instrument => string.Equals(instrument.SerialNumber, serial, StringComparison.Ordinal)).ToList();
        if (named.Count == 0)
            return look.Missing($"the reading names instrument {serial}, which is not listed, so its calibration cannot be traced", "/instruments");

        return named.Exists(instrument => instrument.Kind == InstrumentKind.FlueGasAnalyser)
            ? look.Pass($"the reading was taken with the listed analyser {serial}")
            : look.Missing($"the reading names instrument {serial}, which is not listed as a flue gas analyser", $"{look.Subject}/instrument");
    }
}
