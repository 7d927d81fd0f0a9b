using System.Net;
using Microsoft.Data.Sqlite;

namespace Api.Tests;

/// <summary>A store that is lost, replaced, mistyped or not to be written is said to be so, and one that was restored is there.</summary>
public sealed class LostStoreTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>, IDisposable
{
    private const string Loopback = "--urls=http://127.0.0.1:0";
    private const string Create = "--Store:Create=true";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("lost-");

    private string StoreFile => InFolder("store.db");

    private string Store => $"--Store:Path={StoreFile}";

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_store_that_is_deleted_or_replaced_while_it_runs_takes_nothing_and_is_not_ready(bool isReplaced)
    {
        using var running = new RunningService(Loopback, Store, Create);
        using var client = await running.Listening();
        await IsReady(client, HttpStatusCode.OK);
        if (isReplaced)
        {
            using var other = new RunningService(Loopback, $"--Store:Path={InFolder("other.db")}", Create);
            using var _ = await other.Listening();
            await other.Terminated();
            File.Move(InFolder("other.db"), StoreFile, overwrite: true);
        }
        else
        {
            foreach (var file in Directory.GetFiles(_folder.FullName, "store.db*"))
                File.Delete(file);
        }

        await IsReady(client, HttpStatusCode.ServiceUnavailable);
        Assert.Equal("/problems/store-unavailable", (await (await client.PostRecord(service.ExampleRecord)).Read(HttpStatusCode.ServiceUnavailable))["type"].Text());
        Assert.Equal(HttpStatusCode.ServiceUnavailable, (await client.PostAudit(service.ExampleRecord, later: true)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/health/live")).StatusCode);
        Assert.Equal(isReplaced, File.Exists(StoreFile));
    }

    [Fact]
    public async Task A_store_that_is_moved_away_and_back_is_the_store_again()
    {
        using var running = new RunningService(Loopback, Store, Create);
        using var client = await running.Listening();
        var posted = await client.PostRecord(service.ExampleRecord);

        File.Move(StoreFile, InFolder("away.db"));
        await IsReady(client, HttpStatusCode.ServiceUnavailable);
        File.Move(InFolder("away.db"), StoreFile);

        await IsReady(client, HttpStatusCode.OK);
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(posted.Headers.Location)).StatusCode);
    }

