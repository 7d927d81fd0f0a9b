using System.Diagnostics;
using System.Text.RegularExpressions;
using Microsoft.Data.Sqlite;

namespace Clients.Tests;

/// <summary>The service, started by the guide's own command, on a free port and with a store of its own; and beside it those that refuse.</summary>
public sealed partial class GuidedService : IAsyncLifetime
{
    private const string Guarded = "guarded.db";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("guide-");
    private readonly List<Process> _processes = [];

    public string Url { get; private set; } = "";

    /// <summary>A service whose stored evaluations are gone.</summary>
    public string BrokenUrl { get; private set; } = "";

    /// <summary>One that has no time for anything.</summary>
    public string HurriedUrl { get; private set; } = "";

    /// <summary>One that asks for a key, and lets each make few requests.</summary>
    public string GuardedUrl { get; private set; } = "";

    /// <summary>A folder outside of the repository.</summary>
    public string Folder => _folder.FullName;

    public async Task InitializeAsync()
    {
        var command = Guide.Section("").Service!;
        Url = await StartAsync(command, "compliance.db", "");
        BrokenUrl = await StartAsync(Again(command), "broken.db", "");
        HurriedUrl = await StartAsync(Again(command), "hurried.db", "export Requests__Seconds=0.0000001");
        await NewKeyAsync();
        GuardedUrl = await StartAsync(Again(command), Guarded, "export Limits__RequestsPerMinute=3");

        await using var store = new SqliteConnection($"Data Source={Path.Combine(Folder, "broken.db")};Pooling=False");
        await store.OpenAsync();
        await using var lose = store.CreateCommand();
        lose.CommandText = "ALTER TABLE evaluations RENAME TO lost";
        await lose.ExecuteNonQueryAsync();
    }

    /// <summary>A key that may read what the guarded service has stored.</summary>
    public async Task<string> NewKeyAsync() =>
        (await Shell.Run(Shell.Repository, $"{Again(Guide.Section("").Service!)} -- keys add read --path '{Path.Combine(Folder, Guarded)}'")).Trim();

    public Task DisposeAsync()
    {
        foreach (var process in _processes)
        {
            process.Kill(entireProcessTree: true);
            process.WaitForExit();
            process.Dispose();
        }

        _folder.Delete(recursive: true);
        return Task.CompletedTask;
    }

    /// <summary>The command, once the program is built.</summary>
    private static string Again(string command) => command.Replace("dotnet run", "dotnet run --no-build", StringComparison.Ordinal);

    private async Task<string> StartAsync(string command, string store, string settings)
    {
        var process = Shell.Start(Shell.Repository, $"export ASPNETCORE_URLS=http://127.0.0.1:0 Store__Path='{Path.Combine(Folder, store)}'\n{settings}\nexec {command} 2>&1");
        _processes.Add(process);
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(5));
        var said = "";
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            said += line + "\n";
            if (Listening.Match(line) is { Success: true } match)
            {
                _ = process.StandardOutput.ReadToEndAsync(CancellationToken.None);
                return match.Groups["url"].Value;
            }
        }

        throw new InvalidOperationException(said);
    }

    [GeneratedRegex(@"Now listening on: (?<url>http://\S+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Listening { get; }
}
