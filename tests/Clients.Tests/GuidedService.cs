using System.Diagnostics;
using System.Text.RegularExpressions;
using Microsoft.Data.Sqlite;

namespace Clients.Tests;

/// <summary>The service, started by the guide's own command, on a free port and with a store of its own; and beside it one that fails and one that is strict.</summary>
public sealed partial class GuidedService : IAsyncLifetime
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("guide-");
    private readonly List<Process> _processes = [];

    public string Url { get; private set; } = "";

    /// <summary>A service whose stored evaluations are gone.</summary>
    public string BrokenUrl { get; private set; } = "";

    /// <summary>A service that asks for a key, has little patience and takes few requests: ten at once, then one a second.</summary>
    public string StrictUrl { get; private set; } = "";

    /// <summary>A key of the strict service that opens single records and nothing that is stored.</summary>
    public string Key { get; private set; } = "";

    /// <summary>A folder outside of the repository.</summary>
    public string Folder => _folder.FullName;

    public async Task InitializeAsync()
    {
        var command = Guide.Section("").Service!;
        Url = await StartAsync(command, "compliance.db", "");
        var again = command.Replace("dotnet run", "dotnet run --no-build", StringComparison.Ordinal);
        BrokenUrl = await StartAsync(again, "broken.db", "");
        Key = (await Shell.Run(Shell.Repository, $"{again} -- keys add evaluate --create --path '{Path.Combine(Folder, "strict.db")}'")).Trim();
        StrictUrl = await StartAsync(again, "strict.db", "export Requests__Seconds=3 Limits__RequestsPerMinute=10");

        await using var store = new SqliteConnection($"Data Source={Path.Combine(Folder, "broken.db")};Pooling=False");
        await store.OpenAsync();
        await using var lose = store.CreateCommand();
        lose.CommandText = "ALTER TABLE evaluations RENAME TO lost";
        await lose.ExecuteNonQueryAsync();
    }

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

    private async Task<string> StartAsync(string command, string store, string settings)
    {
        var process = Shell.Start(Shell.Repository, $"export ASPNETCORE_URLS=http://127.0.0.1:0 Store__Create=true Store__Path='{Path.Combine(Folder, store)}'\n{settings}\nexec {command} 2>&1");
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
