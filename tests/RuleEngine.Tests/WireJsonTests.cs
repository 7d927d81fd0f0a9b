using System.Text.Json;
using Findings;

namespace RuleEngine.Tests;

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
}
