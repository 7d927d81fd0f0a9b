using Findings;
using Kernel.Catalogues;
using Records;
using Records.Values;
using Rules;
using Visits;
using Visits.Judging;

namespace Storage.Tests.Shared;

/// <summary>A store in a folder of its own, thrown away afterwards, and records to put into it.</summary>
internal sealed class Scratch : IDisposable
{
    private static readonly ComplianceEngine Engine = ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly));
    private static readonly DateTimeOffset Start = new(2026, 9, 14, 10, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("store-");
    private readonly List<Database> _open = [];
    private string? _connectionString;

    public static Tenant A { get; } = new("a");

    public static Tenant B { get; } = new("b");

    public static byte[] Posted => Engine.Catalogue.ExampleRecord;

    public string File => Path.Combine(_folder.FullName, "deep", "compliance.db");

    /// <summary>Opens the store of this test, of either kind; every call opens it anew.</summary>
    public Database Open(string kind = "sqlite")
    {
        var database = kind == "sqlite" ? Database.Open(File, StoreOpening.OrMake) : Database.OpenPostgreSql(_connectionString ??= PrivatePostgreSql.NewDatabase(), StoreOpening.OrMake);
        _open.Add(database);
        return database;
    }

    public static ComplianceEngine Rules => Engine;

    /// <summary>Another evaluation of the example record, the <paramref name="number"/>th minute after the first.</summary>
    public static Evaluation Evaluation(int number = 0)
    {
        var moment = Start.AddMinutes(number);
        return Engine.Evaluate(Record()) with { EvaluationId = Guid.CreateVersion7(moment).ToString(), EvaluatedAt = moment };
    }

    public static ServiceRecord Record(string? supersedes = null, string recordId = "R-1") => new()
    {
        RecordId = recordId,
        Supersedes = supersedes,
        JobType = JobType.AnnualService,
        Jurisdiction = "GB-ENG",
        FinishedAt = Timestamp.Parse("2026-09-14T10:25:00+01:00"),
        Appliance = new Appliance { Fuel = Fuel.NaturalGas, Maker = "Quillback", SerialNumber = "QB-1" },
    };

    public void Dispose()
    {
        foreach (var database in _open)
            database.Dispose();
        _folder.Delete(recursive: true);
    }
}
