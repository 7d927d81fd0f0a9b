using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Reflection;
using Npgsql;
using Xunit.Sdk;

namespace Storage.Tests.Shared;

/// <summary>A PostgreSQL of these tests alone: started from the system's package on first use, in a folder of its own, ended with the process.</summary>
internal static class PrivatePostgreSql
{
    private static readonly Lazy<PostgreSqlServer> Server = new(() => new PostgreSqlServer());

    /// <summary>Where the package keeps its programs; null when it is not installed.</summary>
    public static string? Programs { get; } = Directory.Exists("/usr/lib/postgresql")
        ? Directory.GetDirectories("/usr/lib/postgresql").Select(version => Path.Combine(version, "bin")).Where(bin => File.Exists(Path.Combine(bin, "initdb"))).Order(StringComparer.Ordinal).LastOrDefault()
        : null;

    /// <summary>Makes an empty database; gives its connection string.</summary>
    public static string NewDatabase() => Server.Value.NewDatabase();
}

/// <summary>A PostgreSQL server that only its maker knows.</summary>
internal sealed class PostgreSqlServer
{
    private readonly string _data;
    private readonly string _options;
    private readonly string _connectionString;
    private int _databases;

    public PostgreSqlServer()
    {
        var folder = Directory.CreateTempSubdirectory("pg-").FullName;
        if (Environment.UserName == "root")
            Execute("chown", "postgres", folder);
        _data = Path.Combine(folder, "data");
        var port = FreePort();
        Call("initdb", "-D", _data, "-A", "trust", "-U", "tests", "-E", "UTF8", "--locale=C.UTF-8", "--no-sync");
        _options = $"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories={folder} -c fsync=off -c max_connections=200";
        _connectionString = $"Host=127.0.0.1;Port={port};Username=tests;Database=postgres";
        Start();
        AppDomain.CurrentDomain.ProcessExit += (_, _) =>
        {
            try
            {
                Stop();
            }
            catch (InvalidOperationException)
            {
                // A test has stopped it already. An exception here would leave the servers of others running.
            }

            Directory.Delete(folder, recursive: true);
        };
    }

    /// <summary>Makes an empty database; gives its connection string.</summary>
    public string NewDatabase()
    {
        var name = $"test{Interlocked.Increment(ref _databases)}";
        using var connection = new NpgsqlConnection(_connectionString);
        connection.Open();
        using var command = new NpgsqlCommand($"CREATE DATABASE {name}", connection);
        command.ExecuteNonQuery();
        return new NpgsqlConnectionStringBuilder(_connectionString) { Database = name, MaxPoolSize = 20 }.ToString();
    }

    public void Start() => Run("start");

    /// <summary>At once, as a failure would.</summary>
    public void Stop() => Run("stop");

    private void Run(string action) => Call("pg_ctl", "-D", _data, "-l", _data + ".log", "-w", "-m", "immediate", "-o", _options, action);

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    /// <summary>PostgreSQL refuses to run as root; the package brings a user for it.</summary>
    private static void Call(string program, params string[] arguments)
    {
        string[] command = [Path.Combine(PrivatePostgreSql.Programs ?? throw new InvalidOperationException("PostgreSQL is not installed: apt-get install postgresql."), program), .. arguments];
        if (Environment.UserName == "root")
            command = ["runuser", "-u", "postgres", "--", .. command];
        Execute(command[0], command[1..]);
    }

    private static void Execute(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { UseShellExecute = false, WorkingDirectory = "/tmp" })!;
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}.");
    }
}

/// <summary>Runs a theory on PostgreSQL too. Where that is not installed it is reported as skipped; in CI it fails.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class PostgreSqlAttribute : DataAttribute
{
    public PostgreSqlAttribute()
    {
        if (PrivatePostgreSql.Programs is null && Environment.GetEnvironmentVariable("CI") != "true")
            Skip = "PostgreSQL is not installed (apt-get install postgresql).";
    }

    public override IEnumerable<object[]> GetData(MethodInfo testMethod) => [["postgresql"]];
}
