using BenchmarkDotNet.Attributes;
using Findings;
using Records;
using Records.Reading;
using Records.Validation;

namespace Benchmarks;

/// <summary>The road of one record, the example of the rules, by BenchmarkDotNet.</summary>
[MemoryDiagnoser]
public class RecordBenchmarks
{
    private readonly byte[] _json = Month.Catalogue.ExampleRecord;
    private readonly ServiceRecord _record = RecordReader.Read(Month.Catalogue.ExampleRecord).Record!;
    private readonly Evaluation _evaluation = Month.Engine.Evaluate(RecordReader.Read(Month.Catalogue.ExampleRecord).Record!);
    private readonly ServiceRecordValidator _validator = new();

    [Benchmark(Baseline = true)]
    public object Read() => RecordReader.Read(_json);

    [Benchmark]
    public object Validate() => _validator.Validate(_record);

    [Benchmark]
    public object Evaluate() => Month.Engine.Evaluate(_record);

    /// <summary>A month of 200 records on all cores; the time is that of one.</summary>
    [Benchmark(OperationsPerInvoke = Month.Size)]
    public void Batch() => Parallel.For(0, Month.Size, i => Month.Engine.Evaluate(Month.Records[i]));

    [Benchmark]
    public object Write() => WireJson.ToBytes(_evaluation.InShort(Include.Problems), ShortJson.Evaluation);
}
