using Calculations;
using Findings;
using Kernel;
using Records;
using Rules.History;
using Rules.Interval;
using Rules.Situation;
using Visits;
using Wire;

namespace Rules.Law;

/// <summary>What falls due after a visit, by its record. A day that the record does not give rise to is not guessed.</summary>
internal static class DueDates
{
    /// <summary>The dates; none for an appliance, instrument or engineer without a number.</summary>
    public static IReadOnlyList<DueDate> Of(Visit visit, Evaluation? said)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var ofAppliance = string.IsNullOrWhiteSpace(visit.Appliance.SerialNumber) ? [] : new[] { Service(visit), Check(visit, said), Alarm(visit), Inhibitor(visit), BeforeUse(visit, said) }.OfType<DueDate>()
            .Select(due => due with { SerialNumber = visit.Appliance.SerialNumber, Maker = visit.Appliance.Maker, Model = visit.Appliance.Model, PremisesReference = visit.Record.Premises?.Reference });
        return [.. ofAppliance.Concat(Calibrations(visit)).Concat(Categories(visit)).DistinctBy(due => (due.Kind, due.Key))];
    }

    private static DueDate? Service(Visit visit)
    {
        if (visit.Record.JobType is not (JobType.AnnualService or JobType.Commissioning))
            return null;

        var limit = visit.MakersMax(static maker => maker.ServiceIntervalMonths, LimitIds.ServiceIntervalMonths);
        var latest = visit.Date.AddMonths((int)limit.Max!.Value);
        var recorded = visit.Record.Paperwork?.NextDueOn;
        var isRecorded = recorded > visit.Date && recorded <= latest;
        return new DueDate
        {
            Kind = DueKind.AnnualService,
            By = isRecorded ? recorded!.Value : latest,
            Basis = isRecorded ? "the date that the record gives" : $"{WireText.Of(limit.Max.Value)} months after the visit: {limit.Source}",
        };
    }

    private static DueDate? Check(Visit visit, Evaluation? said)
    {
        // A check that was broken off is none, and the day by which it was due stays.
        if (visit.IsUnderLandlordDuty != true || !LandlordsRecords.IsCheck(visit.Record, said))
            return null;

        var by = visit.ContradictionOfDates() is null && LandlordClock.Against(visit) is { } dates ? dates.NextDeadline : LandlordCalendar.Deadline(visit.Date);
        return new DueDate
        {
            Kind = DueKind.LandlordCheck,
            By = by,
            WindowFrom = LandlordCalendar.Against(by, by).WindowStart,
            Basis = "regulation 36(3)(a) of the Gas Safety (Installation and Use) Regulations 1998, counted by regulation 36A",
        };
    }

    private static DueDate? Alarm(Visit visit) => visit.Record.CoAlarm is { Present: not false, ReplaceBy: { } by }
        ? new DueDate { Kind = DueKind.CoAlarmReplacement, By = by, Basis = "the day on the alarm" }
        : null;

    private static DueDate? Inhibitor(Visit visit)
    {
        if (visit.Record.Water?.InhibitorDosedOn is not { } dosed || dosed > visit.Date)
            return null;

        var limit = visit.Limits[LimitIds.InhibitorMonths];
        return new DueDate
        {
            Kind = DueKind.InhibitorDose,
            By = dosed.AddMonths((int)limit.Max!.Value),
            Basis = $"no law sets an interval; {limit.Source}, unless the water is fully tested",
        };
    }

    // A visit that did not get to the boiler, or that is silent on what an earlier one left, changes nothing of what waits.
    private static DueDate? BeforeUse(Visit visit, Evaluation? said)
    {
        var leaves = said?.Situation?.Dangers.Any(danger => danger.IsLeftOnTheAppliance) == true
            || visit.RecordedDefects.Any(recorded => recorded is { IsDangerous: true, IsOfThisAppliance: true } && !Handling.IsPutRight(recorded, finding: null, visit));
        if (!leaves && (visit.HadNoAccess || DangerLeftBeforeRule.OpenBefore(visit).Any()))
            return null;

        var basis = (leaves, visit.IsRunningPutOff) switch
        {
            (true, _) => "a danger was left: it is put right and looked at again before the boiler is used",
            (_, true) => "the boiler was left off: what can only be seen on one that runs is done when it is used again",
            _ => null,
        };
        // What an earlier visit put off waits on though the boiler was left in use, until it is made up.
        if (basis is null && (said is null ? visit.DeferredBefore : said.Deferrals ?? []).Where(deferral => deferral is { Waits: true, Weight: Weight.Must }).Min(deferral => (DateOnly?)deferral.On) is { } since)
            return new DueDate { Kind = DueKind.BeforeUse, By = since, Basis = "an earlier visit put it off: what can only be seen on a boiler that runs is done before it is used" };
        return new DueDate { Kind = DueKind.BeforeUse, By = visit.Date, Basis = basis ?? "nothing was left", IsSettled = basis is null };
    }

    private static IEnumerable<DueDate> Calibrations(Visit visit)
    {
        var months = visit.Limits[LimitIds.CalibrationMonths];
        foreach (var instrument in visit.Record.Instruments ?? [])
        {
            if (string.IsNullOrWhiteSpace(instrument.SerialNumber) || (instrument.CalibrationDueOn ?? instrument.CalibratedOn?.AddMonths((int)months.Max!.Value)) is not { } by)
                continue;

            yield return new DueDate
            {
                Kind = DueKind.Calibration,
                By = by,
                Basis = instrument.CalibrationDueOn is not null ? "the date on the instrument" : $"{WireText.Of(months.Max!.Value)} months after the last calibration: {months.Source}",
                SerialNumber = instrument.SerialNumber,
                Instrument = instrument.Kind is { } kind ? WireNames.Of(kind) : null,
            };
        }
    }

    private static IEnumerable<DueDate> Categories(Visit visit) =>
        from category in visit.Record.Engineer?.Categories ?? []
        where category.ExpiresOn is not null && !string.IsNullOrWhiteSpace(visit.Record.Engineer!.LicenceNumber)
        select new DueDate
        {
            Kind = DueKind.EngineerCategory,
            By = category.ExpiresOn!.Value,
            Basis = "the last day on which the category is valid",
            LicenceNumber = visit.Record.Engineer!.LicenceNumber,
            Category = $"{(category.Fuel is { } fuel ? WireNames.Of(fuel) : "any fuel")}, {(category.Scope is { } scope ? WireNames.Of(scope) : "any scope")}",
        };
}
