using System.Text.Json;
using System.Text.Json.Nodes;

namespace Api.Tests;

public sealed class RecordTemplateTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    [Fact]
    public async Task A_row_filled_in_under_the_template_is_judged_as_the_same_record_in_JSON()
    {
        var client = service.CreateClient();

        var answer = await client.GetAsync("/v1/record-template.csv");

        Assert.Equal(("text/csv", "record-template.csv"), (answer.Content.Headers.ContentType!.MediaType, answer.Content.Headers.ContentDisposition!.FileName));
        var header = await answer.Content.ReadAsStringAsync();
        Assert.EndsWith("\r\n", header, StringComparison.Ordinal);
        var names = header.TrimEnd().Split(',');
        Assert.Equal(names.Length, names.Distinct(StringComparer.Ordinal).Count());
        var record = JsonNode.Parse(service.ExampleRecord)!;
        var row = string.Join(',', names.Select(name => CellOf(name.Split('.').Aggregate(record, (node, part) => node is JsonArray list ? list[int.Parse(part, System.Globalization.CultureInfo.InvariantCulture)]! : node[part]!))));
        var asCsv = await (await client.PostAudit(AuditCalls.Utf8(header + row), "text/csv")).ReadLines();
        var asJson = await (await client.PostAudit(AuditCalls.Lines([service.ExampleRecord.With(_ => { })]))).ReadLines();

        Assert.Equal(asJson[0]["evaluation"]!["inputHash"].Text(), asCsv[0]["evaluation"]!["inputHash"].Text());
    }

    private static string CellOf(JsonNode value)
    {
        var text = value.GetValueKind() == JsonValueKind.String ? value.Text() : value.ToJsonString();
        return text.AsSpan().ContainsAny(",\"\n") ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
    }
}
