using System.Text.Json;
using Findings;
using Kernel;
using Kernel.Catalogues;
using Records;
using Visits;
using Wire;

namespace Rules.Duties;

/// <summary>
/// Which reason of <c>work.notDone</c> counts for what, by the table reasons.json: a pair of reason and duty that it does not list excuses
/// nothing.
/// </summary>
internal static class Reasons
{
    private static readonly string[] SeenInside = ["/heatExchanger/topPlateRemoved", "/heatExchanger/deposits", "/heatExchanger/cleaned", "/burner/condition"];

    private static readonly ILookup<string, ReasonRow> Rows = Read().ToLookup(row => row.Because, StringComparer.Ordinal);

    /// <summary>The reason that counts, in words; null where none does.</summary>
    public static string? WordsFor(Visit visit, string pointer, IReadOnlyList<ServesAttribute> parts, Silence silence) =>
        WordsFor(visit, pointer, silence == Silence.Must ? Weight.Must : Weight.Should, [.. parts.Select(part => part.Part)]);

    /// <summary>The reason that counts for a must of one part of a duty, in words; null where none does.</summary>
    public static string? WordsFor(Visit visit, string pointer, string part) => WordsFor(visit, pointer, Weight.Must, [part]);

    private static string? WordsFor(Visit visit, string pointer, Weight weight, IReadOnlyList<string> parts)
    {
        foreach (var given in visit.Record.Work?.NotDone ?? [])
        {
            if (given is { What: { } what, Because: { } because } && Holds(what, pointer)
                && Rows[WireNames.Of(because)].Any(row => row.Weight >= weight && parts.Any(part => KindOf(part) == row.Duty) && row.Covers(what, visit) && row.IsFor(visit) && ReasonNeeds.AreMet(row, visit)))
            {
                return WordsOf(because);
            }
        }

        return null;
    }

    /// <summary>Does the record say otherwise than this reason for what was not done?</summary>
    public static bool IsContradicted(Visit visit, string what, NotDoneReason because) =>
        Rows[WireNames.Of(because)].Any(row => row.Covers(what, visit) && ReasonNeeds.IsContradicted(row, visit));

    /// <summary>The kinds of duty of which the table speaks at the member <paramref name="what"/>, at one that holds it or at one in it.</summary>
    public static IReadOnlyList<string> DutiesOf(string what)
    {
        var pointer = what.Split('/');
        return pointer.Length < 2 ? [] : [.. Rows.SelectMany(rows => rows).Where(row => row.What.Any(at => at.Split('/').Zip(pointer).All(pair => pair.First == "*" || pair.First == pair.Second)))
            .Select(row => row.Duty).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>
    /// Is a reason for <paramref name="what"/> one for <paramref name="pointer"/>? A reason given for a member is given for what is in it, for the
    /// list that would hold it, and an exchanger that is left shut shows nothing at all.
    /// </summary>
    public static bool Holds(string what, string pointer) => pointer == what || pointer.StartsWith(what + "/", StringComparison.Ordinal) || what.StartsWith(pointer + "/", StringComparison.Ordinal)
        || (what == "/heatExchanger/inspected" && SeenInside.Contains(pointer, StringComparer.Ordinal));

    private static string KindOf(string part) => part.IndexOf('/', StringComparison.Ordinal) is >= 0 and var end ? part[..end] : part;

    /// <summary>The reason in words.</summary>
    public static string WordsOf(NotDoneReason because) => because switch
    {
        NotDoneReason.NoMeter => "there is no meter",
        NotDoneReason.MeterNotReachable => "the meter cannot be reached",
        NotDoneReason.DisplayDead => "the meter's display is dead",
        NotDoneReason.NoTestPoint => "there is no test point",
        NotDoneReason.NotFitted => "it is not fitted",
        NotDoneReason.NotReachable => "it cannot be reached",
        NotDoneReason.ApplianceCannotRun => "the boiler cannot run",
        NotDoneReason.ApplianceLeftOff => "the boiler was left off",
        NotDoneReason.MakerSaysNotNeeded => "the maker does not ask for it",
        NotDoneReason.CustomerRefused => "the customer refused",
        NotDoneReason.NoInstrument => "there was no instrument",
        NotDoneReason.UnsafeToDo => "it was unsafe to do",
        _ => "for another reason",
    };

    private static IReadOnlyList<ReasonRow> Read()
    {
        using var text = typeof(Reasons).Assembly.GetManifestResourceStream("reasons.json")!;
        return JsonSerializer.Deserialize<ReasonBook>(text, CatalogueJson.Options)!.Rows;
    }
}
