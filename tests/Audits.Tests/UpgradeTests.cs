using System.Text.Json;
using Dapper;
using DbUp;
using Findings;
using Microsoft.Data.Sqlite;

namespace Audits.Tests;

/// <summary>A store of the version before audits, as it was made then.</summary>
public sealed class UpgradeTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public async Task What_an_older_store_holds_is_found_unchanged()
    {
        var evaluation = Scratch.Evaluation();
        var json = JsonSerializer.SerializeToUtf8Bytes(evaluation, EvaluationJson.Wire.Evaluation);
        Directory.CreateDirectory(Path.GetDirectoryName(_scratch.File)!);
        var connectionString = $"Data Source={_scratch.File};Pooling=False";
        Assert.True(DeployChanges.To.SqliteDatabase(connectionString)
            .WithScriptsEmbeddedInAssembly(typeof(Database).Assembly, name => name.StartsWith("0001", StringComparison.Ordinal))
            .WithVariable("blob", "BLOB").WithVariable("text", "TEXT").LogToNowhere().Build().PerformUpgrade().Successful);
        using (var connection = new SqliteConnection(connectionString))
        {
            connection.Execute(
                """
                INSERT INTO evaluations (tenant, evaluation_id, record_id, finished_at, evaluated_at, outcome, input_hash, result_hash, rule_set_version, shown, record, evaluation)
                VALUES ('a', @EvaluationId, 'R-1', '', '', 'pass', '', '', '', 'all', @Posted, @json)
                """,
                new { evaluation.EvaluationId, Scratch.Posted, json });
        }

        var found = await new EvaluationStore(_scratch.Open()).FindAsync(Scratch.A, evaluation.EvaluationId!, default);

        Assert.Equal(json, JsonSerializer.SerializeToUtf8Bytes(found!.Evaluation, EvaluationJson.Wire.Evaluation));
    }
}
