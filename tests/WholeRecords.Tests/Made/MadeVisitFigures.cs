using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Findings;
using MadeVisits;
using Visits;
using WholeRecords.Tests.Properties;
using DangerState = MadeVisits.DangerState;

namespace WholeRecords.Tests.Made;

/// <summary>What an engine makes of made visits: was a real danger closed?</summary>
internal sealed class MadeVisitFigures
{
    private readonly int _visits;
    private readonly int _boilers;
    private readonly List<Judged> _judged;
    private readonly List<JudgedLater> _later;

    /// <summary>Judges visits of which nothing is known before, and the last of some years of a fifth as many boilers.</summary>
    /// <param name="engine">Any.</param>
    /// <param name="visits">How many.</param>
    /// <param name="first">Seed of the first.</param>
    public MadeVisitFigures(IEngine engine, int visits, int first = 0)
    {
        (_visits, _boilers) = (visits, visits / 5);
        var judged = new ConcurrentBag<Judged>();
        Parallel.For(first, first + visits, seed =>
        {
            foreach (var written in VisitGenerator.Make(seed).Records)
                judged.Add(Judged.Of(seed, written.Truth, Judge(written, Lookup.None)));
        });
        var later = new ConcurrentBag<JudgedLater>();
        Parallel.For(first, first + _boilers, seed =>
        {
            var visit = ApplianceHistory.Make(seed, MadeStarts.Years)[^1];
            if (MadeHistory.LeftBefore(visit) is not { Count: > 0 } left)
                return;
            foreach (var written in visit.Records.Where(written => MadeHistory.Beside(visit, written.Record) != Lookup.None))
            {
                later.Add(new JudgedLater(visit.Seed, written.Truth.Lie, left.Any(danger => MadeHistory.IsSilentOn(written.Record, danger)),
                    Judge(written, MadeHistory.Beside(visit, written.Record)).MayClose, Judge(written, Lookup.None).MayClose));
            }
        });
        _judged = [.. judged.OrderBy(one => one.Seed).ThenBy(one => one.Lie)];
        _later = [.. later.OrderBy(one => one.Seed).ThenBy(one => one.Lie)];

        Answer Judge(Written written, Lookup lookup) => engine.Judge(WholeRecords.Tests.Held.Read(JsonSerializer.SerializeToUtf8Bytes(written.Record)).Record!, lookup);
    }

    /// <summary>Numbers that may only fall, each with its name.</summary>
    public IEnumerable<(string Name, int Number)> Held =>
    [
        ("visits: truthful, a danger in the record that nobody handled, closed", Truthful.Count(one => one is { ShowsUnhandled: true, MayClose: true })),
        ("visits: truthful, a danger of the record not called unsafe", Truthful.Count(one => one.ShowsLeft && one.Outcome != OverallOutcome.Unsafe)),
        ("visits: untruthful, a danger in the record that nobody handled, closed", Untruthful.Count(one => one is { ShowsUnhandled: true, MayClose: true })),
        ("visits: untruthful, a danger there, closed", Untruthful.Count(one => one is { HasUnhandled: true, MayClose: true })),
        ("visits: silent on a danger that a visit before left, closed", _later.Count(one => one is { IsSilent: true, MayClose: true })),
    ];

    /// <summary>Visits that were closed though the record shows a danger that nobody handled, or is silent on one that was left before.</summary>
    public IReadOnlyList<string> Holes =>
    [
        .. _judged.Where(one => one is { ShowsUnhandled: true, MayClose: true }).Select(one => $"visit {one.Seed} {one.Lie}: shows a danger that nobody handled"),
        .. _later.Where(one => one is { IsSilent: true, MayClose: true }).Select(one => $"visit {one.Seed} {one.Lie}: silent on a danger that was left before"),
    ];

    private IEnumerable<Judged> Truthful => _judged.Where(one => one.Lie is null);

    private IEnumerable<Judged> Untruthful => _judged.Where(one => one.Lie is not null);

    public string Section()
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"""

            ## Made visits: was a real danger closed?

            {_visits} visits by seed (`tests/MadeVisits`): a boiler with a true condition, somebody who comes, the record that he would write, and {_judged.Count - _visits} records by which he might get rid of the job. What is true of each is known. A danger that nobody saw, or that a record hides without a contradiction, no engine can know; the table says how many there are, and of how many the record shows it by a value or a defect.

            | record | number | closed | with an unhandled danger | of these closed | of these unsafe | the record shows it | of these closed |
            |---|---|---|---|---|---|---|---|
            {Row("truthful, no danger", Truthful.Where(one => !one.IsDangerous))}
            {Row("truthful, every danger handled", Truthful.Where(one => one.IsDangerous && !one.HasUnhandled))}
            {Row("truthful, a danger seen and not handled", Truthful.Where(one => one.ShowsUnhandled))}
            {Row("truthful, a danger that nobody saw", Truthful.Where(one => one.HasUnhandled && !one.ShowsUnhandled))}
            {string.Join('\n', Untruthful.GroupBy(one => one.Lie!.Value).OrderBy(group => group.Key).Select(group => Row($"untruthful: {group.Key}", group)))}

            ### With the visits before

            Of {_boilers} boilers over {MadeStarts.Years} years, the last visit to those on which a visit before had found a danger that nobody put right since, with what a store would know of it. Who did not get to the boiler is not among them.

            | record | number | silent on it | of these closed | of these closed without the visits before |
            |---|---|---|---|---|
            {string.Join('\n', _later.GroupBy(one => one.Lie).OrderBy(group => group.Key).Select(group => LaterRow(group.Key is { } lie ? $"untruthful: {lie}" : "truthful", group)))}

            """);
        return text.ToString();
    }

    private static string Row(string name, IEnumerable<Judged> some)
    {
        var all = some.ToList();
        var (dangerous, shown) = (all.Where(one => one.HasUnhandled).ToList(), all.Where(one => one.ShowsUnhandled).ToList());
        return string.Create(CultureInfo.InvariantCulture, $"| {name} | {all.Count} | {all.Count(one => one.MayClose)} | {dangerous.Count} | {dangerous.Count(one => one.MayClose)} | {dangerous.Count(one => one.Outcome == OverallOutcome.Unsafe)} | {shown.Count} | {shown.Count(one => one.MayClose)} |");
    }

    private static string LaterRow(string name, IEnumerable<JudgedLater> some)
    {
        var all = some.ToList();
        var silent = all.Where(one => one.IsSilent).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"| {name} | {all.Count} | {silent.Count} | {silent.Count(one => one.MayClose)} | {silent.Count(one => one.MayCloseAlone)} |");
    }

    /// <summary>What is kept of a record and its truth: of a hundred thousand visits the whole would be too much.</summary>
    private readonly record struct Judged(int Seed, Lie? Lie, bool IsDangerous, bool HasUnhandled, bool ShowsUnhandled, bool ShowsLeft, bool MayClose, OverallOutcome Outcome)
    {
        public static Judged Of(int seed, Truth truth, Answer said) => new(
            seed, truth.Lie, truth.Dangers.Count > 0, truth.HasUnhandledDanger, truth.ShowsUnhandledDanger,
            truth.Dangers.Any(danger => danger.State != DangerState.PutRight && truth.Shown.Contains(danger.Kind)), said.MayClose, said.Outcome);
    }

    /// <summary>A record of a visit before which a danger had been left.</summary>
    private readonly record struct JudgedLater(int Seed, Lie? Lie, bool IsSilent, bool MayClose, bool MayCloseAlone);
}
