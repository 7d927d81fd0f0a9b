using ServiceRecords;

namespace RuleModel;

/// <summary>What the drop of each tightness test means.</summary>
internal static class TightnessFigures
{
    public static void AddTo(Worksheet sheet)
    {
        foreach (var (subject, test) in Subjects.Of("/tightnessTests", sheet.Visit.Record.TightnessTests) ?? [])
        {
            sheet.Add(TightnessComputations.LeakRateOfDrop, subject,
                [sheet.Read(test.InstallationVolumeM3, subject), sheet.Read(test.DropMbar, subject), sheet.Read(test.DurationMinutes, subject)]);
            sheet.Add(TightnessComputations.DropOfOneKelvin, subject, [sheet.Read(test.TestPressureMbar, subject)]);
        }
    }
}
