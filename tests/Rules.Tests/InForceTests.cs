namespace Rules.Tests;

/// <summary>The days from which law and guidance apply, as published.</summary>
public sealed class InForceTests
{
    [Theory]
    [InlineData(RuleIds.CoAlarmEnglandRented, "2022-10-01")] // SI 2022/707
    [InlineData(RuleIds.CoAlarmEnglandNewBoiler, "2022-10-01")] // Approved Document J, as amended for that day
    [InlineData(RuleIds.CoAlarmWalesRented, "2022-12-01")] // Renting Homes (Wales) Act 2016
    [InlineData(RuleIds.CoAlarmScotland, "2022-02-01")] // tolerable standard
    [InlineData(RuleIds.FlueInVoid, "2013-01-01")] // guidance on flues in voids
    public void A_rule_answers_from_its_first_day(string ruleId, string firstDay)
    {
        var day = DateOnly.ParseExact(firstDay, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        var record = RuleSet.Read(RuleSet.Catalogue.ExampleRecord.ToArray());

        Assert.NotEmpty(RuleSet.AnswersOf(ruleId, RuleSet.Engine.Evaluate(record, asOf: day)));
        Assert.Empty(RuleSet.AnswersOf(ruleId, RuleSet.Engine.Evaluate(record, asOf: day.AddDays(-1))));
    }

    public static TheoryData<string> Dated =>
        [.. RuleSet.Catalogue.Rules.Where(rule => rule.Info.InForceFrom > DateOnly.MinValue || rule.Info.InForceTo < DateOnly.MaxValue).Select(rule => rule.Info.Id)];

    [Theory]
    [MemberData(nameof(Dated))]
    public void A_rule_answers_on_its_days_and_on_no_day_before_or_after(string ruleId)
    {
        var rule = RuleSet.Catalogue.Rules.Single(candidate => candidate.Info.Id == ruleId).Info;
        var record = RuleSet.Read(RuleSet.Catalogue.ExampleRecord);
        var days = new[] { rule.InForceFrom, rule.InForceTo }
            .Where(day => day > DateOnly.MinValue && day < DateOnly.MaxValue)
            .SelectMany(day => new[] { day.AddDays(-1), day, day.AddDays(1) });

        Assert.All(days, day => Assert.Equal(
            day >= rule.InForceFrom && day <= rule.InForceTo,
            RuleSet.AnswersOf(ruleId, RuleSet.Engine.Evaluate(record, asOf: day)).Count > 0));
    }
}
