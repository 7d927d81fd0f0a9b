using System.Text;
using System.Text.RegularExpressions;
using Clients.Tests;
using Storage.Tests.Shared;

namespace Readme.Tests;

/// <summary>
/// README.md and the page on operations as a newcomer types them: every fence marked <c>sh run</c> in its order, in one shell, in the root of a
/// fresh clone. What a fence marked <c>sh service</c> starts stays up until the next one. Only the port is another.
/// </summary>
public sealed partial class ReadmeTests(FreshClone clone) : IClassFixture<FreshClone>
{
    private const string Usual = "127.0.0.1:5080";

    private static readonly string[] Dangerous = [" -- audit ", "/unsafe/"];

    /// <summary>Serves until it is ended; waits until it answers. A server that ends first ends the script.</summary>
    private const string Prelude = """
        serve() {
          setsid bash -c "$1" >service.log 2>&1 & server=$!
          until curl -sf -o /dev/null http://$AT/health/ready; do
            kill -0 $server 2>/dev/null || { cat service.log; exit 99; }
            sleep 0.2
          done
        }
        end() { [ -z "${server:-}" ] || { kill -TERM -- -$server; wait $server; } 2>/dev/null; server=; }
        trap end EXIT
        set +eo pipefail

        """;

    [Fact]
    public async Task Every_command_of_the_readme_does_what_it_says()
    {
        var said = await RunAsync(ReadmeText.Fences);

        // The month of the demo holds dangers, as does the second record, and the exit code says so; all else is as it should be.
        Assert.All(said, one => Assert.True(one.ExitCode == (Array.Exists(Dangerous, part => one.Command.Contains(part, StringComparison.Ordinal)) ? 1 : 0), $"{one.Command}\nexit code {one.ExitCode}\n{one.Printed}"));
        Assert.Contains("\nPASS  ", Printed(said, " check ", "example-record"), StringComparison.Ordinal);
        Assert.Contains(string.Join('\n', ReadmeText.Of("text")), Printed(said, " check ", "/unsafe/"), StringComparison.Ordinal);
        Assert.Contains("\"outcome\":\"pass\"", Printed(said, "/v1/evaluations "), StringComparison.Ordinal);
        Assert.Contains("month.ndjson: 200 records", Printed(said, " audit "), StringComparison.Ordinal);
        Assert.Contains("\"read\":200,\"judged\":200", Printed(said, "month.ndjson", "curl"), StringComparison.Ordinal);
        Assert.Contains("HTTP/1.1 202 Accepted", Printed(said, "month.csv"), StringComparison.Ordinal);
        Assert.Contains("saltmarsh", Printed(said, "keys list"), StringComparison.Ordinal);

        // Relative paths mean the folder in which the commands were typed.
        Assert.Contains("<html", await File.ReadAllTextAsync(Path.Combine(clone.Folder, "month.html")), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(clone.Folder, "data", "compliance.db")));
        Assert.False(Directory.Exists(Path.Combine(clone.Folder, "src", "ComplianceApi", "data")));
    }

    [Fact]
    public void Every_fence_of_the_readme_is_of_a_kind_that_is_tested() =>
        Assert.All(ReadmeText.FencesOf("README.md"), fence => Assert.Contains(fence.Kind, (IEnumerable<string>)[.. ReadmeText.Typed, "text"]));

    /// <summary>A mark promises that the commands are typed. The guide for clients has a test of its own, in Clients.Tests.</summary>
    [Fact]
    public void No_other_page_marks_a_fence_as_typed() => Assert.All(
        Markdown.Pages.Except([.. ReadmeText.Pages, "openapi/clients/README.md"], StringComparer.Ordinal),
        page => Assert.DoesNotContain(ReadmeText.FencesOf(page), fence => ReadmeText.Typed.Contains(fence.Kind)));

    [Theory]
    [PostgreSql]
    public async Task Two_instances_on_one_database_share_an_audit(string store)
    {
        Assert.Equal("postgresql", store);
        var commands = ReadmeText.Of("sh instances");
        Assert.Equal(2, commands.Length);
        var database = PrivatePostgreSql.NewDatabase();
        int[] ports = [FreshClone.FreePort(), FreshClone.FreePort()];
        var started = commands.Zip(ports, (command, port) => ConnectionString.Replace(Address.Replace(command, $"127.0.0.1:{port}"), $"Store__ConnectionString='{database}'"));

        var script = new StringBuilder(Prelude);
        foreach (var (command, port) in started.Zip(ports))
            script.AppendLine(System.Globalization.CultureInfo.InvariantCulture, $"AT=127.0.0.1:{port}; serve {Quoted(command)}; servers=\"${{servers:-}} $server\"");
        // How a server ends is no matter here: `dotnet run` may itself be ended by the signal (143) before it hands on what the service answered.
        var share = $$"""
            end() { for server in $servers; do kill -TERM -- -$server; wait $server || true; done 2>/dev/null; }
            set -e
            job=$(curl -sf -o /dev/null -w '%header{location}' http://127.0.0.1:{{ports[0]}}/v1/audits -H 'Content-Type: application/x-ndjson' --data-binary @openapi/samples/month.ndjson)
            for try in $(seq 300); do
              curl -sf http://127.0.0.1:{{ports[1]}}$job | grep -q '"state":"completed"' && break
              sleep 0.2
            done
            curl -sf http://127.0.0.1:{{ports[1]}}$job | grep -o '"judged":[0-9]*'
            """;

        Assert.EndsWith("\"judged\":200\n", await Shell.Run(clone.Folder, script + share), StringComparison.Ordinal);
    }

    private async Task<List<(string Command, int ExitCode, string Printed)>> RunAsync(IEnumerable<(string Kind, string[] Lines)> fences)
    {
        var address = $"127.0.0.1:{FreshClone.FreePort()}";
        var script = new StringBuilder($"export AT={address} ASPNETCORE_URLS=http://{address}\n{Prelude}");
        foreach (var (kind, lines) in fences)
        {
            foreach (var command in lines.Select(line => line.Replace(Usual, address, StringComparison.Ordinal)))
            {
                if (kind == "sh service")
                    script.Append("end; serve ").AppendLine(Quoted(command));
                else if (kind == "sh run")
                    script.Append("printf '\\n@@ %s\\n' ").AppendLine(Quoted(command)).AppendLine(command + " 2>&1").AppendLine("printf '\\n@@ exit code %s\\n' $?");
            }
        }

        var printed = await Shell.Run(clone.Folder, script.ToString());
        return [.. Command.Matches(printed).Select(match => (match.Groups["command"].Value, int.Parse(match.Groups["code"].Value, System.Globalization.CultureInfo.InvariantCulture), match.Groups["printed"].Value))];
    }

    private static string Printed(IEnumerable<(string Command, int ExitCode, string Printed)> said, params string[] parts) =>
        said.Single(one => parts.All(part => one.Command.Contains(part, StringComparison.Ordinal))).Printed;

    private static string Quoted(string command) => $"'{command.Replace("'", "'\\''", StringComparison.Ordinal)}'";

    [GeneratedRegex(@"\n@@ (?<command>[^\n]*)\n(?<printed>.*?)\n@@ exit code (?<code>\d+)\n", RegexOptions.ExplicitCapture | RegexOptions.Singleline, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Command { get; }

    [GeneratedRegex(@"127\.0\.0\.1:508\d", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Address { get; }

    [GeneratedRegex("Store__ConnectionString='[^']*'", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex ConnectionString { get; }
}
