using Jobs.Summary;
using Kernel;

namespace ComplianceApi.Api.Audits;

/// <summary>Draws the report of an audit: one page of HTML that needs no other file.</summary>
internal interface IAuditReport
{
    /// <summary>What the page may do, as a content security policy.</summary>
    string Policy { get; }

    /// <summary>The page.</summary>
    /// <param name="title">What was audited and when.</param>
    /// <param name="summary">The summary of the audit.</param>
    /// <param name="dangers">Every record that shows a danger.</param>
    /// <param name="limits">The limits in force.</param>
    Task<string> OfAsync(string title, AuditSummary summary, IReadOnlyList<UnsafeRecord> dangers, LimitBook limits);
}
