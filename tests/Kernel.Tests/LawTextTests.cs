using System.Globalization;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using Kernel.Catalogues;
using Rules;

namespace Kernel.Tests;

/// <summary>The law hash goes with every word and number that the rules demand, and with nothing else.</summary>
public sealed class LawTextTests
{
    /// <summary>What differs from <see cref="AsItIs"/> in one thing.</summary>
    public static TheoryData<Type> Others => [.. typeof(LawTextTests).GetNestedTypes().Where(type => type != typeof(AsItIs))];

    /// <summary>Every member of every line, but for the reason of a day; a document of another id is another one, which rules cannot cite.</summary>
    public static IEnumerable<object[]> Members =>
        from file in new[] { "limits.json", "references.json", "rule-set.json" }
        let text = JsonNode.Parse(Read(file))!
        from member in (text is JsonArray lines ? lines.SelectMany(line => line!.AsObject()) : text.AsObject()).Select(member => member.Key).Distinct()
        where member is not ("knownFromBecause" or "cautions" or "deployersTables" or "usualJurisdiction" or "clauses" or "editions") && (file, member) is not ("references.json", "id")
        select new object[] { file, member };

    [Theory]
    [MemberData(nameof(Others))]
    public void Another_word_of_a_rule_is_another_law(Type other) => Assert.NotEqual(HashOf(typeof(AsItIs)), HashOf(other));

    [Theory]
    [MemberData(nameof(Members))]
    public void Another_member_of_a_file_is_another_law(string file, string member) => Assert.NotEqual(Samples.Catalogue.Info.LawHash, HashOf(file, text =>
    {
        var line = text is JsonArray lines ? lines.Select(one => one!.AsObject()).First(one => one.ContainsKey(member)) : text.AsObject();
        line[member] = Other(line[member]!);
    }));

    [Theory]
    [InlineData("clauses", "subject")]
    [InlineData("clauses", "clause")]
    [InlineData("clauses", "notAutomatable")]
    [InlineData("editions", "edition")]
    [InlineData("editions", "inForceFrom")]
    public void Another_word_of_a_document_is_another_law(string list, string member) => Assert.NotEqual(Samples.Catalogue.Info.LawHash, HashOf("references.json", text =>
    {
        var entry = text.AsArray().SelectMany(document => document![list]?.AsArray() ?? []).Select(one => one!.AsObject()).First(one => one.ContainsKey(member));
        entry[member] = Other(entry[member]!);
    }));

    [Theory]
    [InlineData("limits.json")]
    [InlineData("references.json")]
    public void The_order_of_a_file_and_of_its_members_is_not_part_of_the_law(string file) =>
        Assert.Equal(Samples.Catalogue.Info.LawHash, HashOf(file, text => Turn(text)));

    [Fact]
    public void The_spelling_of_a_number_is_not_part_of_the_law() => Assert.Equal(Samples.Catalogue.Info.LawHash, HashOf("limits.json", text =>
    {
        foreach (var line in text.AsArray().Where(line => line!["max"] is not null))
            line!["max"] = JsonNode.Parse($"{line["max"]!.GetValue<decimal>()}{(line["max"]!.ToJsonString().Contains('.') ? "00" : ".00")}");
    }));

    [Fact]
    public void The_order_of_the_rules_is_not_part_of_the_law() => Assert.Equal(
        LawText.Of(Samples.Catalogue.Header, Samples.Catalogue.Rules.Select(rule => rule.Info), Samples.Catalogue.Limits, Samples.Catalogue.References),
        LawText.Of(Samples.Catalogue.Header, Samples.Catalogue.Rules.Reverse().Select(rule => rule.Info), Samples.Catalogue.Limits, Samples.Catalogue.References));

    [Fact]
    public void A_row_says_of_itself_what_a_class_does() => Assert.Equal(HashOf(typeof(AsItIs)), HashOf(typeof(ATable).GetProperty(nameof(ATable.Row))!));

    private static string HashOf(MemberInfo rule) =>
        LawText.HashOf(Samples.Catalogue.Header, [RuleInfo.Of(rule)], Samples.Catalogue.Limits, Samples.Catalogue.References);

    private static string HashOf(string file, Action<JsonNode> change)
    {
        var text = JsonNode.Parse(Read(file))!;
        change(text);
        var changed = text.ToJsonString();
        return LawText.HashOf(
            file == "rule-set.json" ? Parse<RuleSetHeader>(changed) : Samples.Catalogue.Header,
            Samples.Catalogue.Rules.Select(rule => rule.Info),
            file == "limits.json" ? new LimitBook(Parse<List<LimitDefinition>>(changed)) : Samples.Catalogue.Limits,
            file == "references.json" ? new ReferenceBook(Parse<List<ReferenceDocument>>(changed), [.. Samples.Catalogue.Rules.Select(rule => rule.Info)]) : Samples.Catalogue.References);
    }

    private static T Parse<T>(string json) => JsonSerializer.Deserialize<T>(json, CatalogueJson.Options)!;

    private static byte[] Read(string file) => typeof(RuleIds).Assembly.ReadResource(file);

    /// <summary>A value of the same kind that nobody wrote there.</summary>
    private static JsonNode Other(JsonNode value) => value.GetValueKind() switch
    {
        JsonValueKind.Number => value.GetValue<decimal>() + 0.001m,
        JsonValueKind.True => false,
        JsonValueKind.False => true,
        JsonValueKind.Array => new JsonArray([.. value.AsArray().Skip(1).Select(item => item!.DeepClone())]),
        _ => value.GetValue<string>() switch
        {
            "law" => "standard",
            "standard" => "law",
            "practice" => "proposal",
            "narrower" or "neither" => "wider",
            "wider" => "neither",
            var text when DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) => day.AddDays(1).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            var text => text + " and more",
        },
    };

    /// <summary>Turns every list and the members of every object round.</summary>
    private static JsonNode Turn(JsonNode node)
    {
        if (node is JsonArray list)
        {
            var items = list.ToList();
            list.Clear();
            foreach (var item in Enumerable.Reverse(items))
                list.Add(Turn(item!));
        }
        else if (node is JsonObject members)
        {
            var all = members.ToList();
            members.Clear();
            foreach (var (name, value) in Enumerable.Reverse(all))
                members.Add(name, value is null ? null : Turn(value));
        }

        return node;
    }

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type")]
    public sealed class AsItIs;

    [Topic("flue")]
    private static class ATable
    {
        [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type")]
        public static int Row => 0;
    }

    [Id("b-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type")]
    public sealed class OtherId;

    [Id("a-rule"), Title("A thing is not so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type")]
    public sealed class OtherTitle;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("water"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type")]
    public sealed class OtherTopic;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(1)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type")]
    public sealed class OtherClause;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Cites("GSIUR-1998", "26(1)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type")]
    public sealed class OneCitationMore;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), CommonPractice, Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type")]
    public sealed class CommonPracticeToo;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.MayOverReport, "it is seen"), AppliesBy("/flue/type")]
    public sealed class OtherCoverage;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is heard"), AppliesBy("/flue/type")]
    public sealed class OtherWhy;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/jobType")]
    public sealed class OtherAppliesBy;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type"), Expects("/defects")]
    public sealed class OtherExpects;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type"), InForce(From = "2018-04-06")]
    public sealed class OtherFirstDay;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type"), InForce(To = "2030-04-06")]
    public sealed class OtherLastDay;
}
