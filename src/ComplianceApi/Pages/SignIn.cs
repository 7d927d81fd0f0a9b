using ComplianceApi.Guard;
using Microsoft.AspNetCore.Http.HttpResults;

namespace ComplianceApi.Pages;

/// <summary>Where somebody with a browser shows a key, once.</summary>
internal static class SignIn
{
    /// <summary>Path of the page.</summary>
    public const string Path = "/sign-in";

    private const int LongestForm = 2000;

    private const string Wrong = "That is no key of this service. Copy the whole of it, with the dot in it, and try again.";
    private const string Ended = "This key has expired or was taken out of use. Ask whoever runs the service for a new one.";

    /// <summary>Maps the routes. They are for browsers and stand in no document.</summary>
    public static void MapSignIn(this IEndpointRouteBuilder app)
    {
        var pages = app.MapGroup("").OpenToAll().ForBrowsers().NeverCached().ExcludeFromDescription();
        pages.MapGet(Path, (HttpRequest request) => Form(request.Query["to"].ToString()));
        pages.MapPost(Path, EnterAsync);
        pages.MapPost("/sign-out", LeaveAsync);
    }

    private static async Task<IResult> EnterAsync(HttpContext context, KeyRing ring, PageSessions sessions)
    {
        if (!PageSessions.IsOwn(context.Request))
            return NotFromHere();
        if (!context.Request.HasFormContentType || context.Request.ContentLength is not (> 0 and <= LongestForm))
            return Refusal("This form cannot be read", "It is empty, too long or no form at all. Open the page on which to sign in and fill its form in.");

        var form = await context.Request.ReadFormAsync(context.RequestAborted);
        var to = form["to"].ToString();
        var key = await ring.FindAnyAsync(form["key"].ToString().Trim(), context.RequestAborted);
        if (key is null || !ring.IsLive(key))
            return Form(to, key is null ? Wrong : Ended);

        await sessions.BeginAsync(context, key);
        return new SeeOther(IsPlaceHere(to) ? to : "/");
    }

    private static async Task<IResult> LeaveAsync(HttpContext context, PageSessions sessions)
    {
        if (!PageSessions.IsOwn(context.Request))
            return NotFromHere();

        await sessions.EndAsync(context);
        return new SeeOther(Path);
    }

    /// <summary>A place of this service: anything else would let a link lead from here to a page that only looks like it.</summary>
    private static bool IsPlaceHere(string to) => to is ['/', ..] and not (['/', '/' or '\\', ..]) && !to.Any(char.IsControl);

    private static RazorComponentResult Form(string to, string? refusal = null) =>
        PageRoutes.Show<SignInPage>(new { To = to, Refusal = refusal }, refusal is null ? StatusCodes.Status200OK : StatusCodes.Status401Unauthorized);

    private static RazorComponentResult NotFromHere() => Refusal(
        "This form is not from here",
        "It was sent by a page of another site, or the browser does not say by which, so nothing was done: nobody was signed in or out. Open this service by its own address and use the form there.",
        "If that is what you did, a proxy hides the address: whoever runs the service has the proxy pass on the Host header, and names it in the setting Proxy:Trusted.");

    private static RazorComponentResult Refusal(string title, params string[] lines) => PageRoutes.Show<MessagePage>(new { Title = title, Lines = lines }, StatusCodes.Status400BadRequest);

    /// <summary>The place that comes next is read, not posted to.</summary>
    private sealed class SeeOther(string place) : IResult
    {
        public Task ExecuteAsync(HttpContext httpContext)
        {
            httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
            httpContext.Response.Headers.Location = place;
            return Task.CompletedTask;
        }
    }
}
