using ComplianceApi.Commands.Demo;
using Kernel.Catalogues;
using Records;
using Records.Reading;
using Rules;
using Visits;
using Visits.Judging;

namespace Benchmarks;

/// <summary>What is judged: the invented month of the demonstration, 200 records, and the full rule set.</summary>
internal static class Month
{
    public const int Size = 200;

    public static RuleCatalogue Catalogue { get; } = RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly);

    public static ComplianceEngine Engine { get; } = ComplianceEngine.Start(Catalogue);

    public static IReadOnlyList<byte[]> Json { get; } = [.. DemoMonth.Records(Catalogue.ExampleRecord).Take(Size).Select(entry => entry.Json)];

    public static IReadOnlyList<ServiceRecord> Records { get; } = [.. Json.Select(json => RecordReader.Read(json).Record!)];
}
