using System.Globalization;
using System.Xml;
using Findings;
using Jobs.Summary;
using Storage;
using Wire;

namespace ComplianceApi.Commands.Audit;

/// <summary>
/// An audit in the XML that build servers read as test results: a suite for each record, a case for each answer. What is unsafe or
/// missing is a failure; a rule that failed to run and a record that could not be judged are errors; an advisory passes and is told.
/// </summary>
internal sealed class JunitPrinter : AuditPrinter
{
    private readonly XmlWriter _xml;

    public JunitPrinter(Stream output, string name)
    {
        _xml = XmlWriter.Create(output, new XmlWriterSettings { Async = true, Indent = true, CloseOutput = false });
        _xml.WriteStartElement("testsuites");
        Attribute("name", name);
    }

    public override async Task AddAsync(JudgedLine judged, CancellationToken stop)
    {
        var (line, faults) = (judged.Line, judged.Line.Problem?.Errors ?? []);
        var findings = line.Evaluation?.Show(Include.Passes).Findings ?? [];
        _xml.WriteStartElement("testsuite");
        Attribute("name", $"line {line.Line}: {line.RecordId ?? "no record id"}");
        Attribute("tests", findings.Count + faults.Count);
        Attribute("failures", findings.Count(IsFailure));
        Attribute("errors", findings.Count(finding => finding.Outcome == Outcome.Error) + faults.Count);
        Attribute("skipped", 0);
        foreach (var finding in findings)
            Case(finding);
        foreach (var fault in faults)
            Case("record", fault.Pointer, "error", fault.Code, fault.Detail, fault.Detail);
        _xml.WriteEndElement();
        await _xml.FlushAsync();
    }

    public override async Task EndAsync(AuditSummary summary, CancellationToken stop)
    {
        _xml.WriteEndElement();
        await _xml.FlushAsync();
    }

    protected override async Task CloseAsync() => await _xml.DisposeAsync();

    // What only should be there holds no job up.
    private static bool IsFailure(Finding finding) => finding is { Outcome: Outcome.Unsafe } or { Outcome: Outcome.Missing, Weight: not Weight.Should };

    private void Case(Finding finding)
    {
        var text = string.Join('\n', new[] { finding.Message, finding.Caution, finding.Remedy }.OfType<string>());
        var element = finding.Outcome switch { _ when IsFailure(finding) => "failure", Outcome.Error => "error", Outcome.Advisory or Outcome.Missing => "system-out", _ => null };
        Case(finding.RuleId, finding.Subject, element, WireNames.Of(finding.Outcome), finding.Message ?? finding.Title, text, finding.Title);
    }

    private void Case(string group, string subject, string? element, string type, string message, string text, string? title = null)
    {
        _xml.WriteStartElement("testcase");
        Attribute("classname", group);
        Attribute("name", string.Join(" ", new[] { title, subject }.Where(part => !string.IsNullOrEmpty(part))));
        if (element is not null)
        {
            _xml.WriteStartElement(element);
            if (element != "system-out")
            {
                Attribute("type", type);
                Attribute("message", message);
            }

            _xml.WriteString(Plain(text));
            _xml.WriteEndElement();
        }

        _xml.WriteEndElement();
    }

    private void Attribute(string name, string value) => _xml.WriteAttributeString(name, Plain(value));

    private void Attribute(string name, int value) => Attribute(name, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>Without the few characters that XML cannot carry.</summary>
    private static string Plain(string text)
    {
        var plain = text.ToCharArray();
        for (var i = 0; i < plain.Length; i++)
        {
            if (XmlConvert.IsXmlChar(plain[i]))
                continue;
            if (i + 1 < plain.Length && XmlConvert.IsXmlSurrogatePair(plain[i + 1], plain[i]))
                i++;
            else
                plain[i] = '\uFFFD';
        }

        return new string(plain);
    }
}
