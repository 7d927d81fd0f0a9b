using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;

namespace ComplianceApi.Api.Requests;

/// <summary>
/// Packs answers as Accept-Encoding allows, over TLS as well: no page holds a secret that somebody could guess at by the length of an answer.
/// Streams of rows go as they are, so that each row arrives when it is written.
/// </summary>
internal sealed class AnswerCompression(IServiceProvider services, IOptions<ResponseCompressionOptions> options) : ResponseCompressionProvider(services, options)
{
    private static readonly string[] MediaTypes =
    [
        "application/json", "application/problem+json", "application/linkset+json", "text/html", "text/plain", "text/css", "text/javascript", "text/calendar",
        "image/svg+xml", RowStream.LinesMediaType, RowStream.TableMediaType,
    ];

    /// <summary>In which ways an answer may be packed.</summary>
    public static readonly string[] Codings = ["br", "gzip"];

    public static void AddTo(IServiceCollection services)
    {
        services.AddResponseCompression(options => (options.EnableForHttps, options.MimeTypes) = (true, MediaTypes));
        services.AddSingleton<IResponseCompressionProvider, AnswerCompression>();
    }

    /// <inheritdoc />
    public override bool ShouldCompressResponse(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.GetEndpoint()?.Metadata.GetMetadata<StreamedMetadata>() is null && base.ShouldCompressResponse(context);
    }

    /// <summary>Adds it within what answers failures: what was half written when something failed is then thrown away, packed or not.</summary>
    public static void Use(WebApplication app)
    {
        app.UseResponseCompression();
        app.Use((context, next) =>
        {
            context.Response.OnStarting(() =>
            {
                // A strong tag names bytes, and these are others than those of the answer as it is (RFC 9110, section 8.8.3.3).
                var headers = context.Response.Headers;
                if (headers.ContentEncoding.ToString() is { Length: > 0 } coding && EntityTagHeaderValue.TryParse(headers.ETag.ToString(), out var tag) && !tag.IsWeak)
                    headers.ETag = Revalidation.Packed(tag, coding).ToString();
                return Task.CompletedTask;
            });
            return next(context);
        });
    }
}
