using System.Data.Common;
using System.Text.Json;
using Dapper;
using Findings;
using RuleModel;
using ServiceRecords;

namespace Audits;

/// <summary>Keeps the history of appliances along with the evaluations.</summary>
internal sealed class VisitRows
{
    private const string ReplaceSuperseded = """
        UPDATE visits SET replaced_at = @knownAt WHERE tenant = @tenant AND evaluation_id = @supersedes AND replaced_at IS NULL
        """;

    private const string ReplaceSame = """
        UPDATE visits SET replaced_at = @knownAt
        WHERE tenant = @tenant AND serial_number = @serialNumber AND maker_key = @makerKey AND record_id = @recordId AND replaced_at IS NULL
            AND finished_at >= @day AND finished_at < @dayAfter
        """;

    private const string Insert = """
        INSERT INTO visits (tenant, evaluation_id, serial_number, maker_key, finished_at, record_id, known_at, facts)
        VALUES (@tenant, @evaluationId, @serialNumber, @makerKey, @finishedAt, @recordId, @knownAt, @facts)
        """;

    private const string DropDueOfSuperseded = "DELETE FROM due_dates WHERE tenant = @tenant AND evaluation_id = @supersedes";

    private const string DropDueOfSame = """
        DELETE FROM due_dates WHERE tenant = @tenant AND evaluation_id IN (
            SELECT evaluation_id FROM visits
            WHERE tenant = @tenant AND serial_number = @serialNumber AND maker_key = @makerKey AND record_id = @recordId AND replaced_at IS NOT NULL
                AND finished_at >= @day AND finished_at < @dayAfter)
        """;

    private static readonly string[] DueColumns = ["tenant", "evaluation_id", "kind", "subject_key", "finished_at", "due_on", "detail"];

    private readonly object _row;
    private readonly List<object?[]> _due;
    private readonly bool _hasSerial;
    private readonly bool _supersedes;

    /// <summary>Makes the rows, outside of any transaction.</summary>
    public VisitRows(Tenant tenant, ServiceRecord record, Evaluation evaluation, IReadOnlyList<DueDate> due)
    {
        var day = record.FinishedAt.Value.UtcDateTime.Date;
        _hasSerial = !string.IsNullOrWhiteSpace(record.Appliance.SerialNumber);
        _supersedes = record.Supersedes is not null;
        _due = [.. due.Select(one => Row(tenant, record, evaluation, one))];
        _row = new
        {
            tenant = tenant.Name,
            evaluationId = evaluation.EvaluationId,
            supersedes = record.Supersedes,
            serialNumber = record.Appliance.SerialNumber,
            makerKey = VisitKey.OfMaker(record.Appliance.Maker),
            finishedAt = Database.TextOf(record.FinishedAt.Value),
            day = Database.TextOf(new DateTimeOffset(day, TimeSpan.Zero)),
            dayAfter = Database.TextOf(new DateTimeOffset(day, TimeSpan.Zero).AddDays(1)),
            recordId = record.RecordId,
            knownAt = Database.TextOf(evaluation.EvaluatedAt!.Value),
            facts = _hasSerial ? Packed.Of(JsonSerializer.SerializeToUtf8Bytes(VisitFacts.Of(record, evaluation), EvaluationJson.Wire.PastVisit)) : null,
        };
    }

    private static object?[] Row(Tenant tenant, ServiceRecord record, Evaluation evaluation, DueDate due) =>
    [
        tenant.Name, evaluation.EvaluationId, WireNames.Of(due.Kind), due.Key, Database.TextOf(record.FinishedAt.Value), Database.TextOf(due.By),
        JsonSerializer.Serialize(due, EvaluationJson.Wire.DueDate),
    ];

    /// <summary>Writes them.</summary>
    public async Task WriteAsync(DbTransaction transaction, CancellationToken cancel)
    {
        Task<int> Execute(string sql) => transaction.Connection!.ExecuteAsync(new CommandDefinition(sql, _row, transaction, cancellationToken: cancel));
        if (_supersedes)
        {
            await Execute(ReplaceSuperseded);
            await Execute(DropDueOfSuperseded);
        }

        if (_hasSerial)
        {
            if (await Execute(ReplaceSame) > 0)
                await Execute(DropDueOfSame);
            await Execute(Insert);
        }

        await transaction.InsertAsync("due_dates", DueColumns, _due, cancel);
    }
}
