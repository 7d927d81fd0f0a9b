using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Findings;
using MadeVisits;
using Visits;
using WholeRecords.Tests.Properties;
using Answer = WholeRecords.Tests.Properties.Answer;
using DangerState = MadeVisits.DangerState;

namespace WholeRecords.Tests.Made;

/// <summary>What an engine makes of made visits: was a real danger closed?</summary>
internal sealed class MadeVisitFigures
{
    private const int Visits = 1500;

    private readonly List<Judged> _judged;

    public MadeVisitFigures(IEngine engine)
    {
        var judged = new ConcurrentBag<Judged>();
        Parallel.For(0, Visits, seed =>
        {
            var visit = VisitGenerator.Make(seed);
            foreach (var written in visit.Untruthful.Prepend(visit.Truthful))
                judged.Add(new Judged(seed, written.Truth, engine.Judge(WholeRecords.Tests.Held.Read(JsonSerializer.SerializeToUtf8Bytes(written.Record)).Record!, Lookup.None)));
        });
        _judged = [.. judged.OrderBy(one => one.Seed).ThenBy(one => one.Truth.Lie)];
    }

    /// <summary>Numbers that may only fall, each with its name.</summary>
    public IEnumerable<(string Name, int Number)> Held =>
    [
        ("visits: truthful, a danger in the record that nobody handled, closed", Truthful.Count(one => Shows(one) && one.Said.MayClose)),
        ("visits: truthful, a danger of the record not called unsafe", Truthful.Count(one => one.Truth.Dangers.Any(danger => danger.IsSeen && danger.State != DangerState.PutRight) && one.Said.Outcome != OverallOutcome.Unsafe)),
        ("visits: untruthful, a danger there, closed", _judged.Count(one => one.Truth is { Lie: not null, HasUnhandledDanger: true } && one.Said.MayClose)),
    ];

    private IEnumerable<Judged> Truthful => _judged.Where(one => one.Truth.Lie is null);

    public string Section()
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"""

            ## Made visits: was a real danger closed?

            {Visits} visits by seed (`tests/MadeVisits`): a boiler with a true condition, somebody who comes, the record that he would write, and {_judged.Count - Visits} records by which he might get rid of the job. What is true of each is known. A danger that nobody saw, or that a record hides without a contradiction, no engine can know; the table says how many there are.

            | record | number | closed | with an unhandled danger | of these closed | of these unsafe |
            |---|---|---|---|---|---|
            {Row("truthful, no danger", Truthful.Where(one => one.Truth.Dangers.Count == 0))}
            {Row("truthful, every danger handled", Truthful.Where(one => one.Truth.Dangers.Count > 0 && !one.Truth.HasUnhandledDanger))}
            {Row("truthful, a danger seen and not handled", Truthful.Where(Shows))}
            {Row("truthful, a danger that nobody saw", Truthful.Where(one => one.Truth.HasUnhandledDanger && !Shows(one)))}
            {string.Join('\n', _judged.Where(one => one.Truth.Lie is not null).GroupBy(one => one.Truth.Lie!.Value).OrderBy(group => group.Key).Select(group => Row($"untruthful: {group.Key}", group)))}

            """);
        return text.ToString();
    }

    private static bool Shows(Judged one) => one.Truth.Dangers.Any(danger => danger is { IsSeen: true, IsHandled: false });

    private static string Row(string name, IEnumerable<Judged> some)
    {
        var all = some.ToList();
        var dangerous = all.Where(one => one.Truth.HasUnhandledDanger).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"| {name} | {all.Count} | {all.Count(one => one.Said.MayClose)} | {dangerous.Count} | {dangerous.Count(one => one.Said.MayClose)} | {dangerous.Count(one => one.Said.Outcome == OverallOutcome.Unsafe)} |");
    }

    private sealed record Judged(int Seed, Truth Truth, Answer Said);
}
