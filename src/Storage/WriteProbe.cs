using System.Data.Common;
using System.Diagnostics;
using System.Runtime.ExceptionServices;
using Dapper;

namespace Storage;

/// <summary>
/// Finds out whether a store takes what is written to it, by writing. Once a second at most: anybody may ask. While the last write of
/// anything failed, as much is written as the longest record has, so that a disk on which a short row finds room is not taken for well.
/// </summary>
internal sealed class WriteProbe(Database database) : IDisposable
{
    private const int Usual = 64 * 1024;
    private const int AfterFailure = 1024 * 1024;

    private const string Write = "UPDATE store_identity SET probe = @probe";

    private static readonly TimeSpan Fresh = TimeSpan.FromSeconds(1);

    private readonly SemaphoreSlim _one = new(1, 1);
    private long? _at;
    private DbException? _fault;

    /// <summary>Writes, or says what the last probe did.</summary>
    /// <exception cref="DbException">The store takes nothing.</exception>
    public async Task RunAsync(CancellationToken cancel)
    {
        await _one.WaitAsync(cancel);
        try
        {
            if (_at is not { } at || Stopwatch.GetElapsedTime(at) >= Fresh || (_fault is null && database.HasFailed))
                await WriteAsync(cancel);
            if (_fault is not null)
                ExceptionDispatchInfo.Throw(_fault);
        }
        finally
        {
            _one.Release();
        }
    }

    public void Dispose() => _one.Dispose();

    private async Task WriteAsync(CancellationToken cancel)
    {
        try
        {
            var probe = new byte[database.HasFailed ? AfterFailure : Usual];
            await database.WriteAsync(
                async transaction => await transaction.Connection!.ExecuteAsync(new CommandDefinition(Write, new { probe }, transaction, cancellationToken: cancel)) == 1, cancel);
            _fault = null;
        }
        catch (DbException fault)
        {
            _fault = fault;
        }

        _at = Stopwatch.GetTimestamp();
    }
}