    [Fact]
    public async Task A_store_that_an_earlier_version_left_elsewhere_is_named_and_no_empty_one_made()
    {
        var root = Directory.CreateTempSubdirectory("earlier-");
        try
        {
            var before = Path.Combine(root.FullName, "src", "ComplianceApi", "data", "compliance.db");
            using (var old = new RunningService("keys", "add", "read", "--create", "--path", before))
                await old.Printed();

            using var refused = new RunningService(root, "--urls=http://127.0.0.1:0");
            var (exitCode, said) = await refused.Ended();

            Assert.Equal(1, exitCode);
            Assert.Equal(1, said.Trim().Count(c => c == '\n') + 1);
            Assert.Contains("src/ComplianceApi/data/compliance.db", said, StringComparison.Ordinal);
            Assert.False(Directory.Exists(Path.Combine(root.FullName, "data")));

            using var named = new RunningService(root, "--urls=http://127.0.0.1:0", "--Store:Path=src/ComplianceApi/data/compliance.db");
            using var client = await named.Listening();
            Assert.Equal(HttpStatusCode.Unauthorized, (await client.GetAsync("/v1/rules")).StatusCode);
        }
        finally
        {
            root.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task A_mistyped_path_makes_no_store()
    {
        using (var running = new RunningService(Loopback, Store))
        {
            var (exitCode, said) = await running.Ended();
            Assert.Equal(1, exitCode);
            Assert.Contains(StoreFile, said, StringComparison.Ordinal);
            Assert.Contains("Store:Create", said, StringComparison.Ordinal);
            Assert.Single(said.TrimEnd('\n').Split('\n'));
        }

        Assert.Empty(_folder.GetFileSystemInfos());
        using var created = new RunningService(Loopback, Store, Create);
        using var client = await created.Listening();
        await created.Terminated();
        Assert.Single(created.Logged.Split('\n'), line => line.Contains(StoreFile, StringComparison.Ordinal));
    }

    [Theory]
    [PostgreSql]
    public async Task A_mistyped_database_is_not_made_a_store(string kind)
    {
        Assert.Equal("postgresql", kind);
        var database = $"--Store:ConnectionString={PrivatePostgreSql.NewDatabase()}";
        using (var running = new RunningService(Loopback, database))
            Assert.Contains("Store:Create", (await running.Ended()).Said, StringComparison.Ordinal);

        foreach (var create in new[] { "true", "" })
        {
            using var running = new RunningService(Loopback, database, $"--Store:Create={create}");
            using var client = await running.Listening();
            await IsReady(client, HttpStatusCode.OK);
        }
    }

    [Theory]
    [InlineData("keys", "list")]
    [InlineData("keys", "add", "read")]
    [InlineData("keys", "revoke", "0123456789ab")]
    [InlineData("store", "export", "A")]
    [InlineData("store", "purge")]
    [InlineData("store", "backup", "copy.db")]
    public async Task No_command_makes_a_store_where_none_was_asked_for(params string[] command)
    {
        using var running = new RunningService([.. command, "--path", StoreFile]);

        var (exitCode, printed, said) = await running.Outcome();

        Assert.Equal((1, ""), (exitCode, printed));
        Assert.Contains(StoreFile, said, StringComparison.Ordinal);
        Assert.Empty(_folder.GetFileSystemInfos());
        Assert.False(File.Exists(running.StoreFile));
    }

    [Theory]
    [InlineData("keys", "list")]
    [InlineData("store", "export", "A")]
    public async Task A_command_that_reads_makes_no_store_in_the_usual_place_either(params string[] command)
    {
        using var running = new RunningService(command);

        Assert.Equal(1, (await running.Ended()).ExitCode);
        Assert.False(File.Exists(running.StoreFile));
    }

    [Fact]
    public async Task A_key_is_made_in_a_new_store_by_an_explicit_word()
    {
        using var add = new RunningService("keys", "add", "read", "--path", StoreFile, "--create");

        Assert.Matches("^[0-9a-f]{12}\\.", await add.Printed());
        using var running = new RunningService(Loopback, Store, "--Keys:Required=true");
        using var client = await running.Listening();
        Assert.Equal(HttpStatusCode.Unauthorized, (await client.GetAsync("/v1/audits")).StatusCode);
    }

    [Fact]
    public async Task Where_keys_are_required_it_does_not_start_without_one_on_loopback_either()
    {
        using var running = new RunningService(Loopback, Store, Create, "--Keys:Required=true");

        var (exitCode, said) = await running.Ended();

        Assert.Equal(1, exitCode);
        Assert.Matches("^[^\n]*no key is in use[^\n]*\n$", said);
    }

    [Theory]
    [InlineData("--Keys:Required=yes")]
    [InlineData("--Store:Create=1")]
    public async Task What_is_neither_true_nor_false_refuses_the_start(string setting)
    {
        using var running = new RunningService(Loopback, setting);

        var (exitCode, said) = await running.Ended();

        Assert.Equal(1, exitCode);
        Assert.Contains("neither true nor false", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_store_of_a_newer_version_refuses_the_start()
    {
        using (var made = new RunningService(Loopback, Store, Create))
        {
            using var client = await made.Listening();
            await made.Terminated();
        }

        await Execute(StoreFile, "INSERT INTO SchemaVersions (ScriptName, Applied) VALUES ('9001-of-a-newer-version.sql', '2030-01-01')");
        using var running = new RunningService(Loopback, Store);
        var (exitCode, said) = await running.Ended();

        Assert.Equal(1, exitCode);
        Assert.Contains("9001-of-a-newer-version.sql", said, StringComparison.Ordinal);
    }

    [SmallDiskFact]
    public async Task A_store_that_can_only_be_read_is_not_ready()
    {
        using (var made = new RunningService(Loopback, Store, Create))
        {
            using var client = await made.Listening();
            await made.Terminated();
        }

        using var readOnly = new ReadOnlyFile(StoreFile);
        using var running = new RunningService(Loopback, Store, "--Audits:Workers=0");
        using var reader = await running.Listening();

        await IsReady(reader, HttpStatusCode.ServiceUnavailable);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, (await reader.PostRecord(service.ExampleRecord)).StatusCode);
        await IsReady(reader, HttpStatusCode.ServiceUnavailable);
    }

    /// <summary>As the README of Operations says it: a backup while the service runs, a loss, the restore, and the service on what was restored.</summary>
    [Fact]
    public async Task A_backup_is_restored_beside_an_old_log_and_what_was_there_before_is_kept()
    {
        var backup = InFolder("backup.db");
        Uri before, after;
        using (var running = new RunningService(Loopback, Store, Create))
        {
            using var client = await running.Listening();
            before = (await client.PostRecord(service.ExampleRecord)).Headers.Location!;
            Assert.Equal(0, (await Run("store", "backup", backup, "--path", StoreFile)).ExitCode);
            after = (await client.PostRecord(service.ExampleRecord)).Headers.Location!;

            var (inUse, _, refused) = await Run("store", "restore", backup, "--path", StoreFile);
            Assert.Equal(1, inUse);
            Assert.Contains("in use", refused, StringComparison.Ordinal);
            running.Kill();
        }

        // Copied in by hand: the log of the old store lies beside it and would be played into it.
        Assert.True(File.Exists(StoreFile + "-wal"));
        var old = await File.ReadAllBytesAsync(StoreFile);
        File.Copy(backup, StoreFile, overwrite: true);
        using (var copied = new RunningService(Loopback, Store))
        {
            var (exitCode, said) = await copied.Ended();
            Assert.Equal(1, exitCode);
            Assert.Contains("store restore", said, StringComparison.Ordinal);
        }

        await File.WriteAllBytesAsync(StoreFile, old);
        var (restored, printed, complaint) = await Run("store", "restore", backup, "--path", StoreFile);
        Assert.True(restored == 0, complaint);
        Assert.Contains("1 evaluation", printed, StringComparison.Ordinal);
        using (var running = new RunningService(Loopback, Store))
        {
            using var client = await running.Listening();
            Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(before)).StatusCode);
            Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync(after)).StatusCode);
            await IsReady(client, HttpStatusCode.OK);
        }

