using Findings;

namespace Jobs.Summary;

/// <summary>Adds sums to sums, and shows them.</summary>
internal static class SummaryMerge
{
    /// <summary>Adds <paramref name="more"/> to <paramref name="parts"/>.</summary>
    public static void Add(this SummaryParts parts, SummaryParts more)
    {
        parts.Judged += more.Judged;
        parts.Rejected += more.Rejected;
        parts.FirstFault = FirstFault.Earlier(parts.FirstFault, more.FirstFault);
        parts.Superseded += more.Superseded;
        parts.Complete += more.Complete;
        parts.Marked += more.Marked;
        parts.Overdue += more.Overdue;
        parts.SoonDue += more.SoonDue;
        Add(parts.Outcomes, more.Outcomes);
        foreach (var (key, records) in more.RuleSets)
            parts.RuleSets[key] = parts.RuleSets.GetValueOrDefault(key) + records;
        foreach (var (number, readings) in more.CoCo2Ratios)
            parts.CoCo2Ratios[number] = parts.CoCo2Ratios.GetValueOrDefault(number) + readings;
        AddAll(parts.Topics, more.Topics, Add);
        AddAll(parts.Rules, more.Rules, Add);
        AddAll(parts.Engineers, more.Engineers, Add);
        AddAll(parts.Models, more.Models, Add);
        AddAll(parts.Instruments, more.Instruments, Add);
        parts.Worst.AddRange(more.Worst);
        parts.OverdueFirst.AddRange(more.OverdueFirst);
        parts.SoonDueFirst.AddRange(more.SoonDueFirst);
        CutWorst(parts.Worst, force: false);
        CutDue(parts.OverdueFirst, force: false);
        CutDue(parts.SoonDueFirst, force: false);
    }

    /// <summary>The sums as they are shown.</summary>
    public static AuditSummary ToSummary(this SummaryParts parts, DateOnly lookedAtOn, long read, IReadOnlyList<string> cautions)
    {
        CutWorst(parts.Worst, force: true);
        CutDue(parts.OverdueFirst, force: true);
        CutDue(parts.SoonDueFirst, force: true);
        return new AuditSummary
        {
            LookedAtOn = lookedAtOn,
            Records = new RecordCounts { Read = read, Judged = parts.Judged, Rejected = parts.Rejected, Superseded = parts.Superseded },
            FirstFault = parts.FirstFault,
            Outcomes = parts.Outcomes,
            CompletenessRate = parts.Judged > parts.Superseded ? decimal.Round((decimal)parts.Complete / (parts.Judged - parts.Superseded), 4) : null,
            // Sums that an older version kept have one hash, which stood for both.
            RuleSets = [.. parts.RuleSets.Select(pair => (Words: pair.Key.Split(' '), Records: pair.Value)).Select(set =>
                new RuleSetTally { Id = set.Words[0], Version = set.Words[1], LawHash = set.Words[2], CodeHash = set.Words[^1], Records = set.Records })],
            Topics = Table(parts.Topics, Gravity, (key, counts) => new FindingTally { Key = key, Counts = counts }),
            Rules = Table(parts.Rules, Gravity, (key, counts) => new FindingTally { Key = key, Counts = counts }),
            Engineers = Table(parts.Engineers, Gravity, (key, counts) => new RecordTally { Key = key, Outcomes = counts }),
            Models = Table(parts.Models, Gravity, (key, counts) => new RecordTally { Key = key, Outcomes = counts }),
            Instruments = Table(parts.Instruments, Gravity, (key, counts) => new RecordTally { Key = key, Outcomes = counts }),
            WorstAppliances = new SummaryTable<WorstAppliance> { Total = parts.Marked, Rows = parts.Worst },
            CoCo2Ratios = RatioDistribution.Of(parts.CoCo2Ratios),
            Overdue = new SummaryTable<DueEntry> { Total = parts.Overdue, Rows = parts.OverdueFirst },
            SoonDue = new SummaryTable<DueEntry> { Total = parts.SoonDue, Rows = parts.SoonDueFirst },
            Cautions = cautions,
        };
    }

    internal static void CutWorst(List<WorstAppliance> list, bool force) => Cut(list, force, GravityOf);

    /// <summary>All of them, in the order in which the summary has the first.</summary>
    internal static IReadOnlyList<T> GravestFirst<T>(IEnumerable<T> all, Func<T, WorstAppliance> entryOf) => [.. all.OrderBy(one => GravityOf(entryOf(one)), KeyOrder)];

    internal static void CutDue(List<DueEntry> list, bool force) => Cut(list, force, entry => (entry.By.DayNumber, 0, 0, entry.Line, entry.RuleId));

    /// <summary>Sorts and cuts only when the list has grown well past what is kept: sorting for each entry would cost more than judging.</summary>
    private static void Cut<T>(List<T> list, bool force, Func<T, (int, int, int, long, string)> key)
    {
        if (!force && list.Count < 4 * SummaryParts.MostRows)
            return;

        var kept = list.OrderBy(key, KeyOrder).Take(SummaryParts.MostRows).ToList();
        list.Clear();
        list.AddRange(kept);
    }

    // No record has as many findings as an immediate danger weighs.
    private static (int, int, int, long, string) GravityOf(WorstAppliance entry) =>
        (-entry.Counts.Unsafe - (entry.ExpectedClass == ExpectedClass.ImmediatelyDangerous ? 1_000_000 : 0), -entry.Counts.Error - entry.Counts.Missing, -entry.Counts.Advisory, entry.Line, "");

    private static Comparer<(int A, int B, int C, long Line, string Text)> KeyOrder { get; } = Comparer<(int A, int B, int C, long Line, string Text)>.Create((x, y) =>
        (x.A, x.B, x.C, x.Line).CompareTo((y.A, y.B, y.C, y.Line)) is var order and not 0 ? order : string.CompareOrdinal(x.Text, y.Text));

    private static SummaryTable<TRow> Table<TCounts, TRow>(
        SortedDictionary<string, TCounts> table, Func<TCounts, (int, int, int)> gravity, Func<string, TCounts, TRow> row) => new()
        {
            Total = table.Count,
            Rows = [.. table.OrderByDescending(pair => gravity(pair.Value)).ThenBy(pair => pair.Key, StringComparer.Ordinal)
            .Take(SummaryParts.MostRows).Select(pair => row(pair.Key, pair.Value))],
        };

    private static (int, int, int) Gravity(FindingCounts counts) => (counts.Unsafe, counts.Error + counts.Missing, counts.Advisory);

    private static (int, int, int) Gravity(OverallCounts counts) => (counts.Unsafe, counts.Incomplete, counts.Advisory);

    private static void AddAll<T>(SortedDictionary<string, T> table, SortedDictionary<string, T> more, Action<T, T> add) where T : new()
    {
        foreach (var (key, counts) in more)
            add(SummaryBuilder.At(table, key), counts);
    }

    private static void Add(OverallCounts counts, OverallCounts more)
    {
        counts.Unsafe += more.Unsafe;
        counts.Incomplete += more.Incomplete;
        counts.Advisory += more.Advisory;
        counts.Pass += more.Pass;
    }

    private static void Add(FindingCounts counts, FindingCounts more)
    {
        counts.Unsafe += more.Unsafe;
        counts.Error += more.Error;
        counts.Missing += more.Missing;
        counts.NotLookedAt += more.NotLookedAt;
        counts.Advisory += more.Advisory;
    }
}
