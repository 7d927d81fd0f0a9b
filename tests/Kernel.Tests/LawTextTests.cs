using System.Globalization;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using Findings;
using Kernel.Catalogues;
using Rules;
using Visits;

namespace Kernel.Tests;

/// <summary>The law hash goes with every word and number that the rules demand, and with nothing else.</summary>
public sealed class LawTextTests
{
    /// <summary>What differs from <see cref="AsItIs"/> in one thing.</summary>
    public static TheoryData<Type> Others => [.. typeof(LawTextTests).GetNestedTypes().Where(type => type != typeof(AsItIs))];

    /// <summary>Every member of every line, but for the reason of a day; a document of another id is another one, which rules cannot cite.</summary>
    public static IEnumerable<object[]> Members =>
        from file in new[] { "limits.json", "references.json", "rule-set.json", "duties.json" }
        let text = JsonNode.Parse(Read(file))!
        from member in (text is JsonArray lines ? lines.SelectMany(line => line!.AsObject()) : text.AsObject()).Select(member => member.Key).Distinct()
        where member is not ("knownFromBecause" or "cautions" or "deployersTables" or "usualJurisdiction" or "clauses" or "editions") && (file, member) is not ("references.json", "id")
        select new object[] { file, member };

    [Theory]
    [MemberData(nameof(Others))]
    public void Another_word_of_a_rule_is_another_law(Type other) =>
        Assert.Equal(HashOf(other), Assert.Single(typeof(LawTextTests).GetNestedTypes().Select(HashOf), hash => hash == HashOf(other)));

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

    /// <summary>Every member of every row, and every word beside them.</summary>
    public static TheoryData<string> Reasons
    {
        get
        {
            var reasons = JsonNode.Parse(Read("reasons.json"))!.AsObject();
            return [.. reasons.SelectMany(member => member.Value is JsonArray rows
                ? rows.SelectMany(row => row!.AsObject()).Select(one => $"{member.Key}/{one.Key}").Distinct()
                : [member.Key])];
        }
    }

    [Theory]
    [MemberData(nameof(Reasons))]
    public void Another_word_of_a_reason_is_another_law(string place) => Assert.NotEqual(Samples.Catalogue.Info.LawHash, HashOf("reasons.json", text =>
    {
        var line = place.Split('/') is [var list, var member] ? text[list]!.AsArray().Select(one => one!.AsObject()).First(one => one.ContainsKey(member)) : text.AsObject();
        var name = place.Split('/')[^1];
        line[name] = line[name] is JsonObject words ? new JsonObject(words.Skip(1).Select(word => KeyValuePair.Create(word.Key, word.Value?.DeepClone()))) : Other(line[name]!);
    }));

    /// <summary>What differs from <see cref="Calling"/> in one thing.</summary>
    public static TheoryData<string> OtherCalls => ["weight", "putOff", "part", "one more", "fewer", "condition", "no condition", "pointer", "called by"];

    [Theory]
    [MemberData(nameof(OtherCalls))]
    public void Another_call_is_another_law(string what)
    {
        Call<Visit> call = new(Weight.Must, [Part.Flue, Part.Air]);
        var asItIs = new Calling("/jobType", call.Only("it is so", _ => true, "/flue"));

        Assert.Equal(HashOf(asItIs), HashOf(new Calling("/jobType", call.Only("it is so", _ => false, "/flue"))));
        Assert.NotEqual(HashOf(asItIs), HashOf(what switch
        {
            "weight" => new Calling("/jobType", new Call<Visit>(Weight.Should, call.Parts).Only("it is so", _ => true, "/flue")),
            "putOff" => new Calling("/jobType", new Call<Visit>(weight: null, call.Parts).Only("it is so", _ => true, "/flue")),
            "part" => new Calling("/jobType", new Call<Visit>(Weight.Must, [Part.Flue, Part.Draught]).Only("it is so", _ => true, "/flue")),
            "one more" => new Calling("/jobType", call.Only("it is so", _ => true, "/flue"), call),
            "fewer" => new Calling("/jobType"),
            "condition" => new Calling("/jobType", call.Only("it is not so", _ => true, "/flue")),
            "no condition" => new Calling("/jobType", call),
            "pointer" => new Calling("/jobType", call.Only("it is so", _ => true, "/water")),
            _ => new Calling("/work", call.Only("it is so", _ => true, "/flue")),
        }));
    }

