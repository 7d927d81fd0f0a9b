using System.Data;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json;
using Dapper;
using Findings;
using Wire;

namespace Storage;

/// <summary>What falls due in a portfolio, by the latest record on each subject.</summary>
public sealed class DueStore(Database database)
{
    private const int PageOfAll = 500;

    private const string Counting = """
        FROM due_dates d
        WHERE d.tenant = @tenant AND (d.due_on >= @from OR (d.kind = 'beforeUse' AND d.due_on <> '')) AND d.due_on <= @to AND NOT EXISTS (
            SELECT 1 FROM due_dates n
            WHERE n.tenant = d.tenant AND n.kind = d.kind AND n.subject_key = d.subject_key AND (n.finished_at, n.evaluation_id) > (d.finished_at, d.evaluation_id))
        """;

    private const string SelectPage = $"""
        SELECT d.evaluation_id AS EvaluationId, d.detail AS Detail {Counting}
            AND (@afterDay IS NULL OR (d.due_on, d.kind, d.subject_key) > (@afterDay, @afterKind, @afterKey))
        ORDER BY d.due_on, d.kind, d.subject_key LIMIT @limit
        """;

    /// <summary>What falls due from one day to another, both included, and what is due before a boiler is used again since any day before, the earliest first; behind <paramref name="after"/>, at most <paramref name="limit"/>.</summary>
    public async Task<IReadOnlyList<DueDate>> PageAsync(Tenant tenant, DateOnly from, DateOnly to, DueCursor? after, int limit, CancellationToken cancel)
    {
        var asked = Asked(tenant, from, to);

        // PostgreSQL has to be told what an absent value would have been.
        asked.Add("afterDay", after is null ? null : Database.TextOf(after.By), DbType.String);
        asked.Add("afterKind", after is null ? null : WireNames.Of(after.Kind), DbType.String);
        asked.Add("afterKey", after?.Key, DbType.String);
        asked.Add("limit", limit);
        var rows = await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(SelectPage, asked, cancellationToken: cancel)), cancel);
        return [.. rows.Select(row => JsonSerializer.Deserialize(row.Detail, EvaluationJson.Wire.DueDate)! with { EvaluationId = row.EvaluationId })];
    }

    /// <summary>How much falls due.</summary>
    public Task<int> CountAsync(Tenant tenant, DateOnly from, DateOnly to, CancellationToken cancel) => database.ReadAsync(
        connection => connection.ExecuteScalarAsync<int>(new CommandDefinition($"SELECT COUNT(*) {Counting}", Asked(tenant, from, to), cancellationToken: cancel)), cancel);

    /// <summary>All of it, a page at a time.</summary>
    public async IAsyncEnumerable<DueDate> AllAsync(Tenant tenant, DateOnly from, DateOnly to, [EnumeratorCancellation] CancellationToken cancel)
    {
        DueCursor? after = null;
        while (true)
        {
            var page = await PageAsync(tenant, from, to, after, PageOfAll, cancel);
            foreach (var due in page)
                yield return due;
            if (page.Count < PageOfAll)
                yield break;
            after = DueCursor.Of(page[^1]);
        }
    }

    private static DynamicParameters Asked(Tenant tenant, DateOnly from, DateOnly to) => new(new { tenant = tenant.Name, from = Database.TextOf(from), to = Database.TextOf(to) });

    private sealed class Row
    {
        public required string EvaluationId { get; init; }

        public required string Detail { get; init; }
    }
}

/// <summary>A place in the list of what falls due.</summary>
/// <param name="By">The day.</param>
/// <param name="Kind">The kind.</param>
/// <param name="Key">The subject.</param>
public sealed record DueCursor(DateOnly By, DueKind Kind, string Key)
{
    /// <summary>The place of an item.</summary>
    public static DueCursor Of(DueDate due)
    {
        ArgumentNullException.ThrowIfNull(due);
        return new(due.By, due.Kind, due.Key);
    }

    /// <summary>As a text that means something only to this service.</summary>
    public string ToText() => Convert.ToBase64String(Encoding.UTF8.GetBytes($"{Database.TextOf(By)} {Kind} {Key}")).TrimEnd('=');

    /// <summary>Reads such a text.</summary>
    public static bool TryRead(string text, out DueCursor? cursor)
    {
        ArgumentNullException.ThrowIfNull(text);
        cursor = null;
        var bytes = new byte[text.Length];
        if (Convert.TryFromBase64String(text.PadRight((text.Length + 3) / 4 * 4, '='), bytes, out var length)
            && Encoding.UTF8.GetString(bytes, 0, length).Split(' ', 3) is [var day, var kindName, var key]
            && DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var by) && Enum.TryParse<DueKind>(kindName, out var kind))
            cursor = new DueCursor(by, kind, key);
        return cursor?.ToText() == text;
    }
}
