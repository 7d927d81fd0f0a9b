namespace ComplianceApi.Problems;

/// <summary>Metadata of a route whose problems are read by people: how they are shown there. Other routes answer with JSON.</summary>
internal interface IProblemPage
{
    /// <summary>Writes the answer.</summary>
    /// <param name="context">The request.</param>
    /// <param name="kind">What is wrong.</param>
    /// <param name="status">HTTP status, which may be finer than the kind's own.</param>
    /// <param name="detail">What is wrong this time.</param>
    Task WriteAsync(HttpContext context, ProblemKind kind, int status, string? detail);
}
