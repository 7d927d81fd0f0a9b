using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Records.Members;
using Records.Reading;
using Records.Validation;

namespace Records.Tests;

/// <summary>The fast way of reading and the thorough one must never disagree: what one takes, the other finds no fault in.</summary>
public class AgreementTests
{
    /// <summary>Raw JSON that may stand in place of any value: right for some members, wrong for most.</summary>
    private static readonly string[] Values =
    [
        "null", "true", "false", "0", "-0", "1", "-1", "0.5", "1e2", "1E+1", "1e-40", "1e400", "0e999999999999", "9.2000000000000000000000000000000",
        "79228162514264337593543950335", "79228162514264337593543950336", "\"\"", "\"x\"", "\" \"", "\"fan\"", "\"Fan\"", "\"naturalGas\"", "\"yes\"",
        "\"na\\u0074uralGas\"", "\"other\"", "\"none\"", "\"1\"", "\"true\"", "\"FA-1\"", "\"/flue\"", "\"2026-09-14\"", "\"2026-09-31\"",
        "\"2026-\\u003009-14\"", "\"2026-0\\u0039-14\"", "\"1899-01-01\"", "\"2026-09-14T10:25:00Z\"", "\"2026-09-14T10:25:00\"",
        "\"2026-09-14T10\\u003a25:00+01:00\"", "\"2026-09-14T24:00:00Z\"", "\"2026-09-14T10:25:60Z\"", "\"9999-12-31T23:59:59-14:00\"", "\"\\ud800\"", "\"\\ud83d\\ude00\"", "\"\\u0000\"",
        "\"\\u00e9\"", "{}", "[]", "[null]", "[{}]", "[[]]", "[\"fan\"]", "[\"fan\",null]", "[{\"coPpm\":1},null]", "{\"x\":1}", "{\"fuel\":\"propane\"}",
        "{\"fuel\":\"propane\",\"fuel\":\"butane\"}", "{\"fuel\":null}", "{\"coPpm\":null,\"coPpm\":null}", "[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]",
    ];

    private static readonly ServiceRecordValidator Validator = new();

    private static readonly string[] Names = ["x", "recordId", "RecordId", "fuel", "rate", "coPpm", "readings", "$id", "$type", "$ref", "", "a/b", "re\\u0063ordId", "\\ud800"];

    private static readonly byte[] Bytes = "{}[]\",:0-9.eE+ntf\\u \n\u007f"u8.ToArray().Concat(new byte[] { 0, 9, 0x80, 0xC3, 0xFF, 0xEF }).ToArray();

