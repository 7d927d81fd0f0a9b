using ComplianceApi.Problems;
using Storage.Keys;

namespace ComplianceApi.Guard;

/// <summary>
/// Says of routes who may call them. A route that says nothing needs the scope admin, so that a forgotten word closes and never opens.
/// </summary>
public static class Access
{
    /// <summary>Only a key with this scope may call the route.</summary>
    public static TBuilder Needs<TBuilder>(this TBuilder route, KeyScope scope) where TBuilder : IEndpointConventionBuilder =>
        route.WithMetadata(new AccessMetadata(scope, IsOpen: false)).Fails(ProblemKind.KeyNeeded, ProblemKind.ScopeMissing);

    /// <summary>Any key may call the route, whatever its scopes.</summary>
    public static TBuilder NeedsAnyKey<TBuilder>(this TBuilder route) where TBuilder : IEndpointConventionBuilder =>
        route.WithMetadata(new AccessMetadata(Scope: null, IsOpen: false)).Fails(ProblemKind.KeyNeeded);

    /// <summary>Anyone may call the route: it tells nothing of what is stored.</summary>
    public static TBuilder OpenToAll<TBuilder>(this TBuilder route) where TBuilder : IEndpointConventionBuilder =>
        route.WithMetadata(new AccessMetadata(Scope: null, IsOpen: true));

    /// <summary>Who may call an endpoint; of what is no endpoint nothing is told, so anyone.</summary>
    internal static AccessMetadata Of(Endpoint? endpoint) => endpoint is null ? AccessMetadata.Open : Of(endpoint.Metadata);

    /// <summary>What the metadata of a route says: the nearest to the route decides.</summary>
    internal static AccessMetadata Of(IEnumerable<object> metadata) => metadata.OfType<AccessMetadata>().LastOrDefault() ?? AccessMetadata.Closed;
}

/// <summary>Who may call a route.</summary>
/// <param name="Scope">The scope that a key must have; null: none in particular.</param>
/// <param name="IsOpen">Whether no key is needed.</param>
internal sealed record AccessMetadata(KeyScope? Scope, bool IsOpen)
{
    public static AccessMetadata Open { get; } = new(Scope: null, IsOpen: true);

    public static AccessMetadata Closed { get; } = new(KeyScope.Admin, IsOpen: false);
}
