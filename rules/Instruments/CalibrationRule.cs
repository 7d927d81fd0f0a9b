using Kernel;
using Records;
using Visits;

namespace Rules.Instruments;

/// <summary>A rule on instruments of some kinds: each is within its calibration on the day of the visit, that day included.</summary>
public abstract class CalibrationRule : ComplianceRule<Instrument>
{
    protected sealed override IEnumerable<Subject<Instrument>>? Subjects(Visit visit) => visit.Instruments?.Where(instrument => IsOfKind(instrument.Value.Kind));

    protected abstract bool IsOfKind(InstrumentKind? kind);

    protected sealed override Verdict Assess(Instrument instrument, Visit visit, Look look)
    {
        if (look.Lacks(instrument.Kind, out var kind) | look.Lacks(instrument.SerialNumber, out _))
            return look.Missing();

        var calibratedOn = look.Note(instrument.CalibratedOn);
        var limit = visit.Limits[LimitIds.CalibrationMonths];
        if (calibratedOn > visit.Date)
            return look.Missing($"the {kind} was calibrated on {calibratedOn}, after the visit; what held on the day is not on record", $"{look.Subject}/calibratedOn");
        var lastOfTheUsual = calibratedOn?.AddMonths((int)limit.Max!.Value);
        if ((look.Note(instrument.CalibrationDueOn) ?? lastOfTheUsual) is not { } lastDay)
            return look.Missing($"the record shows neither when the {kind} was calibrated nor when it is due again", $"{look.Subject}/calibrationDueOn");

        if (visit.Date > lastDay)
        {
            return OutOfDate($"the calibration of the {kind} ran out on {lastDay}, {DayLimits.Days(visit.Date.DayNumber - lastDay.DayNumber)} before the visit", visit, look)
                .Advise("Have the instrument calibrated, and repeat with one in date what decides.");
        }

        // The instrument's maker may allow longer than is usual; that he does is not on record.
        return visit.Date > lastOfTheUsual
            ? look.Advisory($"the {kind} was calibrated on {calibratedOn}, more than {limit.Max} months before the visit, and its calibration rests on the due date of {lastDay} alone")
                .Advise("Make sure that the instrument's maker allows so long an interval, or have it calibrated.")
            : look.Pass($"the {kind} is within its calibration, which runs to {lastDay}");
    }

    /// <summary>What an instrument out of date means.</summary>
    protected virtual Verdict OutOfDate(FormattableString message, Visit visit, Look look) => look.Advisory(message);
}
