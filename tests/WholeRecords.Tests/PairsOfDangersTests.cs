using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Nodes;
using Findings;
using Kernel;
using Kernel.Catalogues;
using MadeVisits;
using Rules;
using Visits;
using Visits.Judging;
using Xunit.Abstractions;

namespace WholeRecords.Tests;

/// <summary>
/// A handled danger never lends its handling to another: of two dangers on one record, one handled as section 4 of the page of duties says and
/// one not, the job never closes; both handled, it closes or the situation says handled. Duties 6.4, over every pair.
/// </summary>
public sealed class PairsOfDangersTests(ITestOutputHelper output)
{
    private static readonly ComplianceEngine Engine = ComplianceEngine.Start(RuleCatalogue.Of(RecordModel.Instance, typeof(RuleIds).Assembly));

    private static readonly (string Whole, IReadOnlyList<MadeDanger> Dangers)[] Boilers =
    [
        ("annualService/opened-premix-combi-everything-written-down", MadeDanger.OfRoomSealed),
        ("annualService/open-flued-kitchen-boiler-flow-and-spillage-passed", MadeDanger.OfOpenFlued),
    ];

    /// <summary>Each lays a danger and what was done about it upon a record.</summary>
    private static readonly (string Name, Action<JsonObject, MadeDanger> Lay)[] Handled = [("out of use", LayOutOfUse), ("refused", LayRefused), ("put right", LayPutRight)];

    /// <summary>
    /// Ways not to handle a danger. A defect that names something of this boiler is of this boiler, whatever it says that it concerns (duties 9).
    /// </summary>
    private static readonly (string Name, Action<JsonObject, MadeDanger> Lay)[] Unhandled =
    [
        ("not recorded", (record, danger) => danger.Show(record)),
        ("nothing done", (record, danger) => LayDefect(record, danger, defect => defect["action"] = "none")),
        ("refused, and nobody called or signed", (record, danger) => LayDefect(record, danger, defect => (defect["action"], defect["permission"], defect["userSigned"]) = ("none", "refused", false))),
        ("not isolated", (record, danger) => LayDefect(record, danger, defect => (defect["action"], defect["permission"], defect["isolatedAt"]) = ("disconnected", "given", "notIsolated"))),
        ("nobody told", (record, danger) => LayDefect(record, danger, defect => (defect["action"], defect["permission"], defect["isolatedAt"], defect["told"]) = ("disconnected", "given", danger.CutOffAt, new JsonArray()))),
        ("put right and not looked at again", LayNotShownRight),
        ("classed as no danger", (record, danger) => LayDefect(record, danger, defect => (defect["class"], defect["action"]) = ("other", "none"))),
        ("said to be of another appliance", (record, danger) => LayDefect(record, danger, defect => (defect["action"], defect["concerns"]) = ("none", "otherAppliance"))),
    ];

