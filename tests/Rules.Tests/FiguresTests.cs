using Findings;
using Xunit.Abstractions;

namespace Rules.Tests;

public sealed class FiguresTests(ITestOutputHelper output)
{
    [Fact]
    public void Dump()
    {
        var evaluation = RuleSet.Engine.Evaluate(RuleSet.Read(RuleSet.Catalogue.ExampleRecord.ToArray()));
        foreach (var f in evaluation.Figures)
            output.WriteLine($"{f.Name} {f.Subject} {f.Value}{f.Date} {f.Unit} | {f.Formula} | {string.Join(", ", f.Inputs)} | {string.Join(", ", f.Constants ?? [])}");
        Assert.Empty(evaluation.Findings.Where(x => x.Outcome is not (Outcome.Pass or Outcome.NotApplicable)).Select(x => x.Message));
    }
}
