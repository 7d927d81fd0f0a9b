using System.Text.Json.Nodes;
using Kernel.Catalogues;
using Records;
using Records.Reading;
using Rules;
using Visits;
using Visits.Judging;

namespace Kernel.Tests;

/// <summary>The rule set and the records that these tests share.</summary>
internal static class Samples
{
    public static RuleCatalogue Catalogue { get; } = RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly);

    public static ComplianceEngine Engine { get; } = ComplianceEngine.Start(Catalogue);

    public static ServiceRecord Example { get; } = Read(Catalogue.ExampleRecord);

    /// <summary>The record of every case of every rule, named "rule: case".</summary>
    public static IEnumerable<(string Name, ServiceRecord Record)> CaseRecords => Catalogue.Cases
        .SelectMany(entry => entry.Value.Select(one => ($"{entry.Key.Info.Id}: {one.Name}", Read(one.RecordFrom(Catalogue.ExampleRecord)))));

    public static ServiceRecord Read(byte[] json) => RecordReader.Read(json) is { Record: { } record }
        ? record
        : throw new InvalidOperationException(string.Join("; ", RecordReader.Read(json).Faults));

    /// <summary>The example record with changes made to its JSON.</summary>
    public static ServiceRecord Changed(Action<JsonNode> change)
    {
        var json = JsonNode.Parse(Catalogue.ExampleRecord)!;
        change(json);
        return Read(System.Text.Json.JsonSerializer.SerializeToUtf8Bytes(json));
    }

    /// <summary>The whole rule set with one rule more, whose cases are borrowed: for rules made to misbehave.</summary>
    public static ComplianceEngine EngineWith(params IComplianceRule[] extra) =>
        ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly, [.. Catalogue.Rules, .. extra]));
}
