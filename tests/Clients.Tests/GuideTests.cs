namespace Clients.Tests;

/// <summary>The integrator's afternoon, as the guide tells it: clients generated from the committed document, compiled without a warning, and run.</summary>
public sealed class GuideTests(GuidedService service) : IClassFixture<GuidedService>
{
    /// <summary>405 is met by none who calls an operation; what a client makes of it beyond the status is its own.</summary>
    private const string Errors = """
        400 /problems/invalid-parameter
        400 /problems/unreadable-body
        401 /problems/key-needed
        403 /problems/scope-missing
        403 /problems/forwarded-request
        404 /problems/not-found
        405
        409 /problems/audit-not-completed
        413 /problems/audit-too-long
        415 /problems/unsupported-media-type
        422 /problems/invalid-body
        429 /problems/too-many-requests
        503 /problems/store-unavailable
        504 /problems/too-slow

        """;

    /// <summary>A member that the contract demands and the program forgets is told by the compiler (CS9035), before it can go out as a statement.</summary>
    private const string Forget = "sed -i '/JobType = JobType/d' Program.cs; ! dotnet build >forgotten.txt || exit 1; grep -q CS9035 forgotten.txt; ";

    [Fact]
    public async Task What_the_guide_types_prints_what_the_guide_says()
    {
        var guide = Guide.Section("curl");

        Assert.EndsWith(guide.Prints, await Run(guide.Script), StringComparison.Ordinal);
    }

    /// <summary>First as the guide says; then the same generated client reads every error.</summary>
    [Theory]
    [InlineData("C#, by NSwag", Forget + "cp $errors/nswag.cs Program.cs; cp $errors/every.cs .; dotnet build -warnaserror; dotnet run --no-build --", "405")]
    [InlineData("C#, by Kiota", "cp $errors/kiota.cs Program.cs; cp $errors/every.cs .; dotnet build -warnaserror; dotnet run --no-build --", "405")]
    [InlineData("TypeScript", "cp $errors/errors.ts check.ts; npx tsc; node check.js", "405 /problems/method-not-allowed")]
    public async Task A_client_by_the_guide_does_what_the_guide_says_and_reads_every_error(string section, string run, string notAllowed)
    {
        var guide = Guide.Section(section);

        var printed = await Run($"{guide.Script}\necho '== errors'\nerrors=\"$REPOSITORY/tests/Clients.Tests/Errors\"\n{run} {service.Url} {service.BrokenUrl} {service.StrictUrl} {service.Key}");

        var parts = printed.Split("== errors\n");
        Assert.EndsWith(guide.Prints, parts[0], StringComparison.Ordinal);
        string[] expected = [.. Errors.Replace("405", notAllowed, StringComparison.Ordinal).Split('\n')];
        Assert.Equal(expected, parts[1].Split('\n').TakeLast(expected.Length));
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
