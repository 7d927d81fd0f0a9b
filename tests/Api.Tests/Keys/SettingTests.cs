using System.Net;
using System.Net.Http.Headers;
using System.Text.RegularExpressions;
using Api.Tests.Contract;
using Microsoft.Data.Sqlite;
using Storage;
using Storage.Keys;

namespace Api.Tests.Keys;

/// <summary>Whatever of the settings is lost, emptied or mistyped, a service with keys that others can reach refuses or asks, and never opens.</summary>
public sealed partial class SettingTests : IDisposable
{
    private static readonly string[] Lost = ["", " ", "x"];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("settings-");

    private string StoreFile => Path.Combine(_folder.FullName, "compliance.db");

    /// <summary>Every setting that the host's code names.</summary>
    public static TheoryData<string> Settings => [.. SettingNames];

    /// <summary>Every column of the table of keys.</summary>
    public static TheoryData<string> Columns => [.. ColumnNames];

    private static string[] ColumnNames => ["key_id", "tenant", "hash", "scopes", "note", "created_at", "expires_at", "revoked_at"];

    private static IEnumerable<string> SettingNames => Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", "ComplianceApi"), "*.cs", SearchOption.AllDirectories)
        .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .SelectMany(file => Named.Matches(File.ReadAllText(file)).Select(match => match.Groups["name"].Value))
        .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void The_settings_are_found() => Assert.Superset(
        new HashSet<string>(["Proxy:Trusted", "Store:Path", "Store:ConnectionString", "Store:Create", "Keys:Required", "Limits:RequestsPerMinute", "Docs:Enabled"], StringComparer.Ordinal),
        SettingNames.ToHashSet(StringComparer.Ordinal));

    [Theory, MemberData(nameof(Settings))]
    public async Task A_lost_setting_opens_nothing(string name)
    {
        var key = await Add();
        await Task.WhenAll(Lost.Select(async value =>
        {
            using var running = new RunningService("--urls=http://0.0.0.0:0", $"--Store:Path={StoreFile}", $"--{name}={value}");
            HttpClient client;
            try
            {
                client = await running.Listening();
            }
            catch (InvalidOperationException refused)
            {
                Assert.NotEmpty(refused.Message);
                Assert.DoesNotContain("Unhandled exception", refused.Message, StringComparison.Ordinal);
                return;
            }

            Assert.Equal(HttpStatusCode.Unauthorized, await Status(client, key: null));
            Assert.True(await Status(client, key) is HttpStatusCode.OK or HttpStatusCode.Unauthorized);
            client.Dispose();
        }));
    }

    [Theory, MemberData(nameof(Columns))]
    public async Task An_emptied_column_of_the_keys_opens_nothing(string column)
    {
        using var service = new ServiceWithKeys();
        var key = await service.NewKey("a", KeyScope.Read);
        await Execute(service.Inner.StorePath, $"UPDATE api_keys SET {column} = ''");
        await ServiceWithKeys.Seen();

        Assert.Equal(HttpStatusCode.Unauthorized, await Status(service.Nobody, key: null));
        Assert.Equal(column is "note" or "created_at", await Status(service.Nobody, key) == HttpStatusCode.OK);
    }

    [Fact]
    public async Task The_columns_are_all_there_are()
    {
        await Add();
        await using var connection = new SqliteConnection($"Data Source={StoreFile}");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = "SELECT name FROM pragma_table_info('api_keys')";
        await using var reader = await command.ExecuteReaderAsync();
        var names = new List<string>();
        while (await reader.ReadAsync())
            names.Add(reader.GetString(0));

        Assert.Equal(names, ColumnNames);
    }

    [Theory]
    [InlineData("DELETE FROM api_keys", HttpStatusCode.Unauthorized)]
    [InlineData("DROP TABLE api_keys", HttpStatusCode.ServiceUnavailable)]
    public async Task Keys_that_vanish_from_the_store_open_nothing(string sql, HttpStatusCode expected)
    {
        using var service = new ServiceWithKeys();
        var key = await service.KeyOf("a", KeyScope.Read);
        Assert.Equal(HttpStatusCode.OK, await Status(service.Nobody, key));

        await Execute(service.Inner.StorePath, sql);
        await ServiceWithKeys.Seen();

        Assert.Equal(expected, await Status(service.Nobody, key));
        Assert.Equal(expected, await Status(service.Nobody, key: null));
        await (await service.Nobody.GetAsync("/health/live")).Read();
    }

    private async Task<string> Add()
    {
        using var database = Database.Open(StoreFile, StoreOpening.OrMake);
        return await new KeyStore(database).AddAsync(Tenant.Local, [KeyScope.Read], "", ServiceInProcess.Now, expiresAt: null, CancellationToken.None);
    }

    private static async Task<HttpStatusCode> Status(HttpClient client, string? key)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, new UriBuilder(client.BaseAddress!) { Host = client.BaseAddress!.Host == "localhost" ? "localhost" : "127.0.0.1", Path = "/v1/audits" }.Uri);
        if (key is not null)
            request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", key);
        return (await client.SendAsync(request)).StatusCode;
    }

    private static async Task Execute(string file, string sql)
    {
        await using var connection = new SqliteConnection($"Data Source={file}");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync();
    }

    [GeneratedRegex("\"(?<name>(Audits|Docs|Limits|Proxy|Requests|Rules|Store|Keys):[A-Za-z]+|OTEL_[A-Z_]+)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Named { get; }
}
