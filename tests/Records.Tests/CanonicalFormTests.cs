using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Records.Canonical;

namespace Records.Tests;

public class CanonicalFormTests
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    [Fact]
    public void The_form_is_as_described()
    {
        const string body =
            """
            { "recordId": "a\"\\\u002f\u00e9\ud83d\ude00", "jobType": "repair", "jurisdiction": "GB-WLS", "finishedAt": "2026-09-14t10:25:00.50z",
              "startedAt": null, "appliance": { "fuel": "butane", "installedOn": "2021-06-02", "condensing": true, "ratedInputKw": 26.0, "model": null },
              "combustion": { "readings": [ { "coPpm": 1e2, "flueTemperatureC": -0.0 }, {} ] }, "premises": {}, "partsFitted": [],
              "makerLimits": { "coCo2RatioMax": 40E-4, "sealsToRenew": [ "oRing" ] } }
            """;
        const string canonical =
            """
            {"appliance":{"condensing":true,"fuel":"butane","installedOn":"2021-06-02","ratedInputKw":26},
            "combustion":{"readings":[{"coPpm":100,"flueTemperatureC":0},{}]},"finishedAt":"2026-09-14t10:25:00.50z","jobType":"repair",
            "jurisdiction":"GB-WLS","makerLimits":{"coCo2RatioMax":0.004,"sealsToRenew":["topPlate"]},"partsFitted":[],"premises":{},"recordId":"a\"\\/é😀"}
            """;
        Assert.Equal(canonical.ReplaceLineEndings(""), Canonical(body.Replace("oRing", "topPlate", StringComparison.Ordinal)));
    }

    /// <summary>The hash was worked out by another program (Python 3: json with parse_float=Decimal, hashlib) from the published steps.</summary>
    [Fact]
    public void An_outsider_gets_the_same_hash() => Assert.Equal(
        "227614f7fe9e8f0b875ec731abe533c59a47a9e7bee5fdc376959ec03eadbbd9",
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Canonical(Bodies.Example)))));

    [Fact]
    public void Spacing_member_order_and_number_format_do_not_count()
    {
        var expected = Canonical(Bodies.Example);
        Assert.Equal(expected, Canonical(JsonNode.Parse(Bodies.Example)!.ToJsonString()));
        Assert.Equal(expected, Canonical(JsonNode.Parse(Bodies.Example)!.ToJsonString(Indented)));
        Assert.Equal(expected, Canonical(Reversed(JsonNode.Parse(Bodies.Example))!.ToJsonString()));
        foreach (var same in (string[])["4.50", "45e-1", "0.45E1", "4.5000000000000000000000000000000000"])
        {
            Assert.Equal(expected, Canonical(Bodies.With("/combustion/readings/0/o2Percent", same)));
        }

        Assert.NotEqual(expected, Canonical(Bodies.With("/combustion/readings/0/o2Percent", "4.500000000000000000000000001")));
        Assert.NotEqual(expected, Canonical(Bodies.With("/finishedAt", "\"2026-09-14T10:25:00.0+01:00\"")));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_record_comes_back_from_its_canonical_form(bool full)
    {
        var canonical = Canonical(full ? Bodies.Full : Bodies.Example);
        Assert.Equal(canonical, Canonical(canonical));
        Assert.True(full || JsonNode.DeepEquals(JsonNode.Parse(canonical), JsonNode.Parse(Bodies.Example)));
    }

    /// <summary>de-DE writes a decimal comma, tr-TR has the dotless i, ar-SA and fa-IR have other calendars and digits.</summary>
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("fa-IR")]
    public void No_culture_changes_what_is_read_written_or_said(string culture)
    {
        var faulty = Bodies.With("/combustion/readings/0/coPpm", "-1.5").Replace("\"2021-06-02\"", "\"2021-13-02\"", StringComparison.Ordinal).Replace("\"recordId\"", "\"recordİd\"", StringComparison.Ordinal);
        var expected = Outcome();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new CultureInfo(culture);
            Assert.NotEqual("09/14/2026 00:00:00", new DateTime(2026, 9, 14).ToString(CultureInfo.CurrentCulture));
            Assert.Equal(expected, Outcome());
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }

        (string, string) Outcome() => (Canonical(Bodies.Full), string.Join('\n', Bodies.Read(faulty).Faults));
    }

    private static string Canonical(string body) => Encoding.UTF8.GetString(CanonicalForm.Write(Bodies.Read(body).Record!));

    private static JsonNode? Reversed(JsonNode? node) => node switch
    {
        JsonObject section => new JsonObject(section.Reverse().Select(m => KeyValuePair.Create(m.Key, Reversed(m.Value)))),
        JsonArray list => new JsonArray([.. list.Select(Reversed)]),
        _ => node?.DeepClone(),
    };
}
