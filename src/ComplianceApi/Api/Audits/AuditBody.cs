using ComplianceApi.Api.Requests;
using Microsoft.AspNetCore.Http.Features;
using Records.Many;

namespace ComplianceApi.Api.Audits;

/// <summary>The body of a posted audit: what it is, and its bytes unpacked.</summary>
internal sealed class AuditBody : IAsyncDisposable
{
    /// <summary>The media types that are taken.</summary>
    public static readonly IReadOnlyDictionary<string, RecordFormat> MediaTypes = new Dictionary<string, RecordFormat>(StringComparer.OrdinalIgnoreCase)
    {
        ["application/x-ndjson"] = RecordFormat.Ndjson,
        ["application/json"] = RecordFormat.JsonArray,
        ["text/csv"] = RecordFormat.Csv,
    };

    private const int PartBytes = 64 * 1024;

    private readonly UnpackedBody _body;

    private AuditBody(RecordFormat format, HttpRequest request, long mostBytes) => (Format, _body) = (format, new UnpackedBody(request, mostBytes, isHashed: true));

    /// <summary>How the records are written.</summary>
    public RecordFormat Format { get; }

    /// <summary>The bytes, unpacked.</summary>
    public MeasuredStream Bytes => _body.Bytes;

    /// <summary>Opens the body; null when its type or encoding is not taken.</summary>
    public static AuditBody? Open(HttpRequest request, long mostBytes)
    {
        if (BodyType.Of(request) is not { } type || !MediaTypes.TryGetValue(type, out var format) || !BodyType.IsCodingTaken(request))
            return null;

        // The limit of the server is for a single record; here the reader sets its own.
        if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
            limit.MaxRequestBodySize = null;
        return new AuditBody(format, request, mostBytes);
    }

    /// <summary>The records as they arrive.</summary>
    public IAsyncEnumerable<RecordLine> ReadAsync(CancellationToken cancel) => ManyRecords.ReadAsync(Bytes, Format, cancel);

    /// <summary>The whole body in a file of its own that goes when it is closed.</summary>
    /// <exception cref="NoRoomException">It cannot be written.</exception>
    public async Task<FileStream> SpoolAsync(CancellationToken cancel)
    {
        var file = Spool.Create();
        try
        {
            var part = new byte[PartBytes];
            while (await Bytes.ReadAsync(part, cancel) is > 0 and var read)
                await Spool.WriteAsync(file, part.AsMemory(0, read), cancel);
            file.Position = 0;
            return file;
        }
        catch
        {
            await file.DisposeAsync();
            throw;
        }
    }

    /// <inheritdoc />
    public ValueTask DisposeAsync() => _body.DisposeAsync();
}
