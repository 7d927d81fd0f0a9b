namespace ComplianceApi.Guard;

/// <summary>Marks a route that people open in a browser, which has no key to send: where none was shown, it is sent to where one is.</summary>
/// <param name="SignIn">Path of the page on which a key is shown.</param>
internal sealed record BrowserRoute(string SignIn)
{
    /// <summary>Sends the browser there, and afterwards back to where it wanted to go.</summary>
    public void SendToSignIn(HttpContext context)
    {
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = $"{SignIn}?to={Uri.EscapeDataString(context.Request.Path + context.Request.QueryString)}";
    }
}
