using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using Records.Members;
using Records.Metadata;

namespace WholeRecords.Tests;

/// <summary>Members without which a record that is held would close, by the second person's word (duties 6.2).</summary>
internal static partial class OpinionSilence
{
    private static readonly Lazy<IReadOnlyList<(string Member, MemberClass Class, IReadOnlyList<string> Records)>> Found = new(Find);

    /// <summary>Each with its class and the records in which it is so.</summary>
    public static IReadOnlyList<(string Member, MemberClass Class, IReadOnlyList<string> Records)> ClosesWithout => Found.Value;

    private static List<(string Member, MemberClass Class, IReadOnlyList<string> Records)> Find()
    {
        var closed = new ConcurrentBag<(string Pointer, string Record)>();
        Parallel.ForEach(SecondlyJudged.All.Where(one => one.Said?.MayClose == false), one =>
        {
            var record = SecondlyJudged.JsonOf(one.Whole);
            foreach (var pointer in Change.Pointers(record).ToList())
            {
                if (SecondlyJudged.Read(Change.Without(record, pointer)) is { } read && SecondlyJudged.Judge(read).MayClose)
                    closed.Add((pointer, one.Whole.Name));
            }
        });

        return
        [
            .. closed.GroupBy(one => Place().Replace(one.Pointer, "/*"), StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => (group.Key, RecordMembers.At(group.First().Pointer).Class,
                    (IReadOnlyList<string>)[.. group.Select(one => one.Record).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)])),
        ];
    }

    [GeneratedRegex("/[0-9]+", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Place();
}
