using Storage;
using Storage.Keys;

namespace ComplianceApi.Guard;

/// <summary>Who makes the request, settled by the guard before a handler runs. One of it for each request.</summary>
public sealed class Caller
{
    private Tenant? _tenant;

    /// <summary>Whose data the request may see.</summary>
    /// <exception cref="InvalidOperationException">The guard has let nobody in.</exception>
    public Tenant Tenant => _tenant ?? throw new InvalidOperationException("The guard has let nobody in.");

    /// <summary>The key that the caller has shown; null where none is asked for, or none was right.</summary>
    public ApiKey? Key { get; private set; }

    /// <summary>Has the guard let somebody in?</summary>
    public bool IsIn => _tenant is not null;

    /// <summary>Adds it, and the tenant that handlers take.</summary>
    internal static void AddTo(IServiceCollection services)
    {
        services.AddScoped<Caller>();
        services.AddScoped(provider => provider.GetRequiredService<Caller>().Tenant);
    }

    /// <summary>May the caller do what a route does?</summary>
    internal bool May(AccessMetadata access) => access.IsOpen || (IsIn && (Key is null || access.Scope is not { } scope || Key.Allows(scope)));

    /// <summary>Lets in whoever calls a service that asks for no key.</summary>
    internal void EnterWithoutKey() => _tenant = Storage.Tenant.Local;

    /// <summary>Lets in the holder of a key.</summary>
    internal void Enter(ApiKey key) => (Key, _tenant) = (key, key.Tenant);
}
