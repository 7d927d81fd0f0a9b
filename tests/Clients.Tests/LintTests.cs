using System.Text.Json.Nodes;
using Xunit.Abstractions;

namespace Clients.Tests;

/// <summary>The documents by the rules of others, and against what was published before.</summary>
public sealed class LintTests(NodeTools tools, ITestOutputHelper told) : IClassFixture<NodeTools>
{
    [Theory]
    [InlineData("npx spectral lint v1.json v1-3.0.json --ruleset spectral.yaml --fail-severity warn")]
    [InlineData("npx redocly lint v1.json v1-3.0.json --config redocly.yaml")]
    public Task The_documents_are_sound(string command) => Shell.Run(tools.Folder, command);

    [Fact]
    public async Task Nothing_that_was_released_is_taken_back()
    {
        const string Compare = "npx redocly diff released/v1.json v1.json --config redocly.yaml --skip-rule enum-values-added --skip-rule required-properties-removed";
        var said = (await Shell.Run(tools.Folder, $"if {Compare} > said.txt 2>&1; then echo sound; else cat said.txt; fi")).TrimEnd();

        Hold("sound", said);
    }

    /// <summary>Until then nobody can rest on the contract, so that a broken promise is told and fails nothing. The first tag ends that.</summary>
    [Fact]
    public async Task The_contract_counts_as_released_from_the_first_tag_on() =>
        Assert.Equal(await Shell.Run(Shell.Repository, "git tag --list 'v[0-9]*'") != "", IsReleased);

    /// <summary>
    /// What a body need no longer give refuses nobody who still gives it, and the comparison of documents cannot tell a body from the record that is
    /// read back as it was posted. Hence this in place of its rule: no answer of our own has lost a member that it must have.
    /// </summary>
    [Fact]
    public void Only_the_fuel_of_a_record_need_no_longer_be_given()
    {
        var (released, today) = (Required("released/v1.json"), Required("v1.json"));
        Assert.NotEmpty(released);
        Hold(
            "Appliance: fuel",
            string.Join('\n', released.Where(one => today.ContainsKey(one.Key)).Select(one => (one.Key, Lost: one.Value.Except(today[one.Key]).ToList()))
                .Where(one => one.Lost.Count > 0).Select(one => $"{one.Key}: {string.Join(", ", one.Lost)}")));
    }

    /// <summary>
    /// A client that was generated from the released document reads no value that it does not know, but for what a record may newly say: that is
    /// read back as it was posted, and the comparison of documents cannot tell it from an answer of our own. Hence this in place of its rule. One
    /// value of an answer is new, and a client that refuses it has to be generated anew: what is due before a boiler is used again.
    /// </summary>
    [Fact]
    public void Only_these_enumerations_have_gained_values()
    {
        var (released, today) = (Enumerations("released/v1.json"), Enumerations("v1.json"));
        Assert.NotEmpty(released);
        Hold(
            "DueKind: beforeUse\nJointPlace: meterUnion, isolationValve, pipework, testNipple",
            string.Join('\n', released.Where(one => today.ContainsKey(one.Key)).Select(one => (one.Key, Gained: today[one.Key].Except(one.Value).ToList()))
                .Where(one => one.Gained.Count > 0).Select(one => $"{one.Key}: {string.Join(", ", one.Gained)}")));
    }

    [Theory]
    [InlineData("s/\"coPpm\": {/\"coParts\": {/", "npx redocly diff v1.json changed.json --config redocly.yaml")]
    [InlineData("s/\"operationId\": \"getRule\"/\"operationId\": \"readRule\"/", "npx redocly diff v1.json changed.json --config redocly.yaml")]
    [InlineData("s/\"operationId\": \"getRule\"/\"operationId\": \"listRules\"/", "npx redocly lint changed.json --config redocly.yaml")]
    [InlineData("s/\"maxItems\": 50,//", "npx spectral lint changed.json --ruleset spectral.yaml --fail-severity warn")]
    public async Task An_unsound_document_is_noticed(string edit, string command)
    {
        var printed = await Shell.Run(tools.Folder, $"sed '{edit}' v1.json > changed.json; ! cmp -s v1.json changed.json; if {command} > said.txt 2>&1; then echo sound; else echo noticed; fi");

        Assert.Equal("noticed\n", printed);
    }

    private bool IsReleased => Document("released/v1.json")["info"]!["x-released"]!.GetValue<bool>();

    /// <summary>Holds the comparison with the released document to what is expected of it; of one that is not released yet it only tells.</summary>
    private void Hold(string expected, string found)
    {
        if (expected != found)
            told.WriteLine(found);
        if (IsReleased)
            Assert.Equal(expected, found);
    }

    private JsonNode Document(string name) => JsonNode.Parse(File.ReadAllText(Path.Combine(tools.Folder, name)))!;

    private Dictionary<string, List<string>> Required(string document) =>
        Document(document)["components"]!["schemas"]!.AsObject()
            .ToDictionary(schema => schema.Key, schema => (schema.Value!["required"]?.AsArray() ?? []).Select(value => (string)value!).ToList(), StringComparer.Ordinal);

    private Dictionary<string, List<string>> Enumerations(string document) =>
        Document(document)["components"]!["schemas"]!.AsObject()
            .Where(schema => schema.Value!["enum"] is not null)
            .ToDictionary(schema => schema.Key, schema => schema.Value!["enum"]!.AsArray().Select(value => (string)value!).ToList(), StringComparer.Ordinal);
}

/// <summary>The documents beside the pinned tools, in a folder outside of the repository.</summary>
public sealed class NodeTools : IAsyncLifetime
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("lint-");

    public string Folder => _folder.FullName;

    public async Task InitializeAsync() => await Shell.Run(Folder, "cp -r \"$REPOSITORY\"/openapi/{*.json,*.yaml,released} . && npm ci --no-audit --no-fund");

    public Task DisposeAsync()
    {
        _folder.Delete(recursive: true);
        return Task.CompletedTask;
    }
}
