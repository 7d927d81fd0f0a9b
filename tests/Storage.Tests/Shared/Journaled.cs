using Findings;
using Records;

namespace Storage.Tests.Shared;

/// <summary>What the tests of the journal write, and how they read what it then says.</summary>
internal static class Journaled
{
    public static readonly DateTimeOffset Now = new(2026, 9, 14, 10, 0, 0, TimeSpan.Zero);

    public static MakerLimits Limits => new() { CoCo2RatioMax = 0.003m, Source = "invented manual", SealsToRenew = [JointPlace.TopPlate] };

    public static Task<bool> Save(Database database, Tenant tenant, Evaluation evaluation, string? supersedes = null, string? keyId = null) =>
        new EvaluationStore(database, Scratch.Rules.Law).SaveAsync(tenant, Scratch.Record(supersedes), Scratch.Posted, evaluation, Include.Passes, default, keyId: keyId);

    public static Task<IReadOnlyList<JournalEntry>> All(Database database, Tenant tenant) => new Journal(database).ReadAsync(tenant, 0, int.MaxValue, default);

    /// <summary>Numbered from 1, without a gap.</summary>
    public static void Dense(IEnumerable<JournalEntry> entries, int count) =>
        Assert.Equal(Enumerable.Range(1, count).Select(number => (long)number), entries.Select(entry => entry.Seq));

    public static string Text(JournalEntry entry) => $"{entry.Seq} {Wire.WireNames.Of(entry.Kind)} {entry.Id} {entry.KeyId}";
}
