using Records;
using Storage.Tests.Shared;
using static Storage.Tests.Shared.Shelf;

namespace Storage.Tests;

/// <summary>Which earlier visits a record is given.</summary>
public sealed class HistoryStoreTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Visits_with_an_earlier_finish_come_the_latest_first(string kind)
    {
        var store = new Shelf(_scratch.Open(kind));
        var of2024 = await store.Save("a", "2024-09-10T10:00:00+01:00");
        var of2025 = await store.Save("b", "2025-09-10T10:00:00+01:00");
        await store.Save("c", "2026-09-14T10:00:00+01:00");
        await store.Save("d", "2027-09-14T10:00:00+01:00");

        // The same moment, written at another offset, is not earlier.
        Assert.Equal([of2025, of2024], await store.EarlierThan(Record("x", "2026-09-14T09:00:00Z")));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task What_is_superseded_or_corrected_is_no_earlier_visit(string kind)
    {
        var store = new Shelf(_scratch.Open(kind));
        var wrong = await store.Save("a", "2024-09-10T10:00:00Z");
        var right = await store.Save("a", "2024-09-11T10:00:00Z", supersedes: wrong);

        Assert.Equal([right], await store.EarlierThan(Record("x", "2026-09-14T09:00:00Z")));
        Assert.Empty(await store.EarlierThan(Record("x", "2026-09-14T09:00:00Z", supersedes: right)));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_visit_that_is_asked_about_again_counts_once_and_not_for_itself(string kind)
    {
        var store = new Shelf(_scratch.Open(kind));
        await store.Save("a", "2026-09-14T09:00:00Z");
        var last = await store.Save("a", "2026-09-14T09:30:00Z");

        Assert.Empty(await store.EarlierThan(Record("a", "2026-09-14T10:00:00Z")));
        Assert.Equal([last], await store.EarlierThan(Record("b", "2026-09-14T10:00:00Z")));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Only_what_was_known_by_then_counts(string kind)
    {
        var store = new Shelf(_scratch.Open(kind));
        var first = await store.Save("a", "2024-09-10T10:00:00Z", saidAt: Now);
        var corrected = await store.Save("a", "2024-09-10T10:00:00Z", supersedes: first, saidAt: Now.AddDays(2));
        var today = Record("x", "2026-09-14T09:00:00Z");

        Assert.Empty(await store.EarlierThan(today, knownAt: Now.AddDays(-1)));
        Assert.Equal([first], await store.EarlierThan(today, knownAt: Now.AddDays(1)));
        Assert.Equal([corrected], await store.EarlierThan(today, knownAt: Now.AddDays(3)));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task Of_many_visits_the_latest_are_taken_and_each_record_of_many_gets_its_own(string kind)
    {
        var store = new Shelf(_scratch.Open(kind));
        for (var year = 2000; year < 2020; year++)
            await store.Save($"r{year}", $"{year}-05-05T10:00:00Z");

        var found = await store.Find([Record("x", "2030-05-05T10:00:00Z"), Record("y", "2003-05-05T10:00:00Z"), Record("z", "2030-05-05T10:00:00Z", serial: "none")]);

        Assert.Equal(Enumerable.Range(2008, 12).Reverse(), found[0].Earlier.Select(visit => visit.Date.Year));
        Assert.Equal([2002, 2001, 2000], found[1].Earlier.Select(visit => visit.Date.Year));
        Assert.Empty(found[2].Earlier);
    }

    [Fact]
    public async Task A_record_that_states_its_previous_visit_is_given_the_stored_ones_too_for_what_they_left()
    {
        var store = new Shelf(_scratch.Open());
        await store.Save("a", "2024-09-10T10:00:00Z");
        var record = Record("x", "2026-09-14T09:00:00Z", previous: new PreviousVisit { DeemedOn = new DateOnly(2025, 9, 1) });

        Assert.Single(await store.EarlierThan(record));
    }

    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task What_was_said_of_the_same_visit_by_another_record_is_no_earlier_visit_and_is_not_forgotten(string kind)
    {
        var store = new Shelf(_scratch.Open(kind));
        var a = await store.Save("a", "2026-09-14T10:25:00Z", withLooseFlueSince: new DateTimeOffset(2026, 9, 14, 9, 30, 0, TimeSpan.Zero));
        await store.Save("quiet", "2026-09-14T08:00:00Z");

        // The same record again, whether it says that the visit ended then, before or later, by another maker or without its serial number; not another
        // record id, day or serial number, nor what is replaced by name.
        string[][] said =
        [
            await SaidBefore(Record("a", "2026-09-14T10:25:00Z")), await SaidBefore(Record("a", "2026-09-14T10:20:00Z")), await SaidBefore(Record("a", "2026-09-14T11:00:00Z")),
            await SaidBefore(Record("a", "2026-09-14T10:25:00Z", maker: "Another")), await SaidBefore(Record("a", "2026-09-14T10:25:00Z", maker: null)),
            await SaidBefore(Record("a", "2026-09-14T10:25:00Z", serial: "")), await SaidBefore(Record("a", "2026-09-14T10:25:00Z", maker: null, serial: "")),
            await SaidBefore(Record("a", "2026-09-14T10:25:00Z", maker: "Another", serial: "")), await SaidBefore(Record("b", "2026-09-14T10:25:00Z", serial: "")),
            await SaidBefore(Record("a", "2026-09-15T10:25:00Z")), await SaidBefore(Record("a", "2026-09-14T10:25:00Z", serial: "QB-2")), await SaidBefore(Record("a", "2026-09-14T10:25:00Z", supersedes: a)),
        ];
        string[] flue = ["flue-supports"];
        Assert.Equal([flue, flue, flue, flue, flue, flue, flue, [], [], [], [], []], said);
        Assert.DoesNotContain(a, await store.EarlierThan(Record("a", "2026-09-14T11:00:00Z")));

        async Task<string[]> SaidBefore(ServiceRecord record) =>
            [.. (await store.Find([record]))[0].SaidBefore.SelectMany(answer => answer.Dangers).Select(danger => danger.RuleId)];
    }

    /// <summary>"Unknown" is on many boilers: with a word in place of the serial number a visit is of this one only in the same premises.</summary>
    [Theory]
    [InlineData("sqlite")]
    [PostgreSql]
    public async Task A_word_in_place_of_the_serial_number_brings_the_visits_of_the_same_premises_alone(string kind)
    {
        var store = new Shelf(_scratch.Open(kind));
        foreach (var serial in (string[])["unknown", "N/A", "0", "0000", "-"])
        {
            var here = await store.Save($"a{serial}", "2025-09-14T10:25:00Z", serial: serial, premises: "P-1");
            await store.Save($"b{serial}", "2025-09-15T10:25:00Z", serial: serial, premises: "P-2");
            await store.Save($"c{serial}", "2025-09-16T10:25:00Z", serial: serial);

            Assert.Equal([here], await store.EarlierThan(Record("x", "2026-09-14T09:00:00Z", serial: serial, premises: "P-1")));
            Assert.Empty(await store.EarlierThan(Record("x", "2026-09-14T09:00:00Z", serial: serial, premises: "P-3")));
            Assert.Empty(await store.EarlierThan(Record("x", "2026-09-14T09:00:00Z", serial: serial)));
        }
    }
}
