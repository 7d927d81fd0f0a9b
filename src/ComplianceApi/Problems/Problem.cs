using Records.Faults;

namespace ComplianceApi.Problems;

/// <summary>What went wrong with a request (RFC 9457). A verdict, whatever it says, is never a problem.</summary>
public sealed class Problem
{
    /// <summary>Stable URI of the kind of problem, relative to this service; it can be fetched and read.</summary>
    public required string Type { get; init; }

    /// <summary>What is wrong, the same for every occurrence.</summary>
    public required string Title { get; init; }

    /// <summary>HTTP status.</summary>
    public required int Status { get; init; }

    /// <summary>What is wrong this time, or what this kind of problem means and what to do.</summary>
    public required string Detail { get; init; }

    /// <summary>Path of the request.</summary>
    public required string Instance { get; init; }

    /// <summary>Id under which the service's log knows the request.</summary>
    public required string TraceId { get; init; }

    /// <summary>Every fault at once.</summary>
    public IReadOnlyList<ProblemError>? Errors { get; init; }
}

/// <summary>One fault of a request: of its body at <c>pointer</c>, or of the parameter <c>parameter</c>.</summary>
public sealed class ProblemError
{
    /// <summary>JSON Pointer into the body as a URI fragment, such as <c>#/combustion/readings/0/coPpm</c>; <c>#</c> is the whole body.</summary>
    public string? Pointer { get; init; }

    /// <summary>Name of the query or path parameter.</summary>
    public string? Parameter { get; init; }

    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>What is wrong and what was expected.</summary>
    public required string Detail { get; init; }

    /// <summary>A fault of the body.</summary>
    public static ProblemError Of(Fault fault) => new() { Pointer = fault.Pointer, Code = fault.Code, Detail = fault.Detail };
}
