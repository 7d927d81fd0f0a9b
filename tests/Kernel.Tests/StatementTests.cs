using Kernel.Catalogues;
using Kernel.Tests.Misbehaving;
using Rules;
using Visits;

namespace Kernel.Tests;

/// <summary>A row of a table is a rule like any other, and refused for what it lacks.</summary>
public sealed class StatementTests
{
    private static readonly IReadOnlyList<IComplianceRule> Rows = CatalogueCheck.InstantiateRules([typeof(MisbehavingStatements)]);

    [Theory]
    [InlineData("Bare", "has no id ([Id])")]
    [InlineData("Bare", "has no title ([Title])")]
    [InlineData("Bare", "does not say why it is asked ([Why])")]
    [InlineData("Bare", "cites nothing and is not marked [CommonPractice]")]
    [InlineData("Bare", "does not say how far it covers its demand ([Coverage])")]
    [InlineData("Bare", "has no cases (Bare.cases.json)")]
    [InlineData("SaysNothing", "answers a yes without a sentence")]
    [InlineData("SaysNothing", "answers a no without a sentence")]
    [InlineData("NeverFails", "passes both a yes and a no, or neither")]
    [InlineData("NeverPasses", "passes both a yes and a no, or neither")]
    [InlineData("NeverPasses", "answers a no with a danger and no caution")]
    [InlineData("NeverPasses", "answers a no with a fault and no remedy")]
    public void A_row_without_one_of_its_parts_is_refused(string row, string because) => Assert.Contains($"{row} {because}", Gaps());

    [Fact]
    public void Two_rows_of_one_id_are_refused() => Assert.Contains("the id 'twin' belongs to One and Other", Gaps());

    [Fact]
    public void A_row_is_of_the_topic_of_its_table() => Assert.All(Rows, row => Assert.Equal("flue", row.Info.Topic));

    [Theory]
    [InlineData("visit => visit.Record.Flue?.SupportsOk")]
    [InlineData("visit =>\n    visit.Record.Flue?.SupportsOk")]
    [InlineData("visit => visit.Record\n    .Flue?.SupportsOk")]
    public void A_lambda_names_its_member_however_its_lines_are_broken(string lambda) => Assert.Equal("/flue/supportsOk", MemberPath.Of(lambda).Below(""));

    [Fact]
    public void A_table_of_no_topic_is_refused() => Assert.Contains(
        "Row has no known topic ('')", Assert.Throws<CatalogueException>(() => CatalogueOf(CatalogueCheck.InstantiateRules([typeof(TopiclessStatements)]))).Gaps);

    [Fact]
    public void A_row_that_is_not_written_in_its_own_property_is_refused() => Assert.Equal(
        ["the row of DetouringStatements that Detour asks is no property"],
        Assert.Throws<CatalogueException>(() => CatalogueCheck.InstantiateRules([typeof(DetouringStatements)])).Gaps);

    [Fact]
    public void A_table_that_the_scan_would_skip_in_silence_is_refused() =>
        Assert.Throws<CatalogueException>(() => CatalogueCheck.InstantiateRules([typeof(HiddenStatements)]));

    [Fact]
    public void A_row_is_hashed_with_the_module_in_which_it_is_compiled()
    {
        var row = Samples.Catalogue.Rules.First(rule => rule is Statement);
        var other = Samples.Catalogue.Rules.First(rule => rule is not Statement);
        Assert.Equal(CodeHash.Of([other], RecordModel.Instance), CodeHash.Of([row], RecordModel.Instance));
    }

    private static IReadOnlyList<string> Gaps() => Assert.Throws<CatalogueException>(() => CatalogueOf(Rows)).Gaps;

    private static RuleCatalogue CatalogueOf(IReadOnlyList<IComplianceRule> rules) => RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, rules);

    private sealed class HiddenStatements : StatementTable;
}
