using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Jobs.Backfill;
using Jobs.Previews;
using Jobs.Queue;
using Jobs.Workers;
using Records.Many;
using Storage;

namespace Jobs.Tests;

/// <summary>All that an audit needs, on a store of either kind, with a clock that only the test moves.</summary>
internal sealed class AuditBench : IDisposable
{
    public static readonly TimeSpan Lease = TimeSpan.FromMinutes(1);

    private readonly Scratch _scratch = new();
    private readonly Database _database;

    public AuditBench(string kind)
    {
        _database = _scratch.Open(kind);
        Intake = new AuditIntake(_database, Clock);
        Audits = new AuditStore(_database, Clock);
        Findings = new FindingStore(_database);
        Results = ResultsOn(_database, Clock);
        Chunks = new WaitingChunks(_database, Clock, Lease);
        Worker = WorkerOn(_database);
        OpenAnother = () => _scratch.Open(kind);
        AnotherWorker = WorkerOn(OpenAnother());
    }

    public ManualClock Clock { get; } = new();

    /// <summary>For all tests: candidates compile once.</summary>
    public static CandidateEngines Candidates { get; } = new(Scratch.Rules);

    public Database Store => _database;

    /// <summary>Opens the store once more, as another instance would.</summary>
    public Func<Database> OpenAnother { get; }

    public AuditIntake Intake { get; }

    public AuditStore Audits { get; }

    public FindingStore Findings { get; }

    public ResultStore Results { get; }

    public WaitingChunks Chunks { get; }

    public AuditWorker Worker { get; }

    public AuditWorker AnotherWorker { get; }

    /// <summary>The example record with ids of its own: clean, with an advisory, dangerous, unusable in turn.</summary>
    public static IEnumerable<RecordLine> Month(int records) => Enumerable.Range(1, records).Select(number =>
    {
        var record = JsonNode.Parse(Scratch.Posted)!;
        record["recordId"] = $"M-{number}";
        record["appliance"]!["serialNumber"] = $"S-{number}";
        record["engineer"]!["licenceNumber"] = $"70000{number % 3}";
        record["combustion"]!["readings"]![0]!["coPpm"] = number % 5 == 1 ? 400 : number % 5 == 2 ? 2000 : 96;
        if (number % 5 == 3)
            record["appliance"]!["fuel"] = "coal";
        return new RecordLine(number, Encoding.UTF8.GetBytes(record.ToJsonString()));
    });

    public async Task<string> Post(IEnumerable<RecordLine> lines, string? key = null, string hash = "h")
    {
        var received = await Intake.ReceiveAsync(Scratch.A, key, lines.ToAsyncEnumerable(), () => hash, default);
        Assert.Equal(IntakeOutcome.Accepted, received.Outcome);
        return received.AuditId!;
    }

    public async Task WorkOff(params AuditWorker[] workers) => await Task.WhenAll((workers.Length > 0 ? workers : [Worker]).Select(worker => Task.Run(async () =>
    {
        while (await worker.RunOneAsync(default))
        {
        }
    })));

    public async Task<AuditStatus> Status(string auditId) => (await Audits.FindAsync(Scratch.A, auditId, default))!;

    /// <summary>Hash over every line, every row and the summary: all that an audit says.</summary>
    public async Task<string> HashOf(string auditId)
    {
        var all = new StringBuilder();
        foreach (var line in await Audits.LinesAsync(Scratch.A, auditId, default))
            all.AppendLine(JsonSerializer.Serialize(WithoutId(line), AuditJson.Wire.AuditLine));
        await foreach (var row in Findings.AllAsync(Scratch.A, auditId, AnyRow, default))
            all.AppendLine(JsonSerializer.Serialize(row, AuditJson.Wire.FindingRow));
        all.AppendLine(JsonSerializer.Serialize((await Status(auditId)).Summary!, AuditJson.Wire.AuditSummary));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all.ToString())));
    }

    private static AuditLine WithoutId(AuditLine line) => line.Evaluation is { } evaluation ? line with { Evaluation = evaluation with { EvaluationId = null } } : line;

    public static FindingQuery AnyRow { get; } = new(null, null, null, null, null, FindingSort.Line);

    public void Dispose() => _scratch.Dispose();

    /// <summary>A worker on a store.</summary>
    public static AuditWorker WorkerOn(Database database, TimeProvider clock)
    {
        var (profiles, results) = (new ProfileStore(database), ResultsOn(database, clock));
        return new(
            Scratch.Rules, profiles, new EvaluationStore(database, Scratch.Rules.Law), new HistoryStore(database, Scratch.Rules.Law), new WaitingChunks(database, clock, Lease), results, new AuditFinish(database, Scratch.Rules, clock), new Corrections(database),
            new PreviewWork(database, Candidates, profiles, results, new PreviewStore(database, new AuditStore(database, clock), clock)),
            new UnfinishedVisits(database, profiles, VisitsBy(clock)), new UnplacedLines(database), new UnplacedVisits(database), new UnjournaledEntries(database));
    }

    private static ResultStore ResultsOn(Database database, TimeProvider clock) => new(database, VisitsBy(clock));

    /// <summary>What makes visits of records.</summary>
    public static AuditVisits VisitsBy(TimeProvider clock) => new(Scratch.Rules, clock);

    private AuditWorker WorkerOn(Database database) => WorkerOn(database, Clock);
}
