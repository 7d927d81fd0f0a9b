using Findings;
using Records;
using RuleModel.Computations;

namespace RuleModel.Figures;

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

    /// <summary>
    /// Only of a test with the appliances connected, by the edition that governs it: Edition 3's line, or the band of a deployer's table
    /// where there is one. Without that table what Edition 4 permits is the engineer's to state.
    /// </summary>
    private static Figure? PermittedDrop(Visit visit, string subject, TightnessTest test)
    {
        if (test.AppliancesConnected != true)
            return null;

        return TightnessEditions.Governing(test.Edition, TightnessEditions.DayOf(test, visit)) switch
        {
            TightnessEditions.Third => OfMeterAndPipe(visit, subject, test),
            TightnessEditions.Fourth => OfVolume(visit, subject, test),
            _ => null,
        };
    }

    private static Figure? OfMeterAndPipe(Visit visit, string subject, TightnessTest test) =>
        visit.BurnsNaturalGas && test.LargestPipeMm is { } pipe && visit.Record.GasSupply?.MeterKind is { } meter
        && EditionThreeTable.PermittedDrop(meter, pipe, visit.Limits) is { } limit
            ? Looked(limit, subject, test, "line of the table for meterKind and largestPipeMm", "/gasSupply/meterKind", $"{subject}/largestPipeMm")
            : null;

    private static Figure? OfVolume(Visit visit, string subject, TightnessTest test) =>
        test.InstallationVolumeM3 is { } volume && visit.Limits.ByVolume(LimitBook.PermittedDropEdition4, volume) is { } limit
            ? Looked(limit, subject, test, "band of the deployer's table for installationVolumeM3", $"{subject}/installationVolumeM3")
            : null;

    private static Figure Looked(Limit limit, string subject, TightnessTest test, string formula, params IReadOnlyList<string> inputs) => new()
    {
        Name = "permittedDrop",
        Subject = subject,
        Value = limit.Max,
        Unit = limit.Unit,
        Formula = formula,
        Inputs = test.Edition is null ? inputs : [.. inputs, $"{subject}/edition"],
        Source = limit.Source,
    };
}
