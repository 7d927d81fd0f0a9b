using Findings;
using RuleModel;
using ServiceRecords;

namespace Rules;

/// <summary>Judges a perceptible drop with the appliances connected.</summary>
internal static class PermittedDrop
{
    public static Verdict Judge(TightnessTest test, decimal drop, Visit visit, Look look)
    {
        if (look.Lacks(test.AppliancesConnected, out var connected) | look.Lacks(test.Edition, out var edition))
            return look.Missing($"the gauge moved by {drop} mbar, and the record does not say enough to judge that");
        if (!connected)
        {
            return Leak(look, $"the pipework alone was tested and lost {drop} mbar; it may not move at all")
                .Against(Movement.PerceptibleOn(test, visit), drop);
        }

        var isByEditionThree = TightnessEditions.Governing(edition, TightnessEditions.DayOf(test, visit)) == TightnessEditions.Third;
        if (!isByEditionThree && visit.Limits.HasTable(LimitBook.PermittedDropEdition4))
            return ByDeployersTable(test, drop, visit, look);

        // Of liquefied gas no table could be read: the engineer's figure is all there is.
        Limit? table = null;
        if (visit.BurnsNaturalGas)
        {
            if (look.Lacks(visit.Record.GasSupply?.MeterKind, out var meter) | look.Lacks(test.LargestPipeMm, out var pipe))
                return look.Missing($"the gauge moved by {drop} mbar, and what is permitted hangs on meter and pipe, which are not both recorded");
            table = EditionThreeTable.PermittedDrop(meter, pipe, visit.Limits);
            if (table is null)
                return look.Missing($"the gauge moved by {drop} mbar, and no permitted drop is known for a meter of kind {meter}", "/gasSupply/meterKind");
        }

        return isByEditionThree && table is not null ? ByTable(drop, table, look, look.DoubtOf(visit, test.DropMbar)) : ByStatement(test, drop, table, look);
    }

    private static Verdict ByTable(decimal drop, Limit table, Look look, Doubt? doubt) => table.Allows(drop)
        ? look.Pass($"no smell, and a drop of {drop} mbar; edition 3 permits {table.Max} mbar here").Against(table, drop, doubt)
        : Leak(look, $"the pressure dropped by {drop} mbar; edition 3 permits {table.Max} mbar here").Against(table, drop, doubt);

    private static Verdict ByStatement(TightnessTest test, decimal drop, Limit? table, Look look)
    {
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
        if (table?.Allows(stated) == false)
        {
            return look.Missing($"the stated permitted drop of {stated} mbar is above the {table.Max} mbar of edition 3: show where it stands",
                $"{look.Subject}/permittedDropSource")
                .Against(table, stated);
        }

        return WithoutRetest(test, drop, look)
            ?? look.Advisory($"the pressure dropped by {drop} mbar, within the {stated} mbar that the engineer took from the standard; the figure is not verified here, and the pipework alone did not move")
                .Against(limit, drop).Advise("Find which appliance the gas escapes from.");
    }

    private static Verdict ByDeployersTable(TightnessTest test, decimal drop, Visit visit, Look look)
    {
        if (look.Lacks(test.InstallationVolumeM3, out var volume))
            return look.Missing($"the gauge moved by {drop} mbar, and what is permitted hangs on the installation volume, which is not recorded");
        if (visit.Limits.ByVolume(LimitBook.PermittedDropEdition4, volume) is not { } limit)
        {
            return look.Missing($"the gauge moved by {drop} mbar, and the deployer's table of permitted drops does not reach to {volume} m3",
                $"{look.Subject}/installationVolumeM3");
        }

        if (!limit.Allows(drop))
            return Leak(look, $"the pressure dropped by {drop} mbar; edition 4 permits {limit.Max} mbar for {volume} m3 by the deployer's table").Against(limit, drop);

        return WithoutRetest(test, drop, look)
            ?? look.Pass($"no smell, and a drop of {drop} mbar; edition 4 permits {limit.Max} mbar for {volume} m3 by the deployer's table, and the pipework alone did not move")
                .Against(limit, drop);
    }

    /// <summary>The verdict on a drop that is permitted with the appliances connected while the retest without them is absent; null when it is there.</summary>
    private static Verdict? WithoutRetest(TightnessTest test, decimal drop, Look look)
    {
        if (look.Note(test.IsolationImpracticable) == true && test.PipeworkOnlyMovementMbar is null)
            return Leak(look, $"the gauge moved by {drop} mbar and the appliances could not be isolated, so no movement is permitted");

        return look.Lacks(test.PipeworkOnlyMovementMbar, out _)
            ? look.Missing($"the gauge moved by {drop} mbar, and the retest of the pipework alone is not recorded")
            : null;
    }

    private static Verdict Leak(Look look, FormattableString message) => look.Unsafe(message, ExpectedClass.ImmediatelyDangerous).IsALeak();
}
