using Findings;
using RuleModel;
using ServiceRecords;

namespace Rules;

/// <summary>Judges a perceptible drop with the appliances connected.</summary>
internal static class PermittedDrop
{
    public static Verdict Judge(TightnessTest test, decimal drop, Visit visit, Look look)
    {
        if (look.Lacks(test.AppliancesConnected, out var connected))
            return look.Missing($"the gauge moved by {drop} mbar, and the record does not say enough to judge that");
        if (!connected)
        {
            return Leak(look, $"the pipework alone was tested and lost {drop} mbar; it may not move at all")
                .Against(Movement.PerceptibleOn(test, visit), drop);
        }

        if (TightnessEditions.Governing(test.Edition, TightnessEditions.DayOf(test, visit)) is not { } edition)
            return look.Missing($"the gauge moved by {drop} mbar, and the record does not say by which edition to judge that", $"{look.Subject}/edition");

        // Of liquefied gas no table could be read: the engineer's figure is all there is.
        return edition == TightnessEditions.Third && visit.BurnsNaturalGas
            ? ByTable(test, drop, visit, look)
            : ByStatement(test, drop, visit, look);
    }

    private static Verdict ByTable(TightnessTest test, decimal drop, Visit visit, Look look)
    {
        if (TableFor(test, drop, visit, look, out var table) is { } unknown)
            return unknown;

        var doubt = look.DoubtOf(visit, test.DropMbar);
        return table.Allows(drop)
            ? look.Pass($"no smell, and a drop of {drop} mbar; edition 3 permits {table.Max} mbar here").Against(table, drop, doubt)
            : Leak(look, $"the pressure dropped by {drop} mbar; edition 3 permits {table.Max} mbar here").Against(table, drop, doubt);
    }

    private static Verdict ByStatement(TightnessTest test, decimal drop, Visit visit, Look look)
    {
        if (look.Note(test.IsolationImpracticable) == true && test.PipeworkOnlyMovementMbar is null)
            return Leak(look, $"the gauge moved by {drop} mbar and the appliances could not be isolated, so no movement is permitted");
        if (look.Lacks(test.PermittedDropMbar, out var stated) | look.Lacks(test.PermittedDropSource, out var source))
            return look.Missing($"the gauge moved by {drop} mbar, and the record does not say what the standard permits here");

        var limit = new Limit
        {
            Max = stated,
            Unit = "mbar",
            Origin = LimitOrigin.Standard,
            Source = $"{source}, as the engineer stated it (figure not verified)",
            Verified = false,
        };
        if (!limit.Allows(drop))
            return Leak(look, $"the pressure dropped by {drop} mbar, more than the {stated} mbar that the engineer took from the standard")
                .Against(limit, drop);
        if (visit.BurnsNaturalGas)
        {
            if (TableFor(test, drop, visit, look, out var table) is { } unknown)
                return unknown;
            if (!table.Allows(stated))
            {
                return look.Missing($"the stated permitted drop of {stated} mbar is above the {table.Max} mbar of edition 3: show where it stands",
                    $"{look.Subject}/permittedDropSource")
                    .Against(table, stated);
            }
        }

        if (look.Lacks(test.PipeworkOnlyMovementMbar, out _))
            return look.Missing($"the gauge moved by {drop} mbar, and the retest of the pipework alone is not recorded");

        return look.Advisory($"the pressure dropped by {drop} mbar, within the {stated} mbar that the engineer took from the standard; the figure is not verified here, and the pipework alone did not move")
            .Against(limit, drop).Advise("Find which appliance the gas escapes from.");
    }

    /// <summary>Edition 3's figure; a verdict where the record does not say enough to find it, or it has no line for the meter.</summary>
    private static Verdict? TableFor(TightnessTest test, decimal drop, Visit visit, Look look, out Limit table)
    {
        table = null!;
        if (look.Lacks(visit.Record.GasSupply?.MeterKind, out var meter) | look.Lacks(test.LargestPipeMm, out var pipe))
            return look.Missing($"the gauge moved by {drop} mbar, and what is permitted hangs on meter and pipe, which are not both recorded");

        table = EditionThreeTable.PermittedDrop(meter, pipe, visit.Limits)!;
        return table is null
            ? look.Missing($"the gauge moved by {drop} mbar, and no permitted drop is known for a meter of kind {meter}", "/gasSupply/meterKind")
            : null;
    }

    private static Verdict Leak(Look look, FormattableString message) => look.Unsafe(message, ExpectedClass.ImmediatelyDangerous).IsALeak();
}
