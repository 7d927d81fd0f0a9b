namespace Storage;

/// <summary>Whose data it is: part of the key of everything that is stored.</summary>
/// <param name="Name">Name of the tenant.</param>
public sealed record Tenant(string Name)
{
    /// <summary>The one tenant of a service that asks for no key.</summary>
    public static Tenant Local { get; } = new("local");
}
