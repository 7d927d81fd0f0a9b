using Audits;

namespace ComplianceApi;

/// <summary>Who makes the request, settled by the guard before a handler runs. One of it for each request.</summary>
public sealed class Caller
{
    private Tenant? _tenant;

    /// <summary>Whose data the request may see.</summary>
    /// <exception cref="InvalidOperationException">The guard has let nobody in.</exception>
    public Tenant Tenant => _tenant ?? throw new InvalidOperationException("The guard has let nobody in.");

    /// <summary>Adds it, and the tenant that handlers take.</summary>
    internal static void AddTo(IServiceCollection services)
    {
        services.AddScoped<Caller>();
        services.AddScoped(provider => provider.GetRequiredService<Caller>().Tenant);
    }

    /// <summary>Lets the caller in.</summary>
    internal void EnterAs(Tenant tenant) => _tenant = tenant;
}
