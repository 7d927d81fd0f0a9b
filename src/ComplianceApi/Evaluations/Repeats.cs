using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Audits;

namespace ComplianceApi;

/// <summary>
/// Lets a caller who got no answer post again without making a second evaluation: the same key with the same request gives the first
/// one's evaluation, also after a crash between judging and answering.
/// </summary>
public sealed class Repeats(IdempotencyStore keys, EvaluationStore evaluations, TimeProvider clock)
{
    private readonly ConcurrentDictionary<(string Tenant, string Key), bool> _inFlight = new();

    /// <summary>Begins a request with a key: it may be judged, was judged, or is refused.</summary>
    public async Task<Repeat> BeginAsync(Tenant tenant, string key, string query, ReadOnlyMemory<byte> body, CancellationToken cancel)
    {
        var place = (tenant.Name, key);
        if (!_inFlight.TryAdd(place, true))
            return new Repeat(() => { }) { Problem = new ProblemResult(ProblemKind.KeyInFlight) };

        void End() => _inFlight.TryRemove(place, out _);
        try
        {
            var asked = new KeyedRequest(FingerprintOf(query, body), Guid.CreateVersion7(clock.GetUtcNow()).ToString());
            if (await keys.FindAsync(tenant, key, cancel) is { } earlier)
            {
                if (await evaluations.FindAsync(tenant, earlier.EvaluationId, cancel) is { } stored)
                {
                    return earlier.Fingerprint == asked.Fingerprint
                        ? new Repeat(End) { Stored = stored }
                        : new Repeat(End) { Problem = new ProblemResult(ProblemKind.KeyReused) };
                }
            }

            await keys.SaveAsync(tenant, key, asked, cancel);
            return new Repeat(End) { EvaluationId = asked.EvaluationId };
        }
        catch
        {
            End();
            throw;
        }
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
public sealed class Repeat(Action end) : IDisposable
{
    /// <summary>Why it is refused.</summary>
    public ProblemResult? Problem { get; init; }

    /// <summary>The evaluation that an earlier request with this key made.</summary>
    public StoredEvaluation? Stored { get; init; }

    /// <summary>The id that its evaluation is to have.</summary>
    public string? EvaluationId { get; init; }

    /// <inheritdoc />
    public void Dispose() => end();
}
