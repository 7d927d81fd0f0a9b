using System.Text.Json.Nodes;
using Records;
using Records.Members;
using Records.Metadata;
using Wire;

namespace Api.Tests.Contract;

/// <summary>Every schema of the document is described and bounded, wherever it stands.</summary>
public sealed class DocumentTests
{
    private static IEnumerable<(string Place, JsonObject Schema)> Schemas => Under(PublishedContract.V1.Document, "#").Where(found => IsSchema(found.Schema));

    [Fact]
    public void Every_member_is_described()
    {
        var members = Schemas.Where(found => found.Schema["properties"] is JsonObject)
            .SelectMany(found => found.Schema["properties"]!.AsObject().Select(member => (Place: $"{found.Place}/{member.Key}", Description: member.Value!["description"])))
            .ToList();

        Assert.True(members.Count > 300);
        Assert.Empty(members.Where(member => string.IsNullOrWhiteSpace(member.Description?.GetValue<string>())).Select(member => member.Place));
    }

    [Fact]
    public void Every_text_and_list_and_whole_number_is_bounded()
    {
        Assert.Empty(Schemas.Where(found => TypeOf(found.Schema) == "string" && found.Schema["enum"] is null && found.Schema["maxLength"] is null).Select(found => found.Place));
        Assert.Empty(Schemas.Where(found => TypeOf(found.Schema) == "array" && found.Schema["maxItems"] is null).Select(found => found.Place));
        Assert.Empty(Schemas.Where(found => TypeOf(found.Schema) == "integer" && (found.Schema["minimum"] is null || found.Schema["maximum"] is null)).Select(found => found.Place));
    }

    [Fact]
    public void A_number_of_the_record_has_a_unit_and_every_number_is_a_decimal()
    {
        var numbers = Schemas.Where(found => TypeOf(found.Schema) == "number").ToList();

        Assert.True(numbers.Count > 80);
        Assert.All(numbers, found => Assert.Equal("decimal", found.Schema["format"].Text()));
        Assert.Equal([], numbers.Where(found => found.Schema["x-ask"] is not null && found.Schema["x-unit"] is null).Select(found => found.Place));
    }

    [Fact]
    public void Every_member_of_the_record_has_one_class_in_both_documents() => Assert.All(
        new[] { PublishedContract.V1.Document, JsonNode.Parse(File.ReadAllText(Path.Combine(Repository.Root, "openapi", "v1-3.0.json")))! }, document =>
        {
            var sections = RecordMembers.All.Where(member => member.IsSection).Select(member => member.ClrType).Append(typeof(ServiceRecord)).Distinct();
            Assert.All(sections, section =>
            {
                var schema = document["components"]!["schemas"]![section.Name]!;
                Assert.Equal(schema["properties"]!.AsObject().Select(member => member.Key), schema["x-member-class"]!.AsObject().Select(member => member.Key));
                Assert.All(schema["x-member-class"]!.AsObject(), member => Assert.Contains(member.Value.Text(), WireNames.OfValues(typeof(MemberClass))));
            });
            Assert.All(WireNames.OfValues(typeof(MemberClass)), name => Assert.Matches($@"\b{name} \(\d+ members\): ", document["info"]!["description"].Text()));
        });

    [Fact]
    public void Every_value_of_an_enumeration_is_explained() => Assert.All(
        Schemas.Where(found => WordsOf(found.Schema) is not null && found.Place.StartsWith("#/components/schemas/", StringComparison.Ordinal)),
        found => Assert.All(WordsOf(found.Schema)!, value =>
            Assert.True(found.Schema["description"].Text().Contains($"- {value.Text()}: ", StringComparison.Ordinal), $"{found.Place} {value}")));

    /// <summary>A client that was generated from the document reads an answer with a word of a later version, and sends none that is refused.</summary>
    [Fact]
    public void Words_of_answers_are_open_and_words_of_requests_closed()
    {
        var components = PublishedContract.V1.Document["components"]!["schemas"]!.AsObject();
        var sent = Reached(PublishedContract.V1.Operations.SelectMany(operation => operation.Parameters.Select(one => one["schema"]).Concat(operation.Body?.Select(body => body.Value!["schema"]) ?? [])), components);
        var answered = Reached(PublishedContract.V1.Operations.SelectMany(operation => operation.Responses.SelectMany(answer => answer.Value!["content"]?.AsObject().Select(body => body.Value!["schema"]) ?? [])), components);

        Assert.Contains("JobType", sent);
        Assert.Contains("Evaluation", answered);
        Assert.All(sent, name => Assert.DoesNotContain(Under(components[name], name), found => found.Schema["x-extensible-enum"] is JsonArray));

        // The record is read back as it was posted.
        Assert.All(answered.Except(sent), name => Assert.DoesNotContain(Under(components[name], name), found => found.Schema["enum"] is JsonArray || (found.Schema["$ref"] is { } to && components[NameOf(to)]!["enum"] is not null)));
    }

    private static HashSet<string> Reached(IEnumerable<JsonNode?> from, JsonObject components)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var waiting = new Stack<JsonNode?>(from);
        while (waiting.TryPop(out var node))
        {
            foreach (var name in Under(node, "").Where(found => found.Schema["$ref"] is not null).Select(found => NameOf(found.Schema["$ref"]!)).Where(reached.Add))
                waiting.Push(components[name]);
        }

        return reached;
    }

    private static string NameOf(JsonNode reference) => reference.Text().Split('/')[^1];

    private static JsonArray? WordsOf(JsonObject schema) => (schema["enum"] ?? schema["x-extensible-enum"]) as JsonArray;

    [Fact]
    public void Nothing_is_nullable_and_nothing_is_a_union() => Assert.All(
        Schemas, found => Assert.False(found.Schema["type"] is JsonArray || new[] { "oneOf", "anyOf", "allOf" }.Any(found.Schema.ContainsKey), found.Place));

    /// <summary>Except pages for people, which are made anew with every word that changes.</summary>
    [Fact]
    public void Every_body_and_every_answer_of_success_is_shown_by_an_example()
    {
        var contents = PublishedContract.V1.Operations.SelectMany(operation => operation.Responses
            .Where(response => response.Key[0] == '2')
            .Select(response => (Place: $"{operation.Id} {response.Key}", Contents: response.Value!["content"]?.AsObject()))
            .Append((Place: $"{operation.Id} body", Contents: operation.Body))).ToList();

        Assert.Equal([], contents.SelectMany(one => (one.Contents ?? []).Where(content => content.Key is not ("text/html" or "text/plain") && content.Value!["examples"] is not JsonObject { Count: > 0 })
            .Select(content => $"{one.Place} {content.Key}: add a request to examples.json")));
    }

    private static bool IsSchema(JsonObject node) => node["type"] is not null && node["in"] is null && node["detail"] is null && node["href"] is null;

    private static string? TypeOf(JsonObject schema) => (schema["type"] as JsonValue)?.GetValue<string>();

    private static IEnumerable<(string Place, JsonObject Schema)> Under(JsonNode? node, string place)
    {
        if (node is JsonObject members)
        {
            yield return (place, members);
            foreach (var (name, value) in members.Where(member => member.Key is not ("examples" or "example" or "default")))
            {
                foreach (var found in Under(value, $"{place}/{name}"))
                    yield return found;
            }
        }
        else if (node is JsonArray items)
        {
            for (var i = 0; i < items.Count; i++)
            {
                foreach (var found in Under(items[i], $"{place}/{i}"))
                    yield return found;
            }
        }
    }
}
