using System.Diagnostics;
using ComplianceApi.Problems;

namespace ComplianceApi.Pages;

/// <summary>Problems as somebody with a browser reads them: on a page, with what to do.</summary>
internal sealed class ProblemPages : IProblemPage
{
    private static readonly Dictionary<ProblemKind, (string Title, string ToDo)> ForReaders = new()
    {
        [ProblemKind.ScopeMissing] = ("Your key does not open this", "The key that this browser was let in with is not for this page. Sign out and show one that is, or ask whoever runs the service for one."),
        [ProblemKind.TooManyRequests] = ("That was too often", "More was asked for within a minute, with this key or from this address, than the service answers. Wait a minute, go back and try again."),
        [ProblemKind.ForwardedRequest] = ("This came through a proxy that is not known here", "Open the service by its own address. To use it through the proxy, whoever runs the service names the proxy in the setting Proxy:Trusted."),
        [ProblemKind.ForeignHost] = ("This service does not go by that name yet", "While it asks for no key it answers to localhost, 127.0.0.1 and [::1] only, on its own machine. Open it by one of these; under another name it answers once a key was made."),
    };

    /// <inheritdoc />
    public Task WriteAsync(HttpContext context, ProblemKind kind, int status, string? detail)
    {
        var (title, toDo) = ForReaders.TryGetValue(kind, out var words) ? words : (kind.Title, kind.Explanation);
        var trace = status >= StatusCodes.Status500InternalServerError ? $"The traceId is {Activity.Current?.TraceId.ToHexString() ?? context.TraceIdentifier}." : null;
        return PageRoutes.Show<MessagePage>(new { Title = title, Lines = new[] { detail, toDo, trace }.OfType<string>().ToArray() }, status).ExecuteAsync(context);
    }
}
