using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using System.Xml.Schema;

namespace Api.Tests;

/// <summary>The commands as a user types them, with their output piped.</summary>
public sealed partial class CommandTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>, IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("commands-");

    [Fact]
    public async Task Text_and_JSON_of_a_record_say_the_same()
    {
        var file = Write("visit.json", service.ExampleRecord.With(record =>
        {
            record["combustion"]!["readings"]![0]!["coPpm"] = 2000;
            record["water"]!["inhibitorOk"] = false;
            record["combustion"]!.AsObject().Remove("airInlet");
        }));

        var text = await Run(1, "check", file);
        var json = await Run(1, "check", file, "--format", "json");

        var evaluation = JsonNode.Parse(json.Out)!["evaluation"]!;
        Assert.Equal("unsafe", evaluation["outcome"].Text());
        var said = Flat(text.Out);
        var problems = evaluation["findings"]!.AsArray().Where(finding => finding!["outcome"].Text() is "unsafe" or "error" or "advisory").ToList();
        Assert.Contains("advisory", problems.Select(finding => finding!["outcome"].Text()));
        foreach (var finding in problems)
        {
            foreach (var member in (string[])["message", "caution", "remedy"])
                Assert.True(finding![member] is null || said.Contains(Flat(finding[member].Text()), StringComparison.OrdinalIgnoreCase), $"{finding["ruleId"]} {member}: {finding[member]}");
            Assert.Contains($"Rule {finding!["ruleId"].Text()},", said, StringComparison.Ordinal);
            if (finding["limit"] is { } limit)
                Assert.Contains(Flat(limit["source"].Text()), said, StringComparison.Ordinal);
        }

        Assert.Equal(problems.Count, RuleLine.Count(text.Out));
        Assert.Equal(evaluation["missing"]!.AsArray().Count, QuestionLine.Count(text.Out));
        foreach (var words in evaluation["missing"].Texts("ask").Concat(evaluation["due"].Texts("what")).Concat(evaluation["cautions"]!.AsArray().Select(caution => caution.Text())))
            Assert.Contains(Flat(words), said, StringComparison.OrdinalIgnoreCase);
        Assert.True(said.IndexOf("ACT ON THIS", StringComparison.Ordinal) < said.IndexOf("QUESTIONS", StringComparison.Ordinal));
        Assert.True(said.IndexOf("QUESTIONS", StringComparison.Ordinal) < said.IndexOf("TO MIND", StringComparison.Ordinal));
        IsPlain(text.Out);
    }

    [Fact]
    public async Task An_audit_prints_in_every_form_what_the_service_answers()
    {
        var body = AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 20));
        var file = Write("month.ndjson", body);
        using var client = service.CreateClient();
        var answered = await (await client.PostAudit(body)).ReadLines();
        var location = (await client.PostAudit(body, later: true)).Headers.Location!;
        await client.Completed(location);

        var lines = (await Run(2, "audit", file, "--format", "ndjson")).Out.TrimEnd('\n').Split('\n').Select(line => JsonNode.Parse(line)!).ToList();
        var summary = JsonNode.Parse((await Run(2, "audit", file, "--format", "json")).Out)!;
        var csv = await Run(2, "audit", file, "--format", "csv");
        var text = await Run(2, "audit", file);

        // What the service saw from another day differs in nothing but that day and what depends on it.
        Assert.Equal(answered[..^1].Select(Verdict), lines[..^1].Select(Verdict));
        Assert.Equal(answered[^1]["summary"]!["outcomes"]!.ToJsonString(), summary["outcomes"]!.ToJsonString());
        Assert.Equal(lines[^1]["summary"]!.ToJsonString(), summary.ToJsonString());
        Assert.Equal(await client.GetStringAsync($"{location}/findings.csv"), csv.Out);
        Assert.Equal("", csv.Error);
        foreach (var (word, count) in summary["outcomes"]!.AsObject())
            Assert.Matches($" {count}  {word.ToUpperInvariant()} ", text.Out);
        foreach (var caution in summary["cautions"]!.AsArray())
            Assert.Contains(Flat(caution.Text()), Flat(text.Out), StringComparison.Ordinal);
        foreach (var finding in lines.Where(line => line["evaluation"] is not null).SelectMany(line => line["evaluation"]!["findings"]!.AsArray()).Where(finding => finding!["outcome"].Text() == "unsafe"))
            Assert.Contains(Flat(finding!["message"].Text()), Flat(text.Out), StringComparison.OrdinalIgnoreCase);
        IsPlain(text.Out);
    }

    [Fact]
    public async Task The_test_results_for_build_servers_have_their_form()
    {
        var file = Write("month.ndjson", AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 5)));

        var xml = XDocument.Parse((await Run(2, "audit", file, "--format", "junit")).Out);

        var schema = new XmlSchemaSet();
        schema.Add(null, XmlReader.Create(new StringReader(CommonForm)));
        xml.Validate(schema, (_, fault) => Assert.Fail(fault.Message));
        var suites = xml.Root!.Elements("testsuite").ToList();
        Assert.Equal(5, suites.Count);
        Assert.All(suites, suite =>
        {
            Assert.Equal((int)suite.Attribute("tests")!, suite.Elements("testcase").Count());
            Assert.Equal((int)suite.Attribute("failures")!, suite.Descendants("failure").Count());
            Assert.Equal((int)suite.Attribute("errors")!, suite.Descendants("error").Count());
        });
        Assert.Contains(suites[1].Descendants("failure"), failure => (string?)failure.Attribute("type") == "unsafe");
        Assert.Single(suites[2].Descendants("error"));
        Assert.Empty(suites[3].Descendants("failure"));
    }

    [Theory]
    [InlineData("=1+2")]
    [InlineData("@SUM(A1)")]
    public async Task In_CSV_no_text_of_a_record_becomes_a_formula(string text)
    {
        var file = Write("hostile.ndjson", AuditCalls.Lines([service.ExampleRecord.With(record => { record["recordId"] = text; record["combustion"]!["readings"]![0]!["coPpm"] = 2000; })]));

        var csv = (await Run(1, "audit", file, "--format", "csv")).Out;

        Assert.Contains($"'{text}", csv, StringComparison.Ordinal);
        Assert.DoesNotContain($",{text}", csv, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_used_is_said_on_the_error_stream_with_every_fault()
    {
        var faulty = await Run(2, "check", Write("faulty.json", "{\"recordId\":\"a\",\"fuel\":1}"u8.ToArray()));
        Assert.Equal("", faulty.Out);
        Assert.Contains("#/fuel", faulty.Error, StringComparison.Ordinal);
        Assert.Contains("#/finishedAt", faulty.Error, StringComparison.Ordinal);

        Assert.Contains("there is no record in it", (await Run(2, "audit", Write("empty.ndjson", []))).Error, StringComparison.Ordinal);
        Assert.Contains("nothing.json", (await Run(2, "check", "nothing.json")).Error, StringComparison.Ordinal);
        Assert.Contains("There is no rule none", (await Run(2, "rules", "none")).Error, StringComparison.Ordinal);
        Assert.Contains("chekc", (await Run(2, "chekc", "visit.json")).Error, StringComparison.Ordinal);
        Assert.Contains("--colour", (await Run(2, "check", "visit.json", "--colour", "blue")).Error, StringComparison.Ordinal);
        Assert.Contains("yaml", (await Run(2, "audit", "month.ndjson", "--format", "yaml")).Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Questions_and_rules_are_those_of_the_service()
    {
        using var client = service.CreateClient();
        var questions = JsonNode.Parse((await Run(0, "questions", "--job-type", "repair", "--jurisdiction", "GB-WLS", "--format", "json")).Out)!;
        var text = await Run(0, "questions", "--job-type", "repair", "--jurisdiction", "GB-WLS");
        Assert.Equal("repair", questions["jobType"].Text());
        Assert.Equal(questions["items"]!.AsArray().Count, QuestionLine.Count(text.Out));
        Assert.All(questions["items"].Texts("ask"), ask => Assert.Contains(Flat(ask), Flat(text.Out), StringComparison.Ordinal));

        Assert.Equal((await client.GetJson("/v1/rules/combustion-ratio")).ToJsonString(), JsonNode.Parse((await Run(0, "rules", "combustion-ratio", "--format", "json")).Out)!.ToJsonString());
        var all = await client.GetJson("/v1/rules?limit=500");
        var listed = Flat((await Run(0, "rules")).Out);
        Assert.All(all["items"].Texts("id"), id => Assert.Contains($" {id} ", listed, StringComparison.Ordinal));
        var one = Flat((await Run(0, "rules", "combustion-ratio")).Out);
        foreach (var limit in (await client.GetJson("/v1/rules/combustion-ratio"))["limits"]!.AsArray())
            Assert.Contains(Flat(limit!["source"].Text()), one, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ended_by_its_user_an_audit_says_how_far_it_came()
    {
        var month = AuditCalls.Lines(AuditCalls.Month(service.ExampleRecord, 500));
        var file = Write("long.ndjson", [.. Enumerable.Repeat(month, 60).SelectMany(part => part)]);
        var lines = Path.Combine(_folder.FullName, "lines.ndjson");
        using var process = Start("audit", file, "--lines", lines);
        var error = process.StandardError.ReadToEndAsync();
        for (var patience = 600; patience > 0 && !(File.Exists(lines) && new FileInfo(lines).Length > 0); patience--)
            await Task.Delay(50);

        using var interrupt = Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);

        Assert.Equal("", await process.StandardOutput.ReadToEndAsync());
        await process.WaitForExitAsync();
        Assert.Equal(130, process.ExitCode);
        Assert.Matches("^Ended early: .* records were judged; there is no summary.\n$", await error);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("audit")]
    [InlineData("questions")]
    [InlineData("rules")]
    [InlineData("serve")]
    [InlineData("demo")]
    public async Task Help_shows_how_it_is_typed(string command)
    {
        Assert.Contains($"  {command} ", (await Run(0, "--help")).Out, StringComparison.Ordinal);

        var help = (await Run(0, command, "--help")).Out;

        Assert.Contains("Examples:\n  " + command, help, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    /// <summary>The XML that build servers read as test results. There is no standard: written from memory of the form that they have in common.</summary>
    private const string CommonForm = """
        <xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">
          <xs:complexType name="trouble"><xs:simpleContent><xs:extension base="xs:string">
            <xs:attribute name="type" type="xs:string" use="required"/><xs:attribute name="message" type="xs:string" use="required"/>
          </xs:extension></xs:simpleContent></xs:complexType>
          <xs:element name="testsuites"><xs:complexType><xs:sequence>
            <xs:element name="testsuite" minOccurs="0" maxOccurs="unbounded"><xs:complexType><xs:sequence>
              <xs:element name="testcase" minOccurs="0" maxOccurs="unbounded"><xs:complexType><xs:sequence>
                <xs:choice minOccurs="0"><xs:element name="failure" type="trouble"/><xs:element name="error" type="trouble"/></xs:choice>
                <xs:element name="system-out" type="xs:string" minOccurs="0"/>
              </xs:sequence><xs:attribute name="classname" type="xs:string" use="required"/><xs:attribute name="name" type="xs:string" use="required"/></xs:complexType></xs:element>
            </xs:sequence>
            <xs:attribute name="name" type="xs:string" use="required"/><xs:attribute name="tests" type="xs:int" use="required"/>
            <xs:attribute name="failures" type="xs:int" use="required"/><xs:attribute name="errors" type="xs:int" use="required"/><xs:attribute name="skipped" type="xs:int"/>
            </xs:complexType></xs:element>
          </xs:sequence><xs:attribute name="name" type="xs:string"/></xs:complexType></xs:element>
        </xs:schema>
        """;

    private static (string?, string?, string?) Verdict(JsonNode line) =>
        (line["recordId"]?.Text(), line["evaluation"]?["inputHash"].Text(), (line["evaluation"]?["outcome"] ?? line["problem"]?["errors"]![0]!["code"])?.Text());

    /// <summary>No colours, no line beyond 80 characters, no blanks at the end of lines.</summary>
    private static void IsPlain(string text)
    {
        Assert.DoesNotContain('\u001b', text);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 80 && line == line.TrimEnd(), line));
    }

    private static string Flat(string text) => Blanks.Replace(text, " ");

    private string Write(string name, byte[] content)
    {
        var path = Path.Combine(_folder.FullName, name);
        File.WriteAllBytes(path, content);
        return path;
    }

    private Process Start(params string[] arguments) => Process.Start(new ProcessStartInfo("dotnet", [typeof(Program).Assembly.Location, .. arguments])
    {
        WorkingDirectory = _folder.FullName,
        UseShellExecute = false,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        StandardOutputEncoding = Encoding.UTF8,
    })!;

    private async Task<(string Out, string Error)> Run(int expected, params string[] arguments)
    {
        using var process = Start(arguments);
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        var error = process.StandardError.ReadToEndAsync(patience.Token);
        var output = await process.StandardOutput.ReadToEndAsync(patience.Token);
        await process.WaitForExitAsync(patience.Token);
        Assert.True(process.ExitCode == expected, $"{string.Join(' ', arguments)}: {process.ExitCode}\n{output}\n{await error}");
        return (output, await error);
    }

    [GeneratedRegex("^  Rule ", RegexOptions.Multiline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex RuleLine { get; }

    [GeneratedRegex(@"^ +[0-9]+\. ", RegexOptions.Multiline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex QuestionLine { get; }

    [GeneratedRegex(@"\s+", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Blanks { get; }
}
