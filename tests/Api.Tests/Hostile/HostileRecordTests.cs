using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Api.Tests.Contract;
using ComplianceApi.Api.Schemas;
using Records.Reading;

namespace Api.Tests.Hostile;

/// <summary>Bodies that want to be something else than they seem (tests/records/hostile), each with the answer that it must get beside it.</summary>
public sealed class HostileRecordTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private static readonly string Folder = Path.Combine(Repository.Root, "tests", "records", "hostile");

    private static IEnumerable<string> Names => Directory.EnumerateFiles(Folder, "*.body").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal);

    public static TheoryData<string> All => [.. Names];

    public static TheoryData<string> Taken => [.. Names.Where(name => Expected(name)["status"]!.GetValue<int>() == 201)];

    [Fact]
    public void There_are_enough_of_them_and_each_has_its_answer()
    {
        Assert.True(All.Count >= 60);
        Assert.Equal(All.Count, Directory.EnumerateFiles(Folder, "*.expected.json").Count());
    }

    [Theory, MemberData(nameof(All))]
    public void The_reader_says_what_is_wrong(string name)
    {
        var expected = Expected(name);
        var read = RecordReader.Read(Body(name), [.. ShippedRules.Jurisdictions.Select(place => place.Code)]);

        if (expected["status"]!.GetValue<int>() == 201 || expected["foundBy"] is not null)
            Assert.True(read.IsRecord, string.Join("; ", read.Faults));
        else
            Assert.Equal(Faults(expected["faults"]), read.Faults.Select(fault => (fault.Pointer, fault.Code)));
    }

    [Theory, MemberData(nameof(All))]
    public async Task The_service_says_it_over_HTTP_and_logs_no_failure(string name)
    {
        var expected = Expected(name);

        var response = await service.CreateClient().PostRecord(Body(name));
        var answer = await response.Read((HttpStatusCode)expected["status"]!.GetValue<int>());

        if (expected["faults"] is { } faults)
            Assert.Equal(Faults(faults), Faults(answer["errors"]));
        else
            Assert.Equal(expected["outcome"].Text(), answer["outcome"].Text());
        Assert.Empty(service.Log.Lines);
    }

    [Theory, MemberData(nameof(Taken))]
    public async Task What_is_taken_comes_back_byte_for_byte_and_pages_and_tables_show_it_as_text(string name)
    {
        var client = service.CreateClient();
        var posted = await client.PostRecord(Body(name));
        var recordId = JsonNode.Parse(WithoutMark(Body(name)))!["recordId"].Text();

        Assert.Equal(Body(name), await client.GetByteArrayAsync($"{posted.Headers.Location}/record"));
        var page = await service.CreateDefaultClient().GetStringAsync(posted.Headers.Location!.ToString()["/v1".Length..]);
        Assert.Contains(recordId, WebUtility.HtmlDecode(page), StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<img src=x", page, StringComparison.Ordinal);

        var audit = (await client.PostAudit(WithoutMark(Body(name)), later: true)).Headers.Location!;
        await client.Completed(audit);
        var table = await client.GetStringAsync($"{audit}/findings.csv");
        Assert.Contains((recordId[0] is '=' or '+' or '-' or '@' ? "'" : "") + recordId.Replace("\"", "\"\"", StringComparison.Ordinal), table, StringComparison.Ordinal);
        Assert.DoesNotMatch("[,\n]\"?([=+@\t-]|\r(?!\n))", table);
    }

    private static byte[] Body(string name) => File.ReadAllBytes(Path.Combine(Folder, name + ".body"));

    private static JsonNode Expected(string name) => JsonNode.Parse(File.ReadAllText(Path.Combine(Folder, name + ".expected.json")))!;

    private static byte[] WithoutMark(byte[] body) => body.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? body[3..] : body;

    private static IEnumerable<(string, string)> Faults(JsonNode? faults) => faults!.AsArray().Select(fault => (fault!["pointer"].Text(), fault["code"].Text()));
}
