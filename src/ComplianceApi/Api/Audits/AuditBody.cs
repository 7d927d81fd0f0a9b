using System.IO.Compression;
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

    /// <summary>In which codings a body may come.</summary>
    public static readonly IReadOnlyList<string> Codings = [Gzip, BodyType.Plain];

    private const string Gzip = "gzip";
    private const int PartBytes = 64 * 1024;

    private readonly MeasuredStream _arrived;
    private readonly GZipStream? _unpacking;

    private AuditBody(RecordFormat format, HttpRequest request, bool isPacked, long mostBytes)
    {
        Format = format;
        _arrived = new MeasuredStream(request.Body, long.MaxValue);
        _unpacking = isPacked ? new GZipStream(_arrived, CompressionMode.Decompress, leaveOpen: true) : null;
        Bytes = new MeasuredStream((Stream?)_unpacking ?? _arrived, mostBytes, isPacked ? _arrived : null);
    }

    /// <summary>How the records are written.</summary>
    public RecordFormat Format { get; }

    /// <summary>The bytes, unpacked.</summary>
    public MeasuredStream Bytes { get; }

    /// <summary>Opens the body; null when its type or encoding is not taken.</summary>
    public static AuditBody? Open(HttpRequest request, long mostBytes)
    {
        var coding = BodyType.CodingOf(request);
        if (BodyType.Of(request) is not { } type || !MediaTypes.TryGetValue(type, out var format) || !Codings.Contains(coding, StringComparer.Ordinal))
            return null;

        // The limit of the server is for a single record; here the reader sets its own.
        if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
            limit.MaxRequestBodySize = null;
        return new AuditBody(format, request, isPacked: coding == Gzip, mostBytes);
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
    public async ValueTask DisposeAsync()
    {
        await Bytes.DisposeAsync();
        if (_unpacking is not null)
            await _unpacking.DisposeAsync();
        await _arrived.DisposeAsync();
    }
}
