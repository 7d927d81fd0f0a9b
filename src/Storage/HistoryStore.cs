using System.Globalization;
using System.Text;
using System.Text.Json;
using Dapper;
using Findings;
using Records;
using Visits.Facts;

namespace Storage;

/// <summary>Earlier visits to the appliance of a record, out of all that is stored.</summary>
public sealed class HistoryStore(Database database, IRecordLaw law)
{
    /// <summary>Most earlier visits that are looked at.</summary>
    public const int MostVisits = 12;

    // One row of asked for each record; the same visit asked about again, and the one that the record corrects, are no earlier visits.
    // Of another maker's appliance with the same serial number the latest visit is enough.
    private const string SelectOf = """
        SELECT p.asked AS Asked, p.evaluation_id AS EvaluationId, p.facts AS Facts
        FROM (
            SELECT a.asked, v.evaluation_id, v.facts, CASE WHEN v.maker_key = a.maker_key THEN 1 ELSE 0 END AS is_same,
                ROW_NUMBER() OVER (PARTITION BY a.asked, v.maker_key = a.maker_key ORDER BY v.finished_at DESC, v.evaluation_id DESC) AS place
            FROM asked a JOIN visits v ON v.tenant = @tenant AND v.serial_number = a.serial_number AND v.finished_at < a.finished_at
            WHERE v.known_at <= @knownAt AND (v.replaced_at IS NULL OR v.replaced_at > @knownAt)
                AND NOT (v.record_id = a.record_id AND SUBSTR(v.finished_at, 1, 10) = SUBSTR(a.finished_at, 1, 10))
                AND v.evaluation_id <> a.supersedes) p
        WHERE p.place <= CASE WHEN p.is_same = 1 THEN @MostVisits ELSE 1 END
        ORDER BY p.asked, p.is_same DESC, p.place
        """;

    private readonly StoredVisits _visits = new(database);

    /// <summary>
    /// What had been said of earlier visits by the moment <paramref name="knownAt"/>, for each of some records, in their order: of visits
    /// with an earlier finish that nothing had replaced by then, the latest first. One query for all.
    /// </summary>
    public async Task<IReadOnlyList<IReadOnlyList<PastVisit>>> FindAsync(
        Tenant tenant, IReadOnlyList<ServiceRecord> records, DateTimeOffset knownAt, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(records);
        var found = new List<PastVisit>?[records.Count];
        var asked = records.Index().Where(place => VisitKey.IsAskedFor(place.Item)).ToList();
        if (asked.Count > 0)
        {
            var (sql, values) = CommandOf(asked);
            values.Add("tenant", tenant.Name);
            values.Add("knownAt", Database.TextOf(knownAt));
            values.Add("MostVisits", MostVisits);
            var rows = await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(sql, values, cancellationToken: cancel)), cancel);
            foreach (var row in rows)
                (found[row.Asked] ??= []).Add(await FactsOfAsync(tenant, row.EvaluationId, row.Facts, cancel));
        }

        return [.. found.Select(visits => visits ?? [])];
    }

    /// <summary>The facts of a stored visit.</summary>
    internal async Task<PastVisit> FactsOfAsync(Tenant tenant, string evaluationId, byte[]? facts, CancellationToken cancel)
    {
        if (facts is not null)
            return JsonSerializer.Deserialize(Packed.Open(facts), EvaluationJson.Wire.PastVisit)! with { EvaluationId = evaluationId };

        var whole = (await _visits.FindAsync(tenant, [evaluationId], cancel))[evaluationId];
        var record = whole.ReadRecord() ?? throw new InvalidDataException($"The record of evaluation {evaluationId} cannot be read.");
        return VisitFacts.Of(record, whole.ReadEvaluation(), law) with { EvaluationId = evaluationId };
    }

    internal static (string Sql, DynamicParameters Values) CommandOf(List<(int Index, ServiceRecord Record)> asked)
    {
        var values = new DynamicParameters();
        var sql = new StringBuilder("WITH asked (asked, serial_number, maker_key, finished_at, record_id, supersedes) AS (VALUES ");
        foreach (var (number, (index, record)) in asked.Index())
        {
            sql.Append(CultureInfo.InvariantCulture, $"{(number == 0 ? "" : ", ")}({index}, @s{number}, @m{number}, @f{number}, @r{number}, @o{number})");
            Add('s', record.Appliance.SerialNumber!);
            Add('m', VisitKey.OfMaker(record.Appliance.Maker));
            Add('f', Database.TextOf(record.FinishedAt.Value));
            Add('r', record.RecordId);
            Add('o', record.SupersedesBecause?.Reason == SupersedesReason.WrongAppliance ? "" : record.Supersedes ?? "");
            void Add(char name, string value) => values.Add(string.Create(CultureInfo.InvariantCulture, $"{name}{number}"), value);
        }

        return (sql.Append(") ").Append(SelectOf).ToString(), values);
    }

    private sealed class Row
    {
        public required int Asked { get; init; }

        public required string EvaluationId { get; init; }

        public byte[]? Facts { get; init; }
    }
}
