using Findings;
using ServiceRecords;

namespace RuleModel;

/// <summary>What the drop of each tightness test means, and what the standard permits.</summary>
internal static class TightnessFigures
{
    public static void AddTo(Worksheet sheet)
    {
        foreach (var (subject, test) in sheet.Visit.TightnessTests ?? [])
        {
            sheet.Add(TightnessComputations.LeakRateOfDrop, subject,
                [sheet.Read(test.InstallationVolumeM3, subject), sheet.Read(test.DropMbar, subject), sheet.Read(test.DurationMinutes, subject)]);
            sheet.Add(TightnessComputations.DropOfOneKelvin, subject, [sheet.Read(test.TestPressureMbar, subject)]);
            if (PermittedDrop(sheet.Visit, subject, test) is { } permitted)
                sheet.Add(permitted);
        }
    }

    /// <summary>Only of a test that Edition 3 governs, made with the appliances connected; what Edition 4 permits is the engineer's to state.</summary>
    private static Figure? PermittedDrop(Visit visit, string subject, TightnessTest test)
    {
        if (!visit.BurnsNaturalGas || test is not { AppliancesConnected: true, Edition: { } edition, LargestPipeMm: { } pipe }
            || TightnessEditions.Governing(edition, TightnessEditions.DayOf(test, visit)) != TightnessEditions.Third
            || visit.Record.GasSupply?.MeterKind is not { } meter || EditionThreeTable.PermittedDrop(meter, pipe, visit.Limits) is not { } limit)
        {
            return null;
        }

        return new Figure
        {
            Name = "permittedDrop",
            Subject = subject,
            Value = limit.Max,
            Unit = limit.Unit,
            Formula = "line of the table for meterKind and largestPipeMm",
            Inputs = ["/gasSupply/meterKind", $"{subject}/largestPipeMm", $"{subject}/edition"],
            Source = limit.Source,
        };
    }
}
