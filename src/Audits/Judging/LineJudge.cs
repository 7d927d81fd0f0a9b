using System.Collections.Concurrent;
using System.Data.Common;
using System.Text.Json;
using RuleEngine;
using RuleModel;
using ServiceRecords;

namespace Audits;

/// <summary>
/// Judges the records of one audit, as at its start: a profile saved later does not count, so that it does not matter when, where and
/// how often a record is judged.
/// </summary>
public sealed class LineJudge(ComplianceEngine engine, ProfileStore profiles, Tenant tenant, DateTimeOffset startedAt)
{
    private readonly ConcurrentDictionary<string, Task<ApplianceProfile?>> _profiles = new(StringComparer.Ordinal);

    /// <summary>From which day deadlines are seen: the day (UTC) on which the audit started.</summary>
    public DateOnly LookedAtOn { get; } = DateOnly.FromDateTime(startedAt.UtcDateTime);

    /// <summary>The evaluation of one record, or why there is none.</summary>
    /// <exception cref="DbException">The store does not answer: nothing is said of the record.</exception>
    public async Task<JudgedLine> JudgeAsync(RecordLine line, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(line);
        try
        {
            var read = line.Read();
            if (!read.IsRecord)
                return Rejected(line, LineProblem.Of(read.Kind.Value, read.Faults));

            var lookup = await LookUpAsync(read.Record.Appliance.ProfileId, cancel);
            if (lookup is null)
                return Rejected(line, LineProblem.Of(FaultKind.Invalid, [UnknownProfile]));

            var evaluation = engine.Evaluate(read.Record, lookup, lookedAtOn: LookedAtOn);
            return new JudgedLine(new AuditLine { Line = line.Number, RecordId = read.Record.RecordId, Evaluation = evaluation }, read.Record, line.Utf8);
        }
        catch (Exception fault) when (fault is not (DbException or OperationCanceledException))
        {
            return Rejected(line, LineProblem.Internal($"The record could not be judged ({fault.GetType().Name}); nothing can be concluded about it."));
        }
    }

    /// <summary>A record that is not judged.</summary>
    public static JudgedLine Rejected(RecordLine line, LineProblem problem)
    {
        ArgumentNullException.ThrowIfNull(line);
        return new JudgedLine(new AuditLine { Line = line.Number, RecordId = RecordIdOf(line.Utf8), Problem = problem }, null, line.Utf8);
    }

    private static Fault UnknownProfile { get; } = new("#/appliance/profileId", FaultCodes.UnknownReference, "There was no such appliance profile when the audit started.");

    private async Task<Lookup?> LookUpAsync(string? profileId, CancellationToken cancel)
    {
        if (profileId is null)
            return Lookup.None;

        var profile = await _profiles.GetOrAdd(profileId, id => profiles.FindAsync(tenant, id, version: null, cancel, asAt: startedAt));
        return profile is null ? null : new Lookup { ProfileId = profile.ProfileId, ProfileVersion = profile.Version, ProfileLimits = profile.Limits };
    }

    /// <summary>The id that a faulty record gives itself, so that its writer finds it; null when it cannot be told.</summary>
    private static string? RecordIdOf(ReadOnlyMemory<byte> utf8)
    {
        try
        {
            using var json = JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = RecordReader.MaxDepth, AllowDuplicateProperties = false });
            return json.RootElement.ValueKind == JsonValueKind.Object && json.RootElement.TryGetProperty("recordId", out var id)
                && id.ValueKind == JsonValueKind.String && id.GetString() is { Length: > 0 and <= 100 } text && !text.Any(char.IsControl) ? text : null;
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException)
        {
            return null;
        }
    }
}
