using System.Diagnostics;
using System.Text.Json;
using Findings;
using Kernel;
using Kernel.Engine;
using Records.Reading;
using Records.Validation;
using Visits;
using Visits.Judging;

namespace Benchmarks;

/// <summary>The parts of the road of one record by the stopwatch. Seconds, not minutes.</summary>
internal static class Quick
{
    private const int Rounds = 60;

    public static int Run()
    {
        var parts = Parts();
        Timed.InTurns(Rounds, parts);
        Timed.Print(parts);
        return 0;
    }

    /// <summary>What the duties cost: the same evaluation with and without them, and the engine's part of them alone.</summary>
    public static int RunDuties()
    {
        var (engine, records) = (Month.Engine, Month.Records);
        var withoutDuties = ComplianceEngine.Start(engine.Catalogue.With(engine.Catalogue.Rules));
        var duties = new CompiledRules(engine.Catalogue.DutyRules);
        Timed[] parts =
        [
            new("evaluate, without the duties", i => withoutDuties.Evaluate(records[i])),
            new("evaluate", i => engine.Evaluate(records[i])),
            new("  of it: the rules of the duties", i => duties.Run([engine.VisitOf(records[i])])),
        ];
        Timed.InTurns(Rounds, parts);
        Timed.Print(parts);
        return 0;
    }

    /// <summary>Does one part over and over, for a profiler.</summary>
    public static int Loop(string part, int seconds)
    {
        var one = Array.Find(Parts(), candidate => candidate.Name.Contains(part, StringComparison.Ordinal)) ?? throw new ArgumentException($"No part has '{part}' in its name.", nameof(part));
        for (var began = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(began).TotalSeconds < seconds;)
            Timed.InTurns(1, [one]);
        Timed.Print([one]);
        return 0;
    }

    private static Timed[] Parts()
    {
        var records = Month.Records;
        var evaluations = records.Select(record => Month.Engine.Evaluate(record)).ToList();
        var visits = records.Select(record => Month.Engine.VisitOf(record)).ToList();
        var validator = new ServiceRecordValidator();
        var withoutDuties = ComplianceEngine.Start(Month.Engine.Catalogue.With(Month.Engine.Catalogue.Rules));
        return
        [
            new("read", i => RecordReader.Read(Month.Json[i])),
            new("  of it: deserialize", i => JsonSerializer.Deserialize(Month.Json[i], RecordJson.Default.ServiceRecord)),
            new("  of it: is anything wrong", i => validator.IsSound(records[i])),
            new("  only of a faulty record: name what is wrong", i => validator.Validate(records[i])),
            new("figures", i => Month.Engine.VisitOf(records[i]).Figures),
            new("answers (with the figures that they ask for)", i => Month.Engine.AnswersTo(records[i])),
            new("evaluate", i => Month.Engine.Evaluate(records[i])),
            new("evaluate, without the duties", i => withoutDuties.Evaluate(records[i])),
            new("evaluate, on all cores", i => Month.Engine.Evaluate(records[i]), onAllCores: true),
            new("evaluate, and both hashes once more", i => HashAgain(Month.Engine.Evaluate(records[i]), visits[i])),
            new("write, as asked for by default", i => WireJson.ToBytes(evaluations[i].InShort(Include.Problems), ShortJson.Evaluation)),
            new("evaluate and write, as asked for by default", i => WireJson.ToBytes(Month.Engine.Evaluate(records[i]).InShort(Include.Problems), ShortJson.Evaluation)),
            new("write, every answer", i => WireJson.ToBytes(evaluations[i], EvaluationJson.Default.Evaluation)),
            new("write, problems", i => WireJson.ToBytes(evaluations[i].Show(Include.Problems), EvaluationJson.Default.Evaluation)),
        ];
    }

    /// <summary>What it takes beyond an evaluation is what the hashes take in one: alone they would be worked out from memory that has gone cold.</summary>
    private static string HashAgain(Evaluation evaluation, Visit visit) => Hashes.OfInput(visit) + Hashes.OfResult(evaluation);

    /// <summary>The rules of the first pass by the time that they take, the dearest first.</summary>
    public static int RunRules()
    {
        var visits = Month.Records.Select(record => Month.Engine.VisitOf(record)).ToList();
        var look = Look.Quiet(RecordModel.Instance);
        var rules = Month.Catalogue.Rules.OfType<FirstPassRule>().Select(rule => new Timed(rule.Info.Id, i => rule.Judge(visits[i], look))).ToList();
        Timed.InTurns(Rounds, rules);
        Console.WriteLine($"all rules of the first pass, one by one: {rules.Sum(rule => rule.Microseconds):0.0} us, {rules.Sum(rule => rule.Kilobytes):0.0} KB");
        Timed.Print([.. rules.OrderByDescending(rule => rule.Microseconds).Take(40)]);
        return 0;
    }
}
