using System.Data.Common;
using System.Security.Cryptography;
using System.Text;
using ComplianceApi.Problems;
using Storage;

namespace ComplianceApi.Api.Evaluations;

/// <summary>
/// Lets a caller who got no answer post again without making a second evaluation, at whichever instance: the same key with the same
/// request gives the first one's evaluation, also after a crash between judging and answering.
/// </summary>
public sealed class Repeats(IdempotencyStore keys, EvaluationStore evaluations, TimeProvider clock)
{
    /// <summary>Begins a request with a key: it may be judged, was judged, or is refused.</summary>
    public async Task<Repeat> BeginAsync(Tenant tenant, string key, string query, ReadOnlyMemory<byte> body, CancellationToken cancel)
    {
        var asked = new KeyedRequest(key, FingerprintOf(query, body), Guid.CreateVersion7(clock.GetUtcNow()).ToString());
        while (await keys.TakeAsync(tenant, asked, cancel) is { } holder)
        {
            if (!holder.IsSettled)
                return new Repeat { Problem = new ProblemResult(ProblemKind.KeyInFlight) };

            if (await evaluations.FindAsync(tenant, holder.EvaluationId, cancel) is { } stored)
                return holder.Fingerprint == asked.Fingerprint ? new Repeat { Stored = stored } : new Repeat { Problem = new ProblemResult(ProblemKind.KeyReused) };

            await keys.ForgetAsync(tenant, key, holder, cancel);
        }

        return new Repeat(() => keys.ReleaseAsync(tenant, asked, CancellationToken.None)) { Keyed = asked };
    }

    private static string FingerprintOf(string query, ReadOnlyMemory<byte> body)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes(query + "\n"));
        hash.AppendData(body.Span);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}

/// <summary>A request with a key, from its arrival to its answer.</summary>
/// <param name="release">Gives the key up, unless its evaluation was stored; null where it is not this request's.</param>
public sealed class Repeat(Func<Task>? release = null) : IAsyncDisposable
{
    /// <summary>Why it is refused.</summary>
    public ProblemResult? Problem { get; init; }

    /// <summary>The evaluation that an earlier request with this key made.</summary>
    public StoredEvaluation? Stored { get; init; }

    /// <summary>The key, and the id that its evaluation is to have; the evaluation is to be stored with it.</summary>
    public KeyedRequest? Keyed { get; init; }

    /// <summary>Was the evaluation stored with it?</summary>
    public bool IsStored { get; set; }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        try
        {
            await (IsStored || release is null ? Task.CompletedTask : release());
        }
        catch (DbException)
        {
            // Without its store nothing can be given up; the lease ends by itself.
        }
    }
}
