using ComplianceApi.Api.Schemas;
using Microsoft.OpenApi;

namespace ComplianceApi.Api.Requests;

/// <summary>A query parameter: declared once, read strictly and documented from that one declaration.</summary>
public abstract class QueryParameter(string name, string description)
{
    /// <summary>Name in the query.</summary>
    public string Name { get; } = name;

    /// <summary>What it does, for a reader.</summary>
    public string Description { get; } = description;

    /// <summary>What is expected, as the end of a sentence.</summary>
    public required string Expected { get; init; }

    /// <summary>Its schema.</summary>
    public required OpenApiSchema Schema { get; init; }

    /// <summary>The enumeration whose values it takes, where it is one: the documents then name it, so that clients have one type for it.</summary>
    public Type? Enumeration { get; init; }

    /// <summary>The set of values that it takes where the rules bring them (see <see cref="ValueSets"/>); the documents then name it.</summary>
    public string? ValueSet { get; init; }

    /// <summary>Whether a value can be read from <paramref name="text"/>.</summary>
    public abstract bool Allows(string text);
}

/// <summary>Tries to read a value from a text.</summary>
public delegate bool TryRead<T>(string text, out T value);

/// <inheritdoc />
public sealed class QueryParameter<T>(string name, string description, T absent, TryRead<T> tryRead) : QueryParameter(name, description)
{
    /// <inheritdoc />
    public override bool Allows(string text) => tryRead(text, out _);

    /// <summary>The value in a request that <see cref="StrictQuery"/> has let through.</summary>
    public T Of(HttpRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return request.Query.TryGetValue(Name, out var text) && tryRead(text.ToString(), out var value) ? value : absent;
    }
}
