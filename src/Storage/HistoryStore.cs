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

    // One row of asked for each record. Of another maker's appliance with the same serial number the latest visit is enough. A record that the
    // record corrects says nothing beside it; one of the same record id and day is no earlier visit, and what it said is not forgotten.
    private const string SelectOf = $"""
        SELECT p.asked AS Asked, p.evaluation_id AS EvaluationId, p.facts AS Facts, p.kind AS Kind
        FROM (
            SELECT k.asked, k.evaluation_id, k.facts, k.kind, ROW_NUMBER() OVER (PARTITION BY k.asked, k.kind ORDER BY k.finished_at DESC, k.evaluation_id DESC) AS place
            FROM (
                SELECT a.asked, v.evaluation_id, v.facts, v.finished_at, CASE
                    WHEN v.record_id = a.record_id AND SUBSTR(v.finished_at, 1, 10) = SUBSTR(a.finished_at, 1, 10) THEN '{SameVisit}'
                    WHEN v.maker_key = a.maker_key THEN '{SameMaker}' ELSE '{OtherMaker}' END AS kind
                FROM asked a JOIN visits v ON v.tenant = @tenant AND v.serial_number = a.serial_number AND v.finished_at < a.next_day
                    AND (v.finished_at < a.finished_at OR v.record_id = a.record_id)
                WHERE v.known_at <= @knownAt AND (v.replaced_at IS NULL OR v.replaced_at > @knownAt) AND v.evaluation_id <> a.supersedes) k) p
        WHERE p.place <= CASE WHEN p.kind = '{OtherMaker}' THEN 1 ELSE @MostVisits END
        ORDER BY p.asked, p.kind DESC, p.place
        """;

    private const string OtherMaker = "anotherMaker";
    private const string SameMaker = "earlier";
    private const string SameVisit = "sameRecord";

    private readonly StoredVisits _visits = new(database);

    /// <summary>
    /// What had been said of earlier visits by the moment <paramref name="knownAt"/>, and of this very visit by other records, for each of some
    /// records, in their order: of what nothing had replaced by then, the latest first. One query for all.
    /// </summary>
    public async Task<IReadOnlyList<VisitsBefore>> FindAsync(
        Tenant tenant, IReadOnlyList<ServiceRecord> records, DateTimeOffset knownAt, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(records);
        var found = new VisitsBefore?[records.Count];
        var asked = records.Index().Where(place => VisitKey.IsAskedFor(place.Item)).ToList();
        if (asked.Count > 0)
        {
            var (sql, values) = CommandOf(asked);
            values.Add("tenant", tenant.Name);
            values.Add("knownAt", Database.TextOf(knownAt));
            values.Add("MostVisits", MostVisits);
            var rows = await database.ReadAsync(connection => connection.QueryAsync<Row>(new CommandDefinition(sql, values, cancellationToken: cancel)), cancel);
            foreach (var row in rows)
            {
                var before = found[row.Asked] ??= new VisitsBefore();
                var facts = await FactsOfAsync(tenant, row.EvaluationId, row.Facts, cancel);
                if (row.Kind is OtherMaker or SameMaker)
                    before.Add(facts);
                else if (IsSaidOf(records[row.Asked], facts))
                    before.Add(new EarlierAnswer { EvaluationId = facts.EvaluationId, FinishedAt = facts.FinishedAt, Dangers = facts.Dangers! });
            }
        }

        return [.. found.Select(visits => visits ?? VisitsBefore.None)];
    }

    // What the record replaces by name, it gave its reason for.
    private static bool IsSaidOf(ServiceRecord record, PastVisit said) =>
        said.Dangers is { Count: > 0 } && said.EvaluationId != record.Supersedes && VisitKey.OfMaker(said.Maker) == VisitKey.OfMaker(record.Appliance.Maker);

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
        var sql = new StringBuilder("WITH asked (asked, serial_number, maker_key, finished_at, next_day, record_id, supersedes) AS (VALUES ");
        foreach (var (number, (index, record)) in asked.Index())
        {
            sql.Append(CultureInfo.InvariantCulture, $"{(number == 0 ? "" : ", ")}({index}, @s{number}, @m{number}, @f{number}, @n{number}, @r{number}, @o{number})");
            Add('s', record.Appliance.SerialNumber!);
            Add('m', VisitKey.OfMaker(record.Appliance.Maker));
            Add('f', Database.TextOf(record.FinishedAt.Value));
            Add('n', Database.TextOf(DateOnly.FromDateTime(record.FinishedAt.Value.UtcDateTime).AddDays(1)));
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

        public required string Kind { get; init; }
    }
}

/// <summary>What had been said of the visits to an appliance when a record came.</summary>
public sealed class VisitsBefore
{
    /// <summary>Nothing.</summary>
    public static readonly VisitsBefore None = new();

    private readonly List<PastVisit> _earlier = [];
    private readonly List<EarlierAnswer> _saidBefore = [];

    /// <summary>Of earlier visits: those of its own maker first, the latest first.</summary>
    public IReadOnlyList<PastVisit> Earlier => _earlier;

    /// <summary>Of the same visit by other records, where a danger was named; the latest first.</summary>
    public IReadOnlyList<EarlierAnswer> SaidBefore => _saidBefore;

    internal void Add(PastVisit visit) => _earlier.Add(visit);

    internal void Add(EarlierAnswer answer) => _saidBefore.Add(answer);
}
