namespace Clients.Tests;

/// <summary>The integrator's afternoon, as the guide tells it: clients generated from the committed document, compiled without a warning, and run.</summary>
public sealed class GuideTests(GuidedService service) : IClassFixture<GuidedService>
{
    [Theory]
    [InlineData("curl")]
    [InlineData("C#, by NSwag")]
    [InlineData("C#, by Kiota")]
    [InlineData("TypeScript")]
    public async Task What_the_guide_types_prints_what_the_guide_says(string section)
    {
        var guide = Guide.Section(section);
        Assert.NotEmpty(guide.Prints);

        var printed = await Shell.Run(service.Folder, guide.Script.Replace("http://127.0.0.1:5080", service.Url, StringComparison.Ordinal));

        Assert.EndsWith(guide.Prints, printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_newcomer_needs_at_most_ten_commands() => Assert.InRange(Guide.Section("").Commands + Guide.Section("C#, by NSwag").Commands, 1, 10);

    [Fact]
    public async Task Every_request_of_the_http_file_is_answered_as_it_says()
    {
        var folder = Path.Combine(Shell.Repository, "openapi");
        using var client = new HttpClient();
        var requests = (await File.ReadAllTextAsync(Path.Combine(folder, "evaluations.http"))).Split("\n### ")[1..];
        Assert.NotEmpty(requests);
        foreach (var text in requests)
        {
            var lines = text.ReplaceLineEndings("\n").Split('\n');
            var expected = lines[0].Split(": ")[^1].Split(' ');
            var target = lines[1].Split(' ');
            var request = new HttpRequestMessage(new HttpMethod(target[0]), target[1].Replace("{{service}}", service.Url, StringComparison.Ordinal));
            var headers = lines[2..].TakeWhile(line => line.Length > 0).Select(line => line.Split(": ")).ToList();
            var body = string.Join('\n', lines[(3 + headers.Count)..]).Trim();
            if (body.Length > 0)
                request.Content = new StringContent(body.StartsWith("< ", StringComparison.Ordinal) ? await File.ReadAllTextAsync(Path.Combine(folder, body[2..])) : body, null, headers.Single(header => header[0] == "Content-Type")[1]);
            foreach (var header in headers.Where(header => header[0] != "Content-Type"))
                request.Headers.Add(header[0], header[1]);

            var response = await client.SendAsync(request);

            Assert.Contains(((int)response.StatusCode).ToString(System.Globalization.CultureInfo.InvariantCulture), expected);
        }
    }
}
