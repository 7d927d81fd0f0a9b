using Findings;
using Visits.Computations;

namespace Visits.Figures;

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
            if (sheet.Visit.Law.PermittedDropOf(test, subject, sheet.Visit) is { } permitted)
                sheet.Add(FigureOf(permitted, subject));
        }
    }

    private static Figure FigureOf(PermittedDropFound permitted, string subject) => new()
    {
        Name = "permittedDrop",
        Subject = subject,
        Value = permitted.Limit.Max,
        Unit = permitted.Limit.Unit,
        Formula = permitted.How,
        Inputs = permitted.Inputs,
        Source = permitted.Limit.Source,
    };
}
