using System.Text;
using System.Text.Json.Nodes;
using Records;
using Records.Reading;
using SecondOpinion;
using SecondOpinion.Duties;

namespace WholeRecords.Tests;

/// <summary>What the second person says of a whole record, and where that is not what the auditor expects. Null where the record cannot be read.</summary>
internal sealed record SecondlyJudged(WholeRecord Whole, WholeOpinion? Said)
{
    public static IReadOnlyList<SecondlyJudged> All { get; } = [.. WholeRecord.All.Select(whole => new SecondlyJudged(whole, Read(JsonOf(whole)) is { } record ? Judge(record) : null))];

    /// <summary>The differences in words, none where both agree or the record cannot be read.</summary>
    public IReadOnlyList<string> Differences => Said is null ? [] : [.. Differ(Said)];

    public static WholeOpinion Judge(ServiceRecord record) => WholeOpinion.Of(new Case(record, [], []));

    /// <summary>A record whose boiler was never reached need not name its gas; the type still asks for one, and mains gas stands in for it.</summary>
    public static JsonNode JsonOf(WholeRecord whole)
    {
        var json = JsonNode.Parse(whole.Utf8)!;
        json["appliance"]!["fuel"] ??= "naturalGas";
        return json;
    }

    /// <summary>Null: refused.</summary>
    public static ServiceRecord? Read(JsonNode json) => RecordReader.Read(Encoding.UTF8.GetBytes(json.ToJsonString())).Record;

    private IEnumerable<string> Differ(WholeOpinion said)
    {
        var outcome = Name(said.Outcome);
        if (!Whole.AcceptedOutcomes.Contains(outcome))
            yield return $"{Whole.Outcome} wanted, {outcome} said";
        if (!Whole.AcceptedClosings.Contains(said.MayClose))
            yield return $"{Closing(Whole.MayClose)} wanted, {Closing(said.MayClose)} said";
        else if (!Whole.AcceptedClosesAs.Contains(said.ClosesAs is { } closesAs ? Name(closesAs) : null))
            yield return $"closed as {Whole.AcceptedClosesAs[0] ?? "nothing"} wanted, as {said.ClosesAs?.ToString() ?? "nothing"} said";
        var asks = said.Asks.Select(pointer => $"#{pointer}").ToList();
        foreach (var wanted in Whole.Asks.Where(wanted => !asks.Contains(wanted) && !said.MayClose))
            yield return $"does not ask {wanted}";
        foreach (var unwanted in Whole.DoesNotAsk.Where(unwanted => asks.Exists(asked => $"{asked}/".StartsWith($"{unwanted}/", StringComparison.Ordinal))))
            yield return $"asks {unwanted}";
        if (Whole.State is null)
            yield break;
        var state = said.Situation.State is { } worst ? Name(worst) : null;
        if (!Whole.AcceptedStates.Contains(state))
            yield return $"{Whole.State} wanted, {state ?? "no danger"} said";
        var open = said.Owed.Where(one => one.Holds).Select(one => Name(one.Kind)).ToHashSet();
        foreach (var kind in Whole.Open.Where(kind => !open.Contains(kind)))
            yield return $"{kind} is not open";
        if (Whole.IsHandled != said.Situation.IsHandled)
            yield return Whole.IsHandled == true ? "said to be unhandled" : "said to be handled";
    }

    private static string Name<T>(T value) where T : struct, Enum => System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(value.ToString());

    private static string Closing(bool mayClose) => mayClose ? "closed" : "held";
}
