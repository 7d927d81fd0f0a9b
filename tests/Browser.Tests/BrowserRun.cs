using System.Text.Json;

namespace Browser.Tests;

/// <summary>One run of every browser test, against services of its own: one that asks for no key, and one that does.</summary>
public sealed class BrowserRun : IAsyncLifetime, IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("browser-");
    private readonly RunningService _open = new("--urls=http://127.0.0.1:0");
    private RunningService? _keyed;

    public static string Sources { get; } = Path.Combine(Shell.Repository, "tests", "Browser.Tests");

    /// <summary>What went wrong in each test; null where nothing did.</summary>
    public Dictionary<string, string?> Results { get; } = new(StringComparer.Ordinal);

    /// <summary>All that the run printed.</summary>
    public string Said { get; private set; } = "";

    public async Task InitializeAsync()
    {
        var store = Path.Combine(_folder.FullName, "keyed.db");
        using var keys = new RunningService("keys", "add", "read,evaluate,audit", "--create", "--path", store);
        var key = (await keys.Printed()).Trim();
        _keyed = new("--urls=http://127.0.0.1:0", $"--Store:Path={store}");
        using var open = await _open.Listening();
        using var keyed = await _keyed.Listening();
        Said = await Shell.Run(_folder.FullName, $"""
            cp '{Sources}'/package*.json '{Sources}'/*.mjs .
            npm ci --no-audit --no-fund >/dev/null
            SERVICE={open.BaseAddress} node --test --test-reporter=./lines.mjs pages.test.mjs || true
            SERVICE={keyed.BaseAddress} KEY={key} node --test --test-reporter=./lines.mjs sign-in.test.mjs || true
            """);
        foreach (var line in Said.Split('\n').Where(line => line.StartsWith('{')))
        {
            using var result = JsonDocument.Parse(line);
            Results[result.RootElement.GetProperty("name").GetString()!] = result.RootElement.GetProperty("fault").GetString();
        }
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose()
    {
        _open.Dispose();
        _keyed?.Dispose();
        _folder.Delete(recursive: true);
    }
}
