using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;

namespace Api.Tests;

/// <summary>The service as a process of its own, as an operator starts it.</summary>
internal sealed partial class RunningService : IDisposable
{
    /// <summary>Characters among which it says that it listens, if it does.</summary>
    private const int FirstLines = 16 * 1024;

    private readonly DirectoryInfo _folder;
    private readonly bool _isOwnFolder;
    private readonly Process _process;

    public RunningService(params string[] arguments) : this(new Dictionary<string, string>(), arguments)
    {
    }

    /// <summary>In a folder that stays.</summary>
    public RunningService(DirectoryInfo folder, params string[] arguments) : this(new Dictionary<string, string>(), arguments, folder)
    {
    }

    /// <summary>With variables of its environment.</summary>
    public RunningService(IReadOnlyDictionary<string, string> environment, params string[] arguments) : this(environment, arguments, folder: null)
    {
    }

    private RunningService(IReadOnlyDictionary<string, string> environment, string[] arguments, DirectoryInfo? folder)
    {
        _isOwnFolder = folder is null;
        _folder = folder ?? Directory.CreateTempSubdirectory("run-");
        _process = new Process
        {
            StartInfo = new ProcessStartInfo("dotnet", [typeof(Program).Assembly.Location, .. arguments])
            {
                WorkingDirectory = _folder.FullName,
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            },
        };
        foreach (var (name, value) in environment)
            _process.StartInfo.Environment[name] = value;
        _process.Start();
    }

    /// <summary>What it said on the output stream, once it has ended by itself.</summary>
    public string Logged { get; private set; } = "";

    /// <summary>The most memory that it has held (Linux).</summary>
    public int PeakMebibytes
    {
        get
        {
            var line = File.ReadLines($"/proc/{_process.Id}/status").First(line => line.StartsWith("VmHWM:", StringComparison.Ordinal));
            return int.Parse(string.Concat(line.Where(char.IsAsciiDigit)), System.Globalization.CultureInfo.InvariantCulture) / 1024;
        }
    }

    /// <summary>Processor time that it has used, in user and kernel mode.</summary>
    public TimeSpan ProcessorTime
    {
        get
        {
            _process.Refresh();
            return _process.TotalProcessorTime;
        }
    }

    public string StoreFile => Path.Combine(_folder.FullName, "data", "compliance.db");

    /// <summary>Waits until it listens; gives a client of it.</summary>
    public async Task<HttpClient> Listening()
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        while (await _process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (ListeningLine.Match(line) is { Success: true } match)
                return new HttpClient { BaseAddress = new Uri(match.Groups["url"].Value) };
        }

        throw new InvalidOperationException(await _process.StandardError.ReadToEndAsync(patience.Token));
    }

    /// <summary>
    /// Waits until it has ended by itself; gives its exit code, what it printed and what it said on the error stream. Fails as soon as it
    /// begins to listen instead, and after a minute.
    /// </summary>
    public async Task<(int ExitCode, string Printed, string Said)> Outcome()
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        var said = _process.StandardError.ReadToEndAsync(patience.Token);
        var printed = new StringBuilder();
        try
        {
            var buffer = new char[FirstLines];
            for (int read; (read = await _process.StandardOutput.ReadAsync(buffer, patience.Token)) > 0;)
            {
                printed.Append(buffer, 0, read);
                if (printed.Length <= FirstLines && ListeningLine.IsMatch(printed.ToString()))
                    Assert.Fail($"It was to end by itself, and listens:\n{printed}");
            }

            await _process.WaitForExitAsync(patience.Token);
        }
        catch (OperationCanceledException)
        {
            Assert.Fail($"It was to end by itself, and has not within a minute. It printed:\n{printed}");
        }

        Logged = printed.ToString();
        return (_process.ExitCode, Logged, await said);
    }

    /// <summary>Waits until it has ended by itself; gives its exit code and what it said on the error stream.</summary>
    public async Task<(int ExitCode, string Said)> Ended() => await Outcome() is var (exitCode, _, said) ? (exitCode, said) : default;

    /// <summary>Waits until it has ended by itself; gives what it printed.</summary>
    public async Task<string> Printed()
    {
        var (exitCode, printed, said) = await Outcome();
        Assert.True(exitCode == 0, $"It ended with {exitCode}:\n{printed}\n{said}");
        return printed;
    }

    /// <summary>Tells it to end, as a service manager does, and waits; gives its exit code.</summary>
    public async Task<int> Terminated()
    {
        using (var kill = Process.Start("kill", $"-TERM {_process.Id}"))
            await kill.WaitForExitAsync();
        return (await Ended()).ExitCode;
    }

    public void Kill()
    {
        _process.Kill();
        _process.WaitForExit();
    }

    public void Dispose()
    {
        if (!_process.HasExited)
            Kill();
        _process.Dispose();
        if (_isOwnFolder)
            _folder.Delete(recursive: true);
    }

    [GeneratedRegex(@"Now listening on: (?<url>http://\S+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex ListeningLine { get; }
}
