using System.Text.Json;
using Findings;
using RuleEngine;
using RuleModel;
using ServiceRecords;

namespace Benchmarks;

/// <summary>The parts of the road of one record by the stopwatch. Seconds, not minutes.</summary>
internal static class Quick
{
    private const int Rounds = 40;

    public static int Run()
    {
        var records = Month.Records;
        var limits = Month.Catalogue.Limits;
        var evaluations = records.Select(record => Month.Engine.Evaluate(record)).ToList();
        var visits = records.Select(record => new Visit(record, limits)).ToList();
        Timed[] parts =
        [
            new("read", i => RecordReader.Read(Month.Json[i])),
            new("  of it: deserialize", i => JsonSerializer.Deserialize(Month.Json[i], RecordJson.Default.ServiceRecord)),
            new("figures", i => new Visit(records[i], limits).Figures),
            new("answers (no figures, no hashes)", i => Month.Engine.AnswersTo(records[i])),
            new("evaluate", i => Month.Engine.Evaluate(records[i])),
            new("  of it: input hash", i => Hashes.OfInput(visits[i])),
            new("  of it: result hash", i => Hashes.OfResult(evaluations[i])),
            new("write, as asked for by default", i => JsonSerializer.SerializeToUtf8Bytes(evaluations[i].Show(Include.Default), EvaluationJson.Wire.Evaluation)),
            new("write, every answer", i => JsonSerializer.SerializeToUtf8Bytes(evaluations[i], EvaluationJson.Wire.Evaluation)),
            new("write, problems", i => JsonSerializer.SerializeToUtf8Bytes(evaluations[i].Show(Include.Problems), EvaluationJson.Wire.Evaluation)),
        ];
        Timed.InTurns(Rounds, parts);
        Timed.Print(parts);
        return 0;
    }

    /// <summary>The rules of the first pass by the time that they take, the dearest first.</summary>
    public static int RunRules()
    {
        var visits = Month.Records.Select(record => new Visit(record, Month.Catalogue.Limits)).ToList();
        var rules = Month.Catalogue.Rules.OfType<FirstPassRule>().Select(rule => new Timed(rule.Info.Id, i => rule.Judge(visits[i]))).ToList();
        Timed.InTurns(Rounds, rules);
        Console.WriteLine($"all rules of the first pass, one by one: {rules.Sum(rule => rule.Microseconds):0.0} us, {rules.Sum(rule => rule.Kilobytes):0.0} KB");
        Timed.Print([.. rules.OrderByDescending(rule => rule.Microseconds).Take(40)]);
        return 0;
    }
}
