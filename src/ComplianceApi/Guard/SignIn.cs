using Microsoft.AspNetCore.Http.HttpResults;

namespace ComplianceApi;

/// <summary>Where somebody with a browser shows a key, once.</summary>
internal static class SignIn
{
    private const string Path = "/sign-in";
    private const int LongestForm = 2000;

    /// <summary>Maps the routes. They are for browsers and stand in no document.</summary>
    public static void MapSignIn(this IEndpointRouteBuilder app)
    {
        var pages = app.MapGroup("").OpenToAll().WithMetadata(new PageMetadata()).NeverCached().ExcludeFromDescription();
        pages.MapGet(Path, (HttpRequest request) => Form(request.Query["to"].ToString(), isWrong: false));
        pages.MapPost(Path, EnterAsync);
        pages.MapPost("/sign-out", LeaveAsync);
    }

    /// <summary>Sends a browser here, and afterwards back to where it wanted to go.</summary>
    public static void Show(HttpContext context)
    {
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = $"{Path}?to={Uri.EscapeDataString(context.Request.Path + context.Request.QueryString)}";
    }

    private static async Task<IResult> EnterAsync(HttpContext context, KeyRing ring, PageSessions sessions)
    {
        if (!PageSessions.IsOwn(context.Request) || !context.Request.HasFormContentType || context.Request.ContentLength is not (> 0 and <= LongestForm))
            return new ProblemResult(ProblemKind.BadRequest);

        var form = await context.Request.ReadFormAsync(context.RequestAborted);
        var to = form["to"].ToString();
        if (await ring.FindAsync(form["key"].ToString().Trim(), context.RequestAborted) is not { } key)
            return Form(to, isWrong: true);

        await sessions.BeginAsync(context, key);
        return new SeeOther(IsPlaceHere(to) ? to : "/");
    }

    private static async Task<IResult> LeaveAsync(HttpContext context, PageSessions sessions)
    {
        if (!PageSessions.IsOwn(context.Request))
            return new ProblemResult(ProblemKind.BadRequest);

        await sessions.EndAsync(context);
        return new SeeOther(Path);
    }

    /// <summary>A place of this service: anything else would let a link lead from here to a page that only looks like it.</summary>
    private static bool IsPlaceHere(string to) => to is ['/', ..] and not (['/', '/' or '\\', ..]) && !to.Any(char.IsControl);

    private static RazorComponentResult Form(string to, bool isWrong) =>
        PageRoutes.Show<SignInPage>(new { To = to, IsWrong = isWrong }, isWrong ? StatusCodes.Status401Unauthorized : StatusCodes.Status200OK);

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