        var kept = Assert.Single(Directory.GetFiles(_folder.FullName, "store.db.before-*"), file => !file.EndsWith("-wal", StringComparison.Ordinal) && !file.EndsWith("-shm", StringComparison.Ordinal));
        using (var running = new RunningService(Loopback, $"--Store:Path={kept}"))
        {
            using var client = await running.Listening();
            Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(after)).StatusCode);
        }
    }

    [Fact]
    public async Task What_is_no_whole_backup_is_not_restored()
    {
        using (var running = new RunningService(Loopback, Store, Create))
        {
            using var client = await running.Listening();
            for (var number = 0; number < 20; number++)
                await client.PostRecord(service.ExampleRecord);
            Assert.Equal(0, (await Run("store", "backup", InFolder("whole.db"), "--path", StoreFile)).ExitCode);
            await running.Terminated();
        }

        var whole = await File.ReadAllBytesAsync(InFolder("whole.db"));
        await File.WriteAllBytesAsync(InFolder("cut.db"), whole[..(whole.Length / 2)]);
        var spoilt = whole.ToArray();
        Array.Fill(spoilt, (byte)0x5A, whole.Length / 2, 20000);
        await File.WriteAllBytesAsync(InFolder("spoilt.db"), spoilt);
        await File.WriteAllTextAsync(InFolder("text.db"), new string('x', 5000));
        await Execute(InFolder("other.db"), "CREATE TABLE notes (line TEXT)");
        var store = await File.ReadAllBytesAsync(StoreFile);

        foreach (var name in new[] { "cut.db", "spoilt.db", "text.db", "other.db", "nothing.db", "store.db" })
        {
            var (exitCode, _, said) = await Run("store", "restore", InFolder(name), "--path", StoreFile);
            Assert.True(exitCode == 1, name);
            Assert.Single(said.TrimEnd('\n').Split('\n'));
        }

        Assert.Equal(store, await File.ReadAllBytesAsync(StoreFile));
        Assert.False(File.Exists(InFolder("nothing.db")));
    }

    private string InFolder(string name) => Path.Combine(_folder.FullName, name);

    private static async Task IsReady(HttpClient client, HttpStatusCode expected) => Assert.Equal(expected, (await client.GetAsync("/health/ready")).StatusCode);

    private static async Task<(int ExitCode, string Printed, string Said)> Run(params string[] arguments)
    {
        using var running = new RunningService(arguments);
        return await running.Outcome();
    }

    private static async Task Execute(string file, string sql)
    {
        await using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync();
    }
}
