using System.CommandLine;
using System.Text.Json;
using ComplianceApi.Api;
using ComplianceApi.Api.Requests;
using ComplianceApi.Api.Rules;
using ComplianceApi.Commands.Terminal;
using Findings;
using Kernel;
using Wire;
using Wording;

namespace ComplianceApi.Commands;

/// <summary>The rules in force, and one of them in full.</summary>
internal static class RulesCommand
{
    public static Command Make()
    {
        var id = new Argument<string?>("rule") { Description = "Id of a rule, to see it in full. Without: all rules.", Arity = ArgumentArity.ZeroOrOne };
        var topic = new Option<string?>("--topic") { Description = "Only rules of this subject area." };
        topic.AcceptOnlyFromAmong([.. Topics.All]);
        var set = new Option<string?>("--set") { Description = "Only rules of this set." };
        set.AcceptOnlyFromAmong([.. Enum.GetValues<SetOfRules>().Select(WireNames.Of)]);
        var format = Common.OneOf("--format", "text: to read; json: as the service serves them.", CheckFormat.Text);
        var overrides = Common.Overrides();
        var command = new Command("rules", "List the rules in force, or show one with its limits, its sources and its cases.") { id, topic, set, format, overrides };
        command.SetAction(parsed =>
        {
            var (output, error) = (parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error);
            if (Check.Start(parsed.GetValue(overrides), error) is not { } engine)
                return Common.Unusable;

            var shelf = new RuleShelf(engine);
            var isJson = parsed.Value<CheckFormat>(format) == CheckFormat.Json;
            if (parsed.GetValue(id) is not { } asked)
            {
                List<RuleView> rules = [.. shelf.All.Where(rule => parsed.GetValue(topic) is not { } only || rule.Topic == only).Where(rule => parsed.GetValue(set) is not { } only || WireNames.Of(rule.Set) == only)];
                if (isJson)
                    output.WriteLine(JsonSerializer.Serialize(new Page<RuleView> { Items = rules, Total = rules.Count }, ApiJson.Wire.PageRuleView));
                else
                    WriteAll(new Sheet(output), rules);
                return Common.Good;
            }

            if (shelf.Find(asked) is not { } rule)
            {
                error.WriteLine($"There is no rule {asked}. The command rules lists them all.");
                return Common.Unusable;
            }

            if (isJson)
                output.WriteLine(JsonSerializer.Serialize(rule, ApiJson.Wire.RuleView));
            else
                WriteOne(new Sheet(output), rule, shelf.Duties);
            return Common.Good;
        });
        return command;
    }

    private static void WriteAll(Sheet sheet, List<RuleView> rules)
    {
        foreach (var group in rules.GroupBy(rule => rule.Topic, StringComparer.Ordinal))
        {
            sheet.Heading(Say.Topic(group.Key).ToUpperInvariant());
            sheet.Rows(["rule", "set", "says"], group.Select(rule => new[] { rule.Id, WireNames.Of(rule.Set), rule.Title }));
            sheet.Blank();
        }

        sheet.Wrapped("", $"{Say.Of(rules.Count, "rule")}. Give an id to see one in full.");
    }

    private static void WriteOne(Sheet sheet, RuleView rule, IReadOnlyList<DutyKind> duties)
    {
        sheet.Heading(rule.Title);
        Line("Rule", $"{rule.Id} ({Say.Topic(rule.Topic)})");
        Line("Set", RuleWords.Of(rule.Set));
        Line("Why", rule.Why);
        Line("In force", (rule.InForceFrom, rule.InForceTo) switch
        {
            (null, null) => "always",
            ({ } from, null) => $"from {Say.Day(from)}",
            (null, { } to) => $"to {Say.Day(to)}",
            ({ } from, { } to) => $"from {Say.Day(from)} to {Say.Day(to)}",
        });
        Line("Covers", $"{Say.Value(rule.Coverage)}: {rule.CoverageWhy}");
        Line("Judges", rule.Set == SetOfRules.Duties ? null : rule.Expects is { } expects ? $"each of: {Say.Place(expects)}" : "the visit as a whole");
        foreach (var call in rule.Calls ?? [])
            Line("Calls for", RuleWords.Of(call, duties));
        foreach (var serves in rule.Serves)
            Line("Serves", RuleWords.Of(serves, duties));
        Line("Applies by", rule.AppliesBy.Count == 0 ? null : string.Join("; ", rule.AppliesBy.Select(Say.Place)));
        foreach (var limit in rule.Limits ?? [])
            Line("Limit", $"{limit.What}: {EvaluationText.LimitOf(limit.AsLimit)}{(limit is { Fuels: null, Jurisdictions: null } ? "" : $" ({OutcomeWords.Where(limit.Fuels, limit.Jurisdictions)})")}");
        foreach (var reference in rule.References)
            Line("Rests on", reference.Clause is { } clause ? $"{reference.Title}, {clause}" : reference.Title);
        if (rule.CommonPractice)
            Line("Rests on", "common practice, no published source");
        sheet.Blank();
        sheet.Heading("CASES");
        foreach (var one in rule.Cases ?? [])
            sheet.Wrapped("  - ", one.Name);
        foreach (var one in rule.DutyCases ?? [])
            sheet.Wrapped("  - ", $"{Say.Sentence(one.Name)} {RuleWords.Of(one.Expect)}");
        sheet.Blank();

        void Line(string head, string? text) => sheet.Wrapped($"  {head,-12}", text);
    }
}
