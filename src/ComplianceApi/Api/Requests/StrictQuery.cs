using ComplianceApi.Problems;

namespace ComplianceApi.Api.Requests;

/// <summary>
/// Refuses a query with anything in it that the route does not know: a mistyped <c>store=flase</c> must not end as a stored record.
/// </summary>
public static class StrictQuery
{
    /// <summary>Declares the parameters of a route.</summary>
    public static RouteHandlerBuilder Takes(this RouteHandlerBuilder route, params QueryParameter[] parameters) =>
        route.WithMetadata(new QueryParameters(parameters));

    /// <summary>Checks the query of every route in the group before its handler runs.</summary>
    public static RouteGroupBuilder WithStrictQuery(this RouteGroupBuilder group)
    {
        group.AddEndpointFilter(async (context, next) => FaultsOf(context.HttpContext) is { Count: > 0 } faults
            ? new ProblemResult(ProblemKind.InvalidParameter, errors: faults)
            : await next(context));
        return group.Fails(ProblemKind.InvalidParameter);
    }

    internal static List<ProblemError> FaultsOf(HttpContext context)
    {
        var known = context.GetEndpoint()?.Metadata.GetMetadata<QueryParameters>()?.All ?? [];
        var faults = new List<ProblemError>();
        foreach (var (name, values) in context.Request.Query)
        {
            var parameter = Array.Find(known, candidate => candidate.Name == name);
            if (parameter is null)
                Add(name, "unknownParameter", known.Length == 0 ? "This route takes no parameter." : $"This route takes only {string.Join(", ", known.Select(k => k.Name))}.");
            else if (values.Count != 1)
                Add(name, "duplicateParameter", "The parameter is given more than once.");
            else if (!parameter.Allows(values.ToString()))
                Add(name, "unknownValue", $"Expected {parameter.Expected}.");
        }

        return faults;

        void Add(string name, string code, string detail) => faults.Add(new ProblemError { Parameter = name, Code = code, Detail = detail });
    }
}

/// <summary>The query parameters that a route takes.</summary>
/// <param name="All">All of them.</param>
public sealed record QueryParameters(QueryParameter[] All);
