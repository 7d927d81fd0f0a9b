using Checking;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Findings;
using Jobs.Queue;
using Kernel;
using Records.Faults;
using Records.Many;
using Storage;
using Visits.Judging;

namespace ComplianceApi.Api.Audits;

/// <summary>Receives a posted audit: answers a short one at once, and stores one that is to be judged later.</summary>
internal sealed class AuditReception(
    ComplianceEngine engine, ProfileStore profiles, EvaluationStore evaluations, HistoryStore histories, AuditIntake intake, AuditStore audits, Corrections corrections, DearPlaces places, TimeProvider clock)
{
    /// <summary>Most records that are answered at once.</summary>
    public const int MostRecordsAtOnce = 5000;

    /// <summary>Most bytes, unpacked, that are answered at once: 16 MiB.</summary>
    public const long MostBytesAtOnce = 16 * 1024 * 1024;

    /// <summary>Most bytes, unpacked, of any audit: 64 GiB.</summary>
    public const long MostBytes = 64L * 1024 * 1024 * 1024;

    private const int LongestKey = 200;

    /// <summary>Stores an audit that is to be judged later.</summary>
    public Task<IResult> StoreAsync(HttpRequest request, Tenant tenant, string? keyId, CancellationToken cancel) =>
        WithBodyAsync(request, MostBytes, new(ProblemKind.AuditTooLong, "An audit may have at most 64 GiB unpacked, and a packed body may not grow more than 500-fold."), body => StoreAsync(request, body, tenant, keyId, cancel));

    /// <summary>
    /// Answers a short one. All of it is read before the answer begins: some clients send everything before they read anything, and what is
    /// wrong with the whole can then still be said with a status.
    /// </summary>
    public Task<IResult> AnswerAsync(HttpRequest request, Tenant tenant, Include include, CancellationToken cancel) =>
        WithBodyAsync(request, MostBytesAtOnce, TooLongAtOnce, async body =>
        {
            await using var spool = await body.SpoolAsync(cancel);
            return await places.InPlaceAsync(tenant, () => JudgeAsync(spool, body.Format, tenant, include, cancel), cancel);
        });

    private static async Task<IResult> WithBodyAsync(HttpRequest request, long mostBytes, ProblemResult tooLong, Func<AuditBody, Task<IResult>> use)
    {
        ArgumentNullException.ThrowIfNull(request);
        await using var body = AuditBody.Open(request, mostBytes);
        if (body is null)
            return BodyType.Refusal(request, AuditBody.MediaTypes.Keys);

        try
        {
            return await use(body);
        }
        catch (BodyLimitException)
        {
            return tooLong;
        }
        catch (NoRoomException)
        {
            return new ProblemResult(ProblemKind.StoreUnavailable);
        }
        catch (ManyRecordsException unreadable)
        {
            return ProblemResult.Of(FaultKind.Unreadable, [unreadable.Fault]);
        }
        catch (InvalidDataException)
        {
            return UnpackedBody.Unreadable;
        }
    }

    private async Task<IResult> JudgeAsync(FileStream spool, RecordFormat format, Tenant tenant, Include include, CancellationToken cancel)
    {
        var read = 0L;
        var replaced = new List<Replacement>();
        await foreach (var line in ManyRecords.ReadAsync(spool, format, cancel))
        {
            if (++read > MostRecordsAtOnce)
                return TooLongAtOnce;
            replaced.AddRange(await corrections.OfAsync(tenant, line, cancel));
        }

        if (read == 0)
            return Empty;

        spool.Position = 0;
        var judge = new LineJudge(engine, profiles, evaluations, histories, tenant, clock.GetUtcNow()) { Detail = include == Include.All ? Detail.Everything : Detail.Problems };
        return await AuditAnswer.WriteAsync(ManyRecords.ReadAsync(spool, format, cancel), read, replaced, judge, include, cancel) is { } answer
            ? TypedResults.Stream(answer, RowStream.LinesMediaType)
            : AnswerTooLong;
    }

    private async Task<IResult> StoreAsync(HttpRequest request, AuditBody body, Tenant tenant, string? keyId, CancellationToken cancel)
    {
        var key = request.Headers["Idempotency-Key"].ToString() is { Length: > 0 } given ? given : null;
        if (key is { Length: > LongestKey } || key?.Any(char.IsControl) == true)
        {
            return new ProblemResult(ProblemKind.InvalidParameter, errors:
                [new() { Parameter = "Idempotency-Key", Code = "unknownValue", Detail = $"Expected at most {LongestKey} characters." }]);
        }

        var received = await intake.ReceiveAsync(tenant, key, body.ReadAsync(cancel), () => $"{body.Format} {body.Bytes.Hash()}", cancel, keyId);
        if (received.AuditId is { } auditId)
        {
            request.HttpContext.Response.Headers.RetryAfter = "1";
            return TypedResults.Accepted($"/v1/audits/{auditId}", await audits.FindAsync(tenant, auditId, cancel));
        }

        return received.Outcome switch
        {
            IntakeOutcome.Empty => Empty,
            IntakeOutcome.InFlight => new ProblemResult(ProblemKind.KeyInFlight),
            _ => new ProblemResult(ProblemKind.KeyReused),
        };
    }

    private static ProblemResult TooLongAtOnce => new(ProblemKind.AuditTooLong,
        $"At most {MostRecordsAtOnce} records and {MostBytesAtOnce / 1024 / 1024} MiB are answered at once. Post them to /v1/audits, where they are stored and judged later.");

    private static ProblemResult AnswerTooLong => new(ProblemKind.AuditTooLong,
        $"The answer would have more than {AuditAnswer.MostBytes / 1024 / 1024} MiB. Post the records to /v1/audits and read what was found by pages, or send fewer, or show less by include.");

    private static ProblemResult Empty => ProblemResult.Of(FaultKind.Invalid, [new Fault("#", "emptyAudit", "There is no record in the body.")]);
}
