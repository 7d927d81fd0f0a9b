using Microsoft.AspNetCore.Http.Timeouts;

namespace ComplianceApi;

/// <summary>How long a request may take before it is answered with 504: <c>Requests:Seconds</c>, by default 30.</summary>
internal static class RequestTime
{
    /// <summary>Name of the policy, for routes that are answered at once.</summary>
    public const string Policy = "answeredAtOnce";

    public static void AddTo(IServiceCollection services, IConfiguration configuration) => services.AddRequestTimeouts(options =>
        options.AddPolicy(Policy, new RequestTimeoutPolicy { Timeout = TimeSpan.FromSeconds(configuration.GetValue("Requests:Seconds", 30.0)), TimeoutStatusCode = StatusCodes.Status504GatewayTimeout }));
}
