namespace ComplianceApi.Api.Requests;

/// <summary>Answers HEAD as GET: the same status and headers, and the server leaves the body out (RFC 9110, section 9.3.2).</summary>
internal static class HeadRequests
{
    /// <summary>Adds it in front of the routes, which know GET alone.</summary>
    public static void UseHead(this WebApplication app)
    {
        app.Use((context, next) =>
        {
            if (HttpMethods.IsHead(context.Request.Method))
                context.Request.Method = HttpMethods.Get;
            return next(context);
        });
        app.UseRouting();
    }
}
