using System.Diagnostics;

namespace Clients.Tests;

/// <summary>Runs commands as a reader of the guide types them.</summary>
internal static class Shell
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(15);

    public static string Repository { get; } = Find();

    /// <summary>What the commands print; a command that fails ends them, and the test.</summary>
    public static async Task<string> Run(string folder, string script)
    {
        using var process = Start(folder, script);
        process.StandardInput.Close();
        using var patience = new CancellationTokenSource(Patience);
        var said = process.StandardError.ReadToEndAsync(patience.Token);
        try
        {
            var printed = await process.StandardOutput.ReadToEndAsync(patience.Token);
            await process.WaitForExitAsync(patience.Token);
            Assert.True(process.ExitCode == 0, $"exit code {process.ExitCode} of\n{script}\n{printed}\n{await said}");
            return printed;
        }
        finally
        {
            if (!process.HasExited)
                process.Kill(entireProcessTree: true);
        }
    }

    public static Process Start(string folder, string script)
    {
        var start = new ProcessStartInfo("bash", ["-euo", "pipefail", "-c", script])
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };

        // As on a desk: nothing of what the test runner has set for itself.
        foreach (var name in start.Environment.Keys.Where(name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase) || name.StartsWith("VSTEST", StringComparison.OrdinalIgnoreCase)).ToList())
            start.Environment.Remove(name);
        start.Environment["REPOSITORY"] = Repository;
        start.Environment["REDOCLY_TELEMETRY"] = "off";
        start.Environment["DOTNET_NOLOGO"] = "1";
        start.Environment["KIOTA_CLI_TELEMETRY_OPTOUT"] = "1";
        start.Environment["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1";
        return Process.Start(start)!;
    }

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "ComplianceApi.sln")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
