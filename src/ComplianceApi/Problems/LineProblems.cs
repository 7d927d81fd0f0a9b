using Storage;

namespace ComplianceApi.Problems;

/// <summary>Why a record among many was not judged, as it is answered.</summary>
internal static class LineProblems
{
    /// <summary>The line with the address of what its problem is, of which only the word is kept.</summary>
    public static AuditLine Addressed(this AuditLine line) =>
        line.Problem is { } problem ? line with { Problem = problem with { Type = ProblemKind.AddressOf(problem.Type) } } : line;
}
