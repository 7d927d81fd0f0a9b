using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Tightness;

/// <summary>What a tightness test may lose, and what is said of one that lost something perceptible with the appliances connected.</summary>
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

        if (edition != TightnessEditions.Third && visit.Limits.HasTable(DeployersTables.PermittedDropEdition4))
            return ByDeployersTable(test, drop, visit, look);

        // Of liquefied gas no table could be read: the engineer's figure is all there is.
        return edition == TightnessEditions.Third && visit.BurnsNaturalGas
            ? ByTable(test, drop, visit, look)
            : ByStatement(test, drop, visit, look);
    }

    /// <summary>
    /// What may be lost, for whoever reads the figures: only of a test with the appliances connected, by the edition that governs it: Edition
    /// 3's line, or the band of a deployer's table where there is one. Without that table what Edition 4 permits is the engineer's to state.
    /// </summary>
    public static PermittedDropFound? Found(TightnessTest test, string subject, Visit visit)
    {
        if (test.AppliancesConnected != true)
            return null;

        return TightnessEditions.Governing(test.Edition, TightnessEditions.DayOf(test, visit)) switch
        {
            TightnessEditions.Third => OfMeterAndPipe(test, subject, visit),
            TightnessEditions.Fourth => OfVolume(test, subject, visit),
            _ => null,
        };
    }

    private static PermittedDropFound? OfMeterAndPipe(TightnessTest test, string subject, Visit visit) =>
        visit.BurnsNaturalGas && test.LargestPipeMm is { } pipe && visit.Record.GasSupply?.MeterKind is { } meter
        && EditionThreeTable.PermittedDrop(meter, pipe, visit.Limits) is { } limit
            ? Looked(limit, test, subject, "line of the table for meterKind and largestPipeMm", "/gasSupply/meterKind", $"{subject}/largestPipeMm")
            : null;

    private static PermittedDropFound? OfVolume(TightnessTest test, string subject, Visit visit) =>
        test.InstallationVolumeM3 is { } volume && visit.Limits.ByVolume(DeployersTables.PermittedDropEdition4, volume) is { } limit
            ? Looked(limit, test, subject, "band of the deployer's table for installationVolumeM3", $"{subject}/installationVolumeM3")
            : null;

    private static PermittedDropFound Looked(Limit limit, TightnessTest test, string subject, string how, params IReadOnlyList<string> inputs) =>
        new(limit, how, test.Edition is null ? inputs : [.. inputs, $"{subject}/edition"]);

    private static Verdict ByTable(TightnessTest test, decimal drop, Visit visit, Look look)
    {
        if (TableFor(test, drop, visit, look, out var table) is { } unknown)
            return unknown;

        var doubt = look.DoubtOf(visit, test.DropMbar);
        return table.Allows(drop)
            ? MeterInDoubt(drop, visit, look) ?? look.Pass($"no smell, and a drop of {drop} mbar; edition 3 permits {table.Max} mbar here").Against(table, drop, doubt)
            : Leak(look, $"the pressure dropped by {drop} mbar; edition 3 permits {table.Max} mbar here").Against(table, drop, doubt);
    }

    private static Verdict ByStatement(TightnessTest test, decimal drop, Visit visit, Look look)
    {
        if (NotIsolated(test, drop, look) is { } leak)
            return leak;
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
        if (test.TestPressureMbar is > 0 and { } full && visit.Limits[LimitIds.StatedDropShare] is var most && Movement.ShareOf(stated, full) is var share && !most.Allows(share))
        {
            return look.Missing($"the stated permitted drop of {stated} mbar is most of the {full} mbar of the test: no standard lets so much go, show where it stands",
                $"{look.Subject}/permittedDropMbar")
                .Against(most, share).Warn(Cautions.EscapingGas);
        }

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

            if (MeterInDoubt(drop, visit, look) is { } inDoubt)
                return inDoubt;
        }

        return NotRetested(test, drop, look)
            ?? look.Advisory($"the pressure dropped by {drop} mbar, within the {stated} mbar that the engineer took from the standard; the figure is not verified here, and the pipework alone did not move")
                .Against(limit, drop).Advise("Find which appliance the gas escapes from.");
    }

    private static Verdict ByDeployersTable(TightnessTest test, decimal drop, Visit visit, Look look)
    {
        if (NotIsolated(test, drop, look) is { } leak)
            return leak;
        if (look.Lacks(test.InstallationVolumeM3, out var volume))
            return look.Missing($"the gauge moved by {drop} mbar, and what is permitted hangs on the installation volume, which is not recorded");
        if (visit.Limits.ByVolume(DeployersTables.PermittedDropEdition4, volume) is not { } limit)
        {
            return look.Missing($"the gauge moved by {drop} mbar, and the deployer's table of permitted drops does not reach to {volume} m3",
                $"{look.Subject}/installationVolumeM3");
        }

        if (!limit.Allows(drop))
            return Leak(look, $"the pressure dropped by {drop} mbar; edition 4 permits {limit.Max} mbar for {volume} m3 by the deployer's table").Against(limit, drop);

        return NotRetested(test, drop, look)
            ?? look.Pass($"no smell, and a drop of {drop} mbar; edition 4 permits {limit.Max} mbar for {volume} m3 by the deployer's table, and the pipework alone did not move")
                .Against(limit, drop);
    }

    /// <summary>Where the appliances could not be isolated, no movement is permitted at all.</summary>
    private static Verdict? NotIsolated(TightnessTest test, decimal drop, Look look) =>
        look.Note(test.IsolationImpracticable) == true && test.PipeworkOnlyMovementMbar is null
            ? Leak(look, $"the gauge moved by {drop} mbar and the appliances could not be isolated, so no movement is permitted")
            : null;

    /// <summary>A drop that is permitted with the appliances connected asks for the retest without them.</summary>
    private static Verdict? NotRetested(TightnessTest test, decimal drop, Look look) => look.Lacks(test.PipeworkOnlyMovementMbar, out _)
        ? look.Missing($"the gauge moved by {drop} mbar, and the retest of the pipework alone is not recorded")
        : null;

    /// <summary>Without a meter the table permits the most: not where one was read all the same.</summary>
    private static Verdict? MeterInDoubt(decimal drop, Visit visit, Look look) =>
        visit.Record.GasSupply is { MeterKind: MeterKind.None } and ({ Rate: not null } or { MeterStandingMbar: not null } or { MeterOperatingMbar: not null })
            ? look.Missing($"the gauge moved by {drop} mbar, and what is permitted hangs on the meter: one was read, and the record says that there is none", "/gasSupply/meterKind")
            : null;

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
