using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Findings;
using RuleEngine;
using RuleModel;
using ServiceRecords;

namespace Benchmarks;

/// <summary>
/// The parts of the road of one record, timed in turns so that a busy machine troubles all of them alike: of many rounds over the
/// month the lower quartile counts. Seconds, not minutes: for work on the code; what is published comes from the benchmarks.
/// </summary>
internal static class Quick
{
    public static int Run(string[] args)
    {
        var rounds = args is [var given, ..] ? int.Parse(given, CultureInfo.InvariantCulture) : 40;
        var records = Month.Records;
        var limits = Month.Catalogue.Limits;
        var evaluations = records.Select(record => Month.Engine.Evaluate(record)).ToList();
        var visits = records.Select(record => new Visit(record, limits)).ToList();
        Part[] parts =
        [
            new("read", i => RecordReader.Read(Month.Json[i])),
            new("  of it: deserialize", i => JsonSerializer.Deserialize(Month.Json[i], RecordJson.Default.ServiceRecord)),
            new("visit", i => new Visit(records[i], limits)),
            new("figures", i => new Visit(records[i], limits).Figures),
            new("answers (no figures, hashes)", i => Month.Engine.AnswersTo(records[i])),
            new("evaluate", i => Month.Engine.Evaluate(records[i])),
            new("  of it: input hash", i => Hashes.OfInput(visits[i])),
            new("  of it: result hash", i => Hashes.OfResult(evaluations[i])),
            new("write, as asked for", i => JsonSerializer.SerializeToUtf8Bytes(evaluations[i].Show(Include.Default), EvaluationJson.Wire.Evaluation)),
            new("write, all", i => JsonSerializer.SerializeToUtf8Bytes(evaluations[i], EvaluationJson.Wire.Evaluation)),
            new("write, problems", i => JsonSerializer.SerializeToUtf8Bytes(evaluations[i].Show(Include.Problems), EvaluationJson.Wire.Evaluation)),
        ];

        for (var round = -rounds / 2; round < rounds; round++)
        {
            foreach (var part in parts)
                part.Time(records.Count, counts: round >= 0);
        }

        var read = parts[0].Microseconds;
        Console.WriteLine($"{"",-32} {"us",8} {"/ read",8} {"KB",8}");
        foreach (var part in parts)
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{part.Name,-32} {part.Microseconds,8:0.0} {part.Microseconds / read,8:0.00} {part.Kilobytes,8:0.0}"));

        return 0;
    }

    private sealed class Part(string name, Func<int, object?> run)
    {
        private readonly List<double> _times = [];

        public string Name => name;

        public double Microseconds => _times.Order().ElementAt(_times.Count / 4);

        public double Kilobytes { get; private set; }

        public void Time(int count, bool counts)
        {
            var bytes = GC.GetAllocatedBytesForCurrentThread();
            var began = Stopwatch.GetTimestamp();
            for (var i = 0; i < count; i++)
                run(i);

            var took = Stopwatch.GetElapsedTime(began);
            if (!counts)
                return;

            _times.Add(took.TotalMicroseconds / count);
            Kilobytes = (GC.GetAllocatedBytesForCurrentThread() - bytes) / 1024.0 / count;
        }
    }
}
