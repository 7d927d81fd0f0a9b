namespace Clients.Tests;

/// <summary>The integrator's afternoon, as the guide tells it: clients generated from the committed document, compiled without a warning, and run.</summary>
public sealed class GuideTests(GuidedService service) : IClassFixture<GuidedService>
{
    private const string Errors = """
        400 /problems/invalid-parameter
        400 /problems/unreadable-body
        401 /problems/key-needed
        403 /problems/forwarded-request
        403 /problems/scope-missing
        404 /problems/not-found
        409 /problems/audit-not-completed
        413 /problems/audit-too-long
        415 /problems/unsupported-media-type
        422 /problems/invalid-body
        429 /problems/too-many-requests
        503 /problems/store-unavailable
        504 /problems/too-slow

        """;

    [Fact]
    public async Task What_the_guide_types_prints_what_the_guide_says()
    {
        var guide = Guide.Section("curl");

        Assert.EndsWith(guide.Prints, await Run(guide.Script), StringComparison.Ordinal);
    }

    /// <summary>First as the guide says; then the same generated client reads every error.</summary>
    [Theory]
    [InlineData("C#, by NSwag", "nswag.cs", "Program.cs", "dotnet build -warnaserror; dotnet run --no-build --")]
    [InlineData("C#, by Kiota", "kiota.cs", "Program.cs", "dotnet build -warnaserror; dotnet run --no-build --")]
    [InlineData("TypeScript", "errors.ts", "check.ts", "npx tsc; node check.js")]
    public async Task A_client_by_the_guide_does_what_the_guide_says_and_reads_every_error(string section, string program, string takesPlaceOf, string run)
    {
        var guide = Guide.Section(section);

        var printed = await Run($"{guide.Script}\necho '== errors'\ncp \"$REPOSITORY/tests/Clients.Tests/Errors/{program}\" {takesPlaceOf}\ncp \"$REPOSITORY/tests/Clients.Tests/Errors/Changed.cs\" .\n{run} {service.Url} {service.BrokenUrl} {service.HurriedUrl} {service.GuardedUrl} {await service.NewKeyAsync()}");

        var parts = printed.Split("== errors\n");
        Assert.EndsWith(guide.Prints, parts[0], StringComparison.Ordinal);
        Assert.EndsWith(Errors, parts[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_newcomer_needs_at_most_ten_commands() => Assert.InRange(Guide.Section("").Commands + Guide.Section("C#, by NSwag").Commands, 1, 10);

    private Task<string> Run(string script) => Shell.Run(service.Folder, script.Replace("http://127.0.0.1:5080", service.Url, StringComparison.Ordinal));

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
