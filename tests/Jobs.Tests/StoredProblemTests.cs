using System.Text;
using System.Text.Json;
using Dapper;
using Storage;

namespace Jobs.Tests;

/// <summary>Why a record was not judged is kept as a word; where that word can be read up is for whoever answers to say.</summary>
public sealed class StoredProblemTests
{
    [Fact]
    public async Task What_is_stored_is_the_word_and_no_address()
    {
        using var bench = new AuditBench("sqlite");

        var (audit, _) = await OneRejectedAsync(bench);

        Assert.Equal("invalid-body", JsonDocument.Parse(await StoredAsync(bench, audit)).RootElement.GetProperty("problem").GetProperty("type").GetString());
    }

    /// <summary>The row as the service stored it up to the end of November 2026.</summary>
    [Fact]
    public async Task A_line_that_was_stored_with_the_address_is_read_as_the_same_word()
    {
        using var bench = new AuditBench("sqlite");
        var (audit, line) = await OneRejectedAsync(bench);
        var errors = JsonDocument.Parse(await StoredAsync(bench, audit)).RootElement.GetProperty("problem").GetProperty("errors").GetRawText();
        var earlier = $$$"""{"line":1,"recordId":"M-3","problem":{"type":"/problems/invalid-body","errors":{{{errors}}}}}""";
        await bench.Store.WriteAsync(
            async transaction => await transaction.Connection!.ExecuteAsync(
                "UPDATE audit_lines SET answer = @answer WHERE audit_id = @audit", new { audit, answer = Packed.Of(Encoding.UTF8.GetBytes(earlier)) }, transaction) == 1, default);

        var read = (await bench.Audits.LineAsync(Scratch.A, audit, 1, default))!.Value.Answer;

        Assert.Equal(("invalid-body", "M-3"), (read.Problem!.Type, read.RecordId));
        Assert.Equal(line.Problem!.Errors, read.Problem.Errors);
    }

    private static async Task<(string AuditId, AuditLine Line)> OneRejectedAsync(AuditBench bench)
    {
        var audit = await bench.Post(AuditBench.Month(3).Skip(2).Select(line => line with { Number = 1 }));
        await bench.WorkOff();
        return (audit, (await bench.Audits.LineAsync(Scratch.A, audit, 1, default))!.Value.Answer);
    }

    private static async Task<string> StoredAsync(AuditBench bench, string audit) => Encoding.UTF8.GetString(Packed.Open((await bench.Store.ReadAsync(
        connection => connection.QuerySingleAsync<byte[]>("SELECT answer FROM audit_lines WHERE audit_id = @audit", new { audit }), default))!));
}
