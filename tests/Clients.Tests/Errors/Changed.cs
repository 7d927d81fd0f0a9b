/// <summary>Changes each request on its way.</summary>
internal sealed class Changed(Action<HttpRequestMessage> change) : DelegatingHandler
{
    protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        change(request);
        return base.SendAsync(request, cancellationToken);
    }
}