    [Fact]
    public void A_danger_handled_alone_is_handled_and_one_not_handled_alone_holds()
    {
        var wrong = new List<string>();
        foreach (var (whole, danger) in Boilers.SelectMany(boiler => boiler.Dangers.Select(danger => (boiler.Whole, danger))))
        {
            wrong.AddRange(Handled.Where(way => !IsHandled(Judge(whole, record => way.Lay(record, danger)))).Select(way => $"{whole}: {danger.Name}, {way.Name}: {Words(Judge(whole, record => way.Lay(record, danger)))}"));
            wrong.AddRange(WaysNotTo(danger).Where(way => Judge(whole, record => way.Lay(record, danger)).Closing.Allowed).Select(way => $"{whole}: {danger.Name}, {way.Name}: closes"));
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    /// <summary>Duties 9: a defect that names something of this boiler is of this boiler, whatever it says that it concerns.</summary>
    [Fact]
    public void What_is_only_stated_of_this_boiler_and_left_in_use_holds_though_it_is_said_to_be_of_another_appliance() => Assert.All(
        Boilers.SelectMany(boiler => boiler.Dangers.Where(danger => !danger.IsShown).Select(danger => (boiler.Whole, danger))),
        one => Assert.False(Judge(one.Whole, record => LayDefect(record, one.danger, defect =>
            (defect["action"], defect["permission"], defect["isolatedAt"], defect["concerns"]) = ("turnedOff", "given", one.danger.CutOffAt, "otherAppliance"))).Closing.Allowed));

    [Fact]
    public void Of_two_dangers_one_not_handled_holds_the_job()
    {
        var closed = new ConcurrentBag<string>();
        var tried = 0;
        Parallel.ForEach(Pairs(), pair =>
        {
            foreach (var handled in Handled)
            {
                foreach (var not in WaysNotTo(pair.Two))
                {
                    Interlocked.Increment(ref tried);
                    var said = Judge(pair.Whole, record =>
                    {
                        handled.Lay(record, pair.One);
                        not.Lay(record, pair.Two);
                    });
                    if (said.Closing.Allowed)
                        closed.Add($"{pair.Whole}: {pair.One.Name}, {handled.Name}; {pair.Two.Name}, {not.Name}: closes as {said.Closing.ClosesAs}, {said.Outcome}");
                }
            }
        });

        Assert.True(tried > 5_000);
        Check(closed, tried);
    }

    private void Check(IReadOnlyCollection<string> closed, int tried)
    {
        output.WriteLine($"{tried} pairs");
        Assert.True(closed.Count == 0, $"{closed.Count} of {tried}:\n{string.Join('\n', closed.Order(StringComparer.Ordinal))}");
    }

    [Fact]
    public void Two_dangers_both_handled_are_handled()
    {
        var held = new ConcurrentBag<string>();
        var tried = 0;
        Parallel.ForEach(Pairs().Where(pair => string.CompareOrdinal(pair.One.Name, pair.Two.Name) < 0), pair =>
        {
            foreach (var way in Handled)
            {
                Interlocked.Increment(ref tried);
                var said = Judge(pair.Whole, record =>
                {
                    way.Lay(record, pair.One);
                    way.Lay(record, pair.Two);
                });
                if (!IsHandled(said))
                    held.Add($"{pair.Whole}: {pair.One.Name} and {pair.Two.Name}, {way.Name}: {Words(said)}");
            }
        });

        output.WriteLine($"{tried} pairs");
        Assert.True(held.IsEmpty, $"{held.Count} of {tried}:\n{string.Join('\n', held.Order(StringComparer.Ordinal))}");
    }

    /// <summary>The dangers of the whole records that close with a danger handled, each beside one that is made and not handled.</summary>
    [Fact]
    public void A_whole_record_that_closes_with_its_dangers_handled_does_not_with_another_one()
    {
        var closed = new ConcurrentBag<string>();
        var tried = 0;
        var bases = WholeRecord.All.Where(whole => whole.IsHandled == true && Held.Read(whole.Utf8).Record is { } && Judge(whole.Name, _ => { }).Closing.Allowed).ToList();
        Parallel.ForEach(bases, whole =>
        {
            var json = JsonNode.Parse(whole.Utf8)!.AsObject();
            var isOpen = json["appliance"]?["flueType"]?.GetValue<string>() is "openFlued" or "openFluedFanned";
            var recorded = (json["defects"] as JsonArray ?? []).Select(defect => (Topic: defect!["topic"]?.GetValue<string>(), Section: Section(defect["subject"]?.GetValue<string>()))).ToList();
            var subjects = (json["defects"] as JsonArray ?? []).Select(defect => defect!["subject"]?.GetValue<string>()).OfType<string>().ToList();
            foreach (var danger in isOpen ? MadeDanger.OfOpenFlued : MadeDanger.OfRoomSealed)
            {
                // What the record's own defect speaks of is not another danger.
                if (!danger.FitsIn(json) || recorded.Any(one => one.Topic == danger.Topic || one.Section == Section(danger.Subject)) || subjects.Exists(danger.IsRecordedAt))
                    continue;
                foreach (var not in WaysNotTo(danger))
                {
                    if (TryJudge(whole.Name, record => not.Lay(record, danger)) is not { } said)
                        continue;
                    Interlocked.Increment(ref tried);
                    if (said.Closing.Allowed)
                        closed.Add($"{whole.Name}; {danger.Name}, {not.Name}: closes as {said.Closing.ClosesAs}, {said.Outcome}");
                }
            }
        });

        output.WriteLine($"{bases.Count} records");
        Assert.True(tried > 1_000);
        Check(closed, tried);
    }

    private static string? Section(string? subject) => subject?.Split('/').ElementAtOrDefault(1);

    private static IEnumerable<(string Whole, MadeDanger One, MadeDanger Two)> Pairs() => Boilers.SelectMany(boiler =>
        boiler.Dangers.SelectMany(one => boiler.Dangers.Where(two => !two.IsRecordedAt(one.Subject)).Select(two => (boiler.Whole, one, two))));

    private static IEnumerable<(string Name, Action<JsonObject, MadeDanger> Lay)> WaysNotTo(MadeDanger danger) => Unhandled.Where(way => danger.IsShown
        || !(way.Name == "not recorded" || (way.Name == "classed as no danger" && !danger.ComesOut)));

    private static bool IsHandled(Evaluation said) => said.Closing.Allowed || said.Situation?.Handled == true;

    private static string Words(Evaluation said) =>
        $"{said.Outcome}, held by {string.Join(", ", said.Closing.BlockedBy.Take(6))}, open {string.Join(", ", said.Situation?.Open ?? [])}, asks {string.Join(", ", said.Missing.Select(item => item.Pointer).Take(8))}";

    private static Evaluation Judge(string whole, Action<JsonObject> lay) => TryJudge(whole, lay) ?? throw new InvalidOperationException($"{whole} is refused.");

    private static Evaluation? TryJudge(string whole, Action<JsonObject> lay)
    {
        var json = JsonNode.Parse(WholeRecord.All.Single(one => one.Name == whole).Utf8)!.AsObject();
        json["defects"] ??= new JsonArray();
        lay(json);
        return Held.Read(JsonSerializer.SerializeToUtf8Bytes(json)).Record is { } record ? Engine.Evaluate(record, Lookup.None, detail: Detail.Problems) : null;
    }

    private static void LayDefect(JsonObject record, MadeDanger danger, Action<JsonObject> handle, bool isShown = true)
    {
        if (isShown)
            danger.Show(record);
        var defect = danger.Defect(DayOf(record));
        handle(defect);
        ((JsonArray)record["defects"]!).Add((JsonNode)defect);
    }

    private static void LayOutOfUse(JsonObject record, MadeDanger danger)
    {
        LayDefect(record, danger, defect => (defect["action"], defect["permission"], defect["isolatedAt"]) = ("disconnected", "given", danger.CutOffAt));
        record.Put("/appliance/stateOnLeaving", "disconnected");
        record.Put("/appliance/leftOffBecause", "danger");
        record.Put("/work/gaswaysSealed", true);
        record.Put("/electrical/supplyOff", true);
        if (danger.IsEscape)
            LayEscape(record, isIsolated: true);
    }

    /// <summary>Beside products in the room whatever lets them out is immediately dangerous; a graver class than expected is never wrong.</summary>
    private static void LayRefused(JsonObject record, MadeDanger danger)
    {
        LayDefect(record, danger, defect => (defect["class"], defect["action"], defect["permission"], defect["emergencyReference"]) = ("immediatelyDangerous", "none", "refused", "ER-4471"));
        if (danger.IsEscape)
            LayEscape(record, isIsolated: false);
    }

    /// <summary>As left the record shows it right; as found the defect tells.</summary>
    private static void LayPutRight(JsonObject record, MadeDanger danger) => LayDefect(
        record, danger, defect => (defect["action"], defect["reexaminedAt"]) = ("rectified", $"{DayOf(record)}T10:20:00+01:00"), isShown: false);

    /// <summary>A leak that was looked at and not tested again: no eye sees that a pipe is tight.</summary>
    private static void LayNotShownRight(JsonObject record, MadeDanger danger)
    {
        LayDefect(record, danger, defect => (defect["action"], defect["reexaminedAt"]) = ("rectified", danger.IsLeak ? $"{DayOf(record)}T10:20:00+01:00" : null), isShown: false);
        if (danger.IsLeak)
            record["tightnessTests"] = new JsonArray();
    }

    private static void LayEscape(JsonObject record, bool isIsolated) => record["escape"] = new JsonObject
    {
        ["reported"] = true,
        ["gasIsolated"] = isIsolated,
        ["isolatedAt"] = isIsolated ? "emergencyControl" : "notIsolated",
        ["reference"] = "ER-4471",
        ["reportedAt"] = $"{DayOf(record)}T09:30:00+01:00",
        ["told"] = new JsonArray("responsiblePerson", "emergencyService"),
    };

    private static string DayOf(JsonObject record) => record["finishedAt"]!.GetValue<string>()[..10];
}
