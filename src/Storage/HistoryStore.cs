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

    // One row of asked for each record. Of another maker's appliance with the same serial number the latest visit is enough. What the record
    // corrects says nothing beside it; one of the same record id and day is no earlier visit, and what it said is not forgotten. A word in place of a
    // serial number is on many boilers, so with it only the same premises count.
    private const string SelectOf = $"""
        SELECT p.asked AS Asked, p.evaluation_id AS EvaluationId, p.facts AS Facts, p.kind AS Kind, p.serial_number AS SerialNumber
        FROM (
            SELECT k.*, ROW_NUMBER() OVER (PARTITION BY k.asked, k.kind ORDER BY k.finished_at DESC, k.evaluation_id DESC) AS place
            FROM (
                SELECT a.asked, v.evaluation_id, v.facts, v.finished_at, v.serial_number, CASE WHEN v.maker_key = a.maker_key THEN '{SameMaker}' ELSE '{OtherMaker}' END AS kind
                FROM asked a JOIN visits v ON v.tenant = @tenant AND v.serial_number = a.serial_number AND v.finished_at < a.finished_at
                WHERE a.serial_number <> '' AND (a.is_numbered = 1 OR (a.premises <> '' AND v.premises_key = a.premises)) AND {Counts} AND NOT (v.record_id = a.record_id AND v.finished_at >= a.day)
                UNION ALL
                SELECT a.asked, v.evaluation_id, v.facts, v.finished_at, v.serial_number, '{SameVisit}' AS kind
                FROM asked a JOIN visits v ON v.tenant = @tenant AND v.record_id = a.record_id AND v.finished_at >= a.day AND v.finished_at < a.next_day
                WHERE {Counts}) k) p
        WHERE p.place <= CASE WHEN p.kind = '{OtherMaker}' THEN 1 ELSE @MostVisits END
        ORDER BY p.asked, p.kind DESC, p.place
        """;

    private const string Counts = "v.known_at <= @knownAt AND (v.replaced_at IS NULL OR v.replaced_at > @knownAt) AND v.evaluation_id <> a.supersedes";

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
        if (records.Count > 0)
        {
            var (sql, values) = CommandOf(records);
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
                else if (IsSaidOf(records[row.Asked], facts, row.SerialNumber))
                    before.Add(new EarlierAnswer { EvaluationId = facts.EvaluationId, FinishedAt = facts.FinishedAt, Dangers = facts.Dangers! });
            }
        }

        return [.. found.Select(visits => visits ?? VisitsBefore.None)];
    }

    // A record id may name a job with several boilers, and a home may have several: two serial numbers that differ are two boilers, and so are two makers
    // where a serial number is missing. What the record replaces by name, it gave its reason for.
    private static bool IsSaidOf(ServiceRecord record, PastVisit said, string serialNumber)
    {
        if (said.Dangers is not { Count: > 0 } || said.EvaluationId == record.Supersedes)
            return false;

        var (own, maker, theirMaker) = (VisitKey.OfPlate(record.Appliance.SerialNumber), VisitKey.OfName(record.Appliance.Maker), VisitKey.OfName(said.Maker));
        return own.Length > 0 && VisitKey.OfPlate(serialNumber) is { Length: > 0 } theirs ? own == theirs : maker.Length == 0 || theirMaker.Length == 0 || maker == theirMaker;
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

    internal static (string Sql, DynamicParameters Values) CommandOf(IReadOnlyList<ServiceRecord> records)
    {
        var values = new DynamicParameters();
        var sql = new StringBuilder("WITH asked (asked, serial_number, maker_key, finished_at, day, next_day, record_id, supersedes, premises, engineer, started_at, is_numbered) AS (VALUES ");
        foreach (var (number, record) in records.Index())
        {
            sql.Append(CultureInfo.InvariantCulture, $"{(number == 0 ? "" : ", ")}({number}, @s{number}, @m{number}, @f{number}, @d{number}, @n{number}, @r{number}, @o{number}, @p{number}, @e{number}, @t{number}, {(VisitKey.OfPlate(record.Appliance.SerialNumber).Length > 0 ? 1 : 0)})");
            var day = DateOnly.FromDateTime(record.FinishedAt.Value.UtcDateTime);
            Add('s', VisitKey.OfSerial(record.Appliance.SerialNumber));
            Add('m', VisitKey.OfName(record.Appliance.Maker));
            Add('f', Database.TextOf(record.FinishedAt.Value));
            Add('d', Database.TextOf(day));
            Add('n', Database.TextOf(day.AddDays(1)));
            Add('r', record.RecordId);
            Add('o', record.SupersedesBecause?.Reason == SupersedesReason.WrongAppliance ? "" : record.Supersedes ?? "");
            Add('p', VisitKey.OfName(record.Premises?.Reference));
            Add('e', VisitKey.OfName(record.Engineer?.LicenceNumber));
            Add('t', VisitKey.OfStart(record));
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

        public required string SerialNumber { get; init; }
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
    public IReadOnlyList<EarlierAnswer> SaidBefore => _saidBefore.Count < 2 ? _saidBefore : [.. _saidBefore.OrderByDescending(answer => answer.FinishedAt)];

    internal void Add(PastVisit visit) => _earlier.Add(visit);

    internal void Add(EarlierAnswer answer) => _saidBefore.Add(answer);
}
