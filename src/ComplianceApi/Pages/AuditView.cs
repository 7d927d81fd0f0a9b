using ComplianceApi.Api.Requests;
using Findings;
using Jobs;
using Jobs.Queue;
using Jobs.Summary;
using Kernel;

namespace ComplianceApi.Pages;

/// <summary>What the page of an audit shows: the objects of its routes, each as it is served.</summary>
public sealed class AuditView
{
    /// <summary>The audit with its summary.</summary>
    public required AuditStatus Audit { get; init; }

    /// <summary>The first of its worst records, each with its unsafe findings.</summary>
    public required IReadOnlyList<(WorstAppliance Record, IReadOnlyList<Finding> Unsafe)> First { get; init; }

    /// <summary>The limits that the ratios are held against where the maker gives none.</summary>
    public required IReadOnlyList<LimitDefinition> RatioLimits { get; init; }

    /// <summary>Which findings are asked for.</summary>
    public required FindingQuery Asked { get; init; }

    /// <summary>A part of them.</summary>
    public required Page<FindingRow> Findings { get; init; }

    /// <summary>Has it not ended yet?</summary>
    public bool IsGoing => Audit.State is AuditState.Queued or AuditState.Running;

    /// <summary>The address of the page with other filters than those asked for.</summary>
    public string Filtered(string? outcome = null, string? topic = null, string? rule = null, string? engineer = null, string? record = null, string? next = null)
    {
        var filters = new (string Name, string? Value)[]
        {
            ("outcome", outcome), ("topic", topic), ("rule", rule), ("engineer", engineer), ("recordOutcome", record), ("next", next),
            ("sort", Asked.Sort == AuditPages.UsualSort || next is null ? null : Wire.WireNames.Of(Asked.Sort)),
        };
        return $"/audits/{Audit.AuditId}{QueryString.Create(filters.Where(filter => filter.Value is not null).Select(filter => KeyValuePair.Create(filter.Name, filter.Value)))}#findings";
    }
}