    private static readonly Gen<string> Mutated =
        from seed in Gen.OneOf(Bodies.Example, Bodies.Full)
        from edits in Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 5], Gen.OneOf(Values), Gen.OneOf(Names)).Array[1, 2]
        select edits.Aggregate(seed, (body, edit) => Edit(body, edit.Item1, edit.Item2, edit.Item3, edit.Item4));

    [Fact]
    public void Both_ways_agree_on_records_with_changed_members()
    {
        var (taken, refused) = (0, 0);
        Mutated.Sample(
            body =>
            {
                if (Agreed(Encoding.UTF8.GetBytes(body)))
                {
                    Interlocked.Increment(ref taken);
                }
                else
                {
                    Interlocked.Increment(ref refused);
                }
            },
            iter: 8_000);
        Assert.True(taken > 1_000 && refused > 1_000, $"{taken} taken, {refused} refused: the changes prove little.");
    }

    [Fact]
    public void Both_ways_agree_on_records_with_changed_bytes() =>
        Gen.Select(Gen.OneOf(Bodies.Example, Bodies.Full), Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 2], Gen.OneOf(Bytes)).Array[1, 2])
            .Select((body, edits) => edits.Aggregate(Encoding.UTF8.GetBytes(body), (bytes, edit) =>
            {
                var at = edit.Item1 % bytes.Length;
                return [.. bytes[..at], .. edit.Item2 == 0 ? [] : (byte[])[edit.Item3], .. bytes[(edit.Item2 == 2 ? at : at + 1)..]];
            }))
            .Sample(bytes => { _ = Agreed(bytes); }, iter: 8_000);

    [Fact]
    public void Both_seeds_are_right_records()
    {
        Assert.True(Agreed(Encoding.UTF8.GetBytes(Bodies.Example)));
        Assert.True(Agreed(Encoding.UTF8.GetBytes(Bodies.Full)));
        var absent = RecordMembers.All.Where(m => RecordValues.At(Bodies.Read(Bodies.Full).Record!, m.Pattern.Replace("*", "0", StringComparison.Ordinal)) is null);
        Assert.Equal(["/gasSupply/rate/volumeFt3"], absent.Select(m => m.Pattern));
    }

    private static bool Agreed(byte[] body)
    {
        var fast = RecordReader.ReadFast(body);
        if (Read(body) is { } read)
        {
            Assert.Equal(Validator.Validate(read).IsValid, Validator.IsSound(read));
        }

        var faults = FaultFinder.Find(body, Validator);
        Assert.True(fast is null == faults.Count > 0, $"fast {(fast is null ? "refuses" : "takes")}, thorough finds {faults.Count}: {Encoding.UTF8.GetString(body)}");
        return fast is not null;
    }

    /// <summary>What can be read of a body, sound or not; null when none of it can.</summary>
    private static ServiceRecord? Read(byte[] body)
    {
        try
        {
            return JsonSerializer.Deserialize(body, RecordJson.Default.ServiceRecord);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>Removes, adds, doubles, renames or changes the member or item that a number picks.</summary>
    private static string Edit(string body, int pick, int kind, string value, string name)
    {
        const string mark = "@@mark@@";
        if (TryParse(body) is not { } root)
        {
            return body;
        }

        var nodes = Descendants(root).ToList();
        if (nodes.Count == 0)
        {
            return body;
        }

        var (parent, key) = nodes[pick % nodes.Count];
        if (parent is JsonArray list)
        {
            var index = (int)key;
            if (kind == 0)
            {
                list.RemoveAt(index);
            }
            else
            {
                list.Insert(index + (kind % 2), mark);
            }
        }
        else if (parent is JsonObject section)
        {
            var member = (string)key;
            switch (kind)
            {
                case 0:
                    section.Remove(member);
                    break;
                case 1:
                    section[mark + name] = mark;
                    break;
                case 2:
                    section[mark + member] = mark;
                    break;
                case 3:
                    section[char.ToUpperInvariant(member.FirstOrDefault('x')) + member] = section[member]?.DeepClone();
                    break;
                case 4:
                    section[member] = section[member] is JsonValue old && old.GetValueKind() is JsonValueKind.Number ? 1 + (pick % 2000 / 100m) : null;
                    break;
                default:
                    section[member] = mark;
                    break;
            }
        }

        return root.ToJsonString().Replace($"\"{mark}\"", value, StringComparison.Ordinal).Replace(mark, "", StringComparison.Ordinal);
    }

    /// <summary>Null for what an earlier change left without one meaning (a member twice, half a surrogate pair); it stays as it is.</summary>
    private static JsonNode? TryParse(string body)
    {
        try
        {
            return body.Contains("\\ud800", StringComparison.Ordinal) ? null : JsonNode.Parse(body, documentOptions: new JsonDocumentOptions { AllowDuplicateProperties = false });
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static IEnumerable<(JsonNode Parent, object Key)> Descendants(JsonNode? node) => node switch
    {
        JsonObject section => section.SelectMany(m => Descendants(m.Value).Prepend((section, m.Key))),
        JsonArray list => list.Index().SelectMany(i => Descendants(i.Item).Prepend((list, i.Index))),
        _ => [],
    };
}
