using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Clients.Tests;

/// <summary>The service, started by the guide's own command, on a free port and with a store of its own.</summary>
public sealed partial class GuidedService : IAsyncLifetime
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("guide-");
    private Process? _process;

    public string Url { get; private set; } = "";

    /// <summary>A folder outside of the repository.</summary>
    public string Folder => _folder.FullName;

    public async Task InitializeAsync()
    {
        var command = Guide.Section("").Service!;
        _process = Shell.Start(Shell.Repository, $"export ASPNETCORE_URLS=http://127.0.0.1:0 Store__Path='{Path.Combine(Folder, "compliance.db")}'\nexec {command} 2>&1");
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(5));
        var said = "";
        while (await _process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            said += line + "\n";
            if (Listening.Match(line) is { Success: true } match)
            {
                Url = match.Groups["url"].Value;
                _ = _process.StandardOutput.ReadToEndAsync(CancellationToken.None);
                return;
            }
        }

        throw new InvalidOperationException(said);
    }

    public Task DisposeAsync()
    {
        _process?.Kill(entireProcessTree: true);
        _process?.WaitForExit();
        _process?.Dispose();
        _folder.Delete(recursive: true);
        return Task.CompletedTask;
    }

    [GeneratedRegex(@"Now listening on: (?<url>http://\S+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Listening { get; }
}
