using System.Text.Json;
using Findings;

namespace Kernel.Tests;

public sealed class WireJsonTests
{
    [Fact]
    public void The_generated_writers_write_what_the_metadata_write()
    {
        foreach (var (name, record) in Samples.CaseRecords)
        {
            var evaluation = Samples.Engine.Evaluate(record);
            foreach (var include in Enum.GetValues<Include>())
            {
                var shown = evaluation.Show(include);
                var expected = JsonSerializer.SerializeToUtf8Bytes(shown, EvaluationJson.Wire.Evaluation);
                Assert.True(expected.AsSpan().SequenceEqual(WireJson.ToBytes(shown, EvaluationJson.Default.Evaluation)), $"{name}, include={include}");
            }
        }
    }

    [Fact]
    public void A_rule_set_is_read_as_it_is_written()
    {
        var written = JsonSerializer.Serialize(Samples.Catalogue.Info, EvaluationJson.Wire.RuleSetInfo);
        var names = typeof(RuleSetInfo).GetProperties().Select(property => JsonNamingPolicy.CamelCase.ConvertName(property.Name));

        Assert.Equal(names, JsonDocument.Parse(written).RootElement.EnumerateObject().Select(member => member.Name));
        Assert.Equivalent(Samples.Catalogue.Info, JsonSerializer.Deserialize(written, EvaluationJson.Wire.RuleSetInfo), strict: true);
    }

    [Fact]
    public void The_one_hash_of_an_older_answer_stands_for_both()
    {
        var read = JsonSerializer.Deserialize("""{"id":"GB","version":"0.1.0","contentHash":"3a84"}""", EvaluationJson.Wire.RuleSetInfo)!;

        Assert.Equal(("GB", "0.1.0", "3a84", "3a84"), (read.Id, read.Version, read.LawHash, read.CodeHash));
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize("""{"id":"GB","version":"0.1.0","lawHash":"3a84"}""", EvaluationJson.Wire.RuleSetInfo));
    }
}
