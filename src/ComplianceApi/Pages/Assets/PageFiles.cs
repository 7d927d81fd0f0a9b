using System.Security.Cryptography;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using ComplianceApi.Problems;
using Microsoft.AspNetCore.Http.HttpResults;

namespace ComplianceApi.Pages.Assets;

/// <summary>Style, type and scripts of the pages: part of the program, so that a page needs nothing from anywhere else.</summary>
internal static class PageFiles
{
    private static readonly Dictionary<string, string> MediaTypes = new(StringComparer.Ordinal)
    {
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".svg"] = "image/svg+xml",
        [".woff2"] = "font/woff2",
    };

    private static readonly Dictionary<string, byte[]> Files = typeof(PageFiles).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith("assets/", StringComparison.Ordinal))
        .ToDictionary(name => name["assets/".Length..], Read, StringComparer.Ordinal);

    /// <summary>The style of a page that stands alone: nothing in it leads to another file.</summary>
    public static string WholeStyle { get; } = System.Text.Encoding.UTF8.GetString(Files["pages.css"])
        .Replace("/assets/text.woff2", $"data:font/woff2;base64,{Convert.ToBase64String(Files["text.woff2"])}", StringComparison.Ordinal);

    /// <summary>The hash by which a policy allows <see cref="WholeStyle"/> and no other.</summary>
    public static string WholeStyleHash { get; } = "sha256-" + Convert.ToBase64String(SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(WholeStyle)));

    public static void MapPageFiles(this IEndpointRouteBuilder app) => app.MapGet("/assets/{name}", Get).OpenToAll().Revalidated();

    private static Results<FileContentHttpResult, ProblemResult> Get(string name) => Files.TryGetValue(name, out var bytes)
        ? TypedResults.Bytes(bytes, MediaTypes[Path.GetExtension(name)])
        : ProblemResult.NotFound("There is no such file.");

    private static byte[] Read(string name)
    {
        using var stream = typeof(PageFiles).Assembly.GetManifestResourceStream(name)!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
