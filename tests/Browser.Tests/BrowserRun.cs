using System.Text.Json;

namespace Browser.Tests;

/// <summary>One run of every browser test, against a service of its own.</summary>
public sealed class BrowserRun : IAsyncLifetime, IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("browser-");
    private readonly RunningService _service = new("--urls=http://127.0.0.1:0");

    public static string Sources { get; } = Path.Combine(Shell.Repository, "tests", "Browser.Tests");

    /// <summary>What went wrong in each test; null where nothing did.</summary>
    public Dictionary<string, string?> Results { get; } = new(StringComparer.Ordinal);

    /// <summary>All that the run printed.</summary>
    public string Said { get; private set; } = "";

    public async Task InitializeAsync()
    {
        using var client = await _service.Listening();
        Said = await Shell.Run(_folder.FullName, $"""
            cp '{Sources}'/package*.json '{Sources}'/*.mjs .
            npm ci --no-audit --no-fund >/dev/null
            SERVICE={client.BaseAddress} node --test --test-reporter=./lines.mjs pages.test.mjs || true
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
        _service.Dispose();
        _folder.Delete(recursive: true);
    }
}