    /// <summary>What a rule of the duties or of the situation says of itself is part of the law as what a demand says.</summary>
    [Fact]
    public void Without_any_one_rule_of_any_set_it_is_another_law() => Assert.All(
        Samples.Catalogue.All, rule => Assert.NotEqual(Samples.Catalogue.Info.LawHash, LawText.HashOf(Samples.Catalogue.Law with { Rules = [.. Samples.Catalogue.Law.Rules.Where(info => info != rule.Info)] })));

    [Theory]
    [InlineData("limits.json")]
    [InlineData("references.json")]
    [InlineData("duties.json")]
    [InlineData("reasons.json")]
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
        LawText.Of(Samples.Catalogue.Law),
        LawText.Of(Samples.Catalogue.Law with { Rules = [.. Samples.Catalogue.Law.Rules.Reverse()] }));

    [Fact]
    public void A_row_says_of_itself_what_a_class_does() => Assert.Equal(HashOf(typeof(AsItIs)), HashOf(typeof(ATable).GetProperty(nameof(ATable.Row))!));

    private static string HashOf(MemberInfo rule) =>
        LawText.HashOf(Samples.Catalogue.Law with { Rules = [RuleInfo.Of(rule)] });

    private static string HashOf(DutyCallRule rule) => LawText.HashOf(Samples.Catalogue.Law with { Rules = [rule.Info], Calling = [rule] });

    private static string HashOf(string file, Action<JsonNode> change)
    {
        var text = JsonNode.Parse(Read(file))!;
        change(text);
        var changed = text.ToJsonString();
        var law = Samples.Catalogue.Law;
        return LawText.HashOf(file switch
        {
            "rule-set.json" => law with { Header = Parse<RuleSetHeader>(changed) },
            "limits.json" => law with { Limits = new LimitBook(Parse<List<LimitDefinition>>(changed)) },
            "duties.json" => law with { Duties = Parse<List<DutyKind>>(changed) },
            "reasons.json" => law with { Reasons = Parse<ReasonBook>(changed) },
            _ => law with { References = new ReferenceBook(Parse<List<ReferenceDocument>>(changed), [.. Samples.Catalogue.Rules.Select(rule => rule.Info)]) },
        });
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
            "fact" => "judgement",
            "bulletin" or "memory" => "taught",
            "narrower" or "neither" => "wider",
            "wider" => "neither",
            "must" => "should",
            "should" => "must",
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

    [Id("calling"), Title("it calls"), Topic("flue"), CommonPractice, Coverage(Coverage.Full, "it is seen")]
    private sealed class Calling(string pointer, params Call[] calls) : VisitCallRule<Visit>(pointer)
    {
        public override IReadOnlyList<Call> Calls => calls;

        protected override bool IsCalledBy(Visit visit) => true;
    }

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

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type"), Serves(Part.Flue)]
    public sealed class OneServing;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type"), Serves(Part.Air)]
    public sealed class OtherServing;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type"), Serves(Part.Flue, AtMost = Weight.Should)]
    public sealed class ServingLess;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type"), Serves(Part.Flue, Of = "/flue")]
    public sealed class ServingOfOne;

    [Id("a-rule"), Title("A thing is so"), Why("It is so. It matters"), Topic("flue"), Cites("GSIUR-1998", "26(9)"), Coverage(Coverage.Full, "it is seen"), AppliesBy("/flue/type"), AlsoRecordedAt("/flue")]
    public sealed class AlsoRecordedElsewhere;
}
