using System.Text.Json.Serialization.Metadata;
using ComplianceApi.Problems;
using Findings;
using Jobs.Queue;
using Storage;

namespace ComplianceApi.Api.Audits;

/// <summary>What an audit says of one record, as it is answered.</summary>
internal static class AuditLineView
{
    private static readonly JsonTypeInfo<AuditLine> InShort = ShortJson.Of<AuditLine>(AuditJson.Default);

    /// <summary>The line with as much of its evaluation as is asked for.</summary>
    public static AuditLine Shown(this AuditLine line, Include include) => line.Addressed() with { Evaluation = line.Evaluation?.InShort(include) };

    /// <summary>How such a line is written, by a writer that brings the encoder.</summary>
    public static JsonTypeInfo<AuditLine> TypeFor(Include include) => include == Include.All ? AuditJson.Default.AuditLine : InShort;
}
