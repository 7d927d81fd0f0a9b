using Visits.Computations;

namespace Visits.Figures;

/// <summary>The landlord's dates and the age of each calibration.</summary>
internal static class DateFigures
{
    public static void AddTo(Worksheet sheet)
    {
        if (sheet.Visit.IsUnderLandlordDuty == true && sheet.Visit.ContradictionOfDates() is null)
            AddLandlordDates(sheet);

        foreach (var (subject, instrument) in sheet.Visit.Instruments ?? [])
        {
            sheet.Add(DateComputations.CalibrationAge, subject,
                [Given.Day("calibratedOn", instrument.CalibratedOn, $"{subject}/calibratedOn"), Given.Day("usedOn", sheet.Visit.Date, "/finishedAt")]);
        }
    }

    private static void AddLandlordDates(Worksheet sheet)
    {
        const string Subject = "/previousVisit", Previous = "previousCountedOn", Checked = "checkedOn";
        var visit = sheet.Visit;
        var today = Given.Day(Checked, visit.Date, "/finishedAt");
        if (visit.PreviousCounted() is not { } counted)
        {
            sheet.Add(DateComputations.LandlordDeadline, Subject, [Given.Day(Previous, visit.Appliance.InstalledOn, "/appliance/installedOn")]);
            AddNextFromToday();
            return;
        }

        // A day that was looked up stands nowhere in the record.
        var previous = visit.Record.PreviousVisit is { } stated
            ? Given.Day(Previous, counted, stated.DeemedOn is null ? "/previousVisit/finishedAt" : "/previousVisit/deemedOn")
            : Given.Day(Previous, counted);
        sheet.Add(DateComputations.LandlordDeadline, Subject, [previous]);
        if (!visit.Law.HasLandlordsWindow(visit))
        {
            AddNextFromToday();
            return;
        }

        sheet.Add(DateComputations.LandlordWindowStart, Subject, [previous]);
        sheet.Add(DateComputations.LandlordCountedOn, Subject, [previous, today]);
        sheet.Add(DateComputations.LandlordNextDeadline, Subject, [previous, today]);

        // A check that counts on its own day is the previous one of the next.
        void AddNextFromToday() =>
            sheet.Add(DateComputations.LandlordDeadline, Subject, [today.As(Previous)], DateComputations.LandlordNextDeadline.Name);
    }
}
