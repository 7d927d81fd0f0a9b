using ComplianceApi.Configuration;
using Microsoft.AspNetCore.Http.Timeouts;

namespace ComplianceApi.Api.Requests;

/// <summary>How long a request may take before it is answered with 504: <c>Requests:Seconds</c>, by default 30. Routes that take or give as many records as there are say that they are exempt.</summary>
internal static class RequestTime
{
    public static void AddTo(IServiceCollection services, IConfiguration configuration)
    {
        var policy = new RequestTimeoutPolicy { Timeout = Longest(configuration), TimeoutStatusCode = StatusCodes.Status504GatewayTimeout };
        services.AddRequestTimeouts(options => options.DefaultPolicy = policy);
    }

    /// <summary>The time that a request may take.</summary>
    /// <exception cref="StartRefusedException">The setting is no number of seconds.</exception>
    public static TimeSpan Longest(IConfiguration configuration) => Settings.Seconds(configuration, SettingNames.RequestSeconds, 30);
}
