using System.Globalization;
using System.Text.Json;
using Findings;
using Records;
using RulesEngine.Models;
using Visits.Judging;

namespace Benchmarks.OtherEngines;

/// <summary>Some of the rules, told as data, in another rules library; and the same of ours.</summary>
internal sealed class SameRules
{
    private readonly List<Row> _rows;
    private readonly RulesEngine.RulesEngine _other;
    private readonly Dictionary<string, int> _places;

    public SameRules()
    {
        var file = Path.Combine(AppContext.BaseDirectory, "same-rules.json");
        _rows = JsonSerializer.Deserialize<List<Row>>(File.ReadAllBytes(file), JsonSerializerOptions.Web)!;
        _places = _rows.Index().ToDictionary(entry => entry.Item.Rule, entry => entry.Index, StringComparer.Ordinal);
        var ids = _rows.Select(row => row.Rule).ToHashSet(StringComparer.Ordinal);
        Ours = ComplianceEngine.Start(Month.Catalogue.With([.. Month.Catalogue.Rules.Where(rule => ids.Contains(rule.Info.Id))]));
        _other = new RulesEngine.RulesEngine([new Workflow
        {
            WorkflowName = "same",
            Rules = [.. _rows.Select(row => new Rule { RuleName = row.Rule, Expression = string.Join(" && ", row.Passes.Select(ExpressionOf)) })],
        }]);
    }

    public int Count => _rows.Count;

    /// <summary>Our engine with these rules alone.</summary>
    public ComplianceEngine Ours { get; }

    public List<RuleResultTree> Other(ServiceRecord record) =>
        _other.ExecuteAllRulesAsync("same", new RuleParameter("record", record)).AsTask().GetAwaiter().GetResult();

    /// <summary>1 for each rule that is satisfied, in the order of the file: by us.</summary>
    public string VerdictsOfOurs(ServiceRecord record)
    {
        var passed = Ours.AnswersTo(record).ToLookup(finding => finding.RuleId, finding => finding.Outcome, StringComparer.Ordinal);
        return string.Concat(_rows.Select(row => passed[row.Rule].All(outcome => outcome == Outcome.Pass) ? '1' : '0'));
    }

    /// <summary>The same by the other library.</summary>
    public string VerdictsOfOther(ServiceRecord record)
    {
        var verdicts = new char[_rows.Count];
        foreach (var result in Other(record))
            verdicts[_places[result.Rule.RuleName]] = result.IsSuccess ? '1' : '0';
        return new string(verdicts);
    }

    private static string ExpressionOf(JsonElement[] condition)
    {
        var (operation, value) = (condition[1].GetString(), condition[2]);
        var expected = value.ValueKind switch
        {
            JsonValueKind.String => MemberOf(value.GetString()!),
            JsonValueKind.Number => value.GetDecimal().ToString(CultureInfo.InvariantCulture) + "M",
            _ => value.GetBoolean() ? "true" : "false",
        };
        return MemberOf(condition[0].GetString()!) + operation switch
        {
            "equal" => $" == {expected}",
            "atLeast" => $" >= {expected}",
            "atMost" => $" <= {expected}",
            "below" => $" < {expected}",
            _ => " != null",
        };
    }

    private static string MemberOf(string path) =>
        $"np(record.{string.Join('.', path.Split('.').Select(name => char.ToUpperInvariant(name[0]) + name[1..]))})";

    private sealed record Row(string Rule, JsonElement[][] Passes);
}
