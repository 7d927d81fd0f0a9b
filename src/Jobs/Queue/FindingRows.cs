using System.Globalization;
using Findings;
using Storage;
using Wire;

namespace Jobs.Queue;

/// <summary>What is said of one record, as rows.</summary>
public static class FindingRows
{
    /// <summary>One row for each finding, gravest first, or for each fault of a record that was not judged.</summary>
    public static IEnumerable<FindingRow> Of(JudgedLine judged)
    {
        ArgumentNullException.ThrowIfNull(judged);
        var appliance = judged.Record?.Appliance;
        FindingRow Row(int ordinal, string ruleId, string topic, string grade, string outcome, string subject, string message, string? code = null) => new()
        {
            Line = judged.Line.Line,
            Ordinal = ordinal,
            RecordId = judged.Line.RecordId,
            Premises = judged.Record?.Premises?.Reference,
            VisitedOn = judged.Record?.FinishedAt.Date,
            Maker = appliance?.Maker,
            Model = appliance?.Model,
            SerialNumber = appliance?.SerialNumber,
            Engineer = judged.Record?.Engineer?.LicenceNumber,
            RuleId = ruleId,
            Topic = topic,
            Grade = grade,
            Outcome = outcome,
            RecordOutcome = judged.Line.Outcome,
            Subject = subject,
            Message = message,
            Code = code,
        };

        return (judged.Line.Evaluation?.Findings ?? []).Where(finding => finding.Outcome is not (Outcome.Pass or Outcome.NotApplicable))
            .Select((finding, index) => Row(index, finding.RuleId, finding.Topic, ((int)finding.Outcome).ToString(CultureInfo.InvariantCulture), WireNames.Of(finding.Outcome), finding.Subject, finding.Message ?? finding.Title))
            .Concat((judged.Line.Problem?.Errors ?? []).Select((fault, index) => Row(index, "", "", FindingRow.RejectedGrade, FindingRow.Rejected, fault.Pointer, fault.Detail, fault.Code)));
    }
}
