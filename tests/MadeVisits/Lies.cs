using System.Text.Json.Nodes;

namespace MadeVisits;

/// <summary>The records by which a job might be got rid of. In each the boiler was left as it was found and in use, whatever is written.</summary>
internal sealed class Lies(int seed, RecordWriter writer, Condition sound, Truth truth, IReadOnlyList<Dealt> dealt)
{
    private readonly Condition _asFound = VisitGenerator.With(sound, dealt.Select(one => one.Danger), seed);

    public IEnumerable<Written> All()
    {
        if (truth.Examined.Count == 0)
            yield break;
        var seen = dealt.Where(one => one.Truth.IsSeen).Select(one => one.Danger.Kind).ToHashSet();
        // The danger is in the values, and nothing was done.
        var shown = writer.Write(_asFound, _asFound, truth.Written, []);
        foreach (var (lie, record) in Anyway(shown))
            yield return Lied(lie, record, (lie is Lie.CopiedFromLastYear or Lie.NoAccess) ? [] : seen);
        if (dealt.FirstOrDefault(one => one.Truth.IsSeen) is not { } target)
            yield break;
        foreach (var (lie, record) in About(target, shown))
            yield return Lied(lie, record, (lie is Lie.LeftOut or Lie.Reason or Lie.WithdrawnSilently or Lie.WithdrawnAsMistyped) ? [.. seen.Where(kind => kind != target.Danger.Kind)] : seen);
    }

    private IEnumerable<(Lie Lie, JsonObject Record)> Anyway(JsonObject shown)
    {
        yield return (Lie.CopiedFromLastYear, writer.Write(sound, sound, writer.Everything, [], noise: 1));
        yield return (Lie.NoAccess, writer.WithResult("noAccess").Write(_asFound, _asFound, new HashSet<Aspect>(), []));
        if (shown.At("/work/touched") is JsonArray { Count: > 0 })
            yield return (Lie.NothingTouched, Copy(shown).Put("/work/touched", new JsonArray()).Put("/disturbedJoints", new JsonArray()));
        if (shown.At("/partsFitted/0/kind") is not null)
            yield return (Lie.PartOfOtherKind, Copy(shown).Put("/partsFitted/0/kind", "other"));
    }

    private IEnumerable<(Lie Lie, JsonObject Record)> About(Dealt target, JsonObject shown)
    {
        var danger = target.Danger;
        var others = dealt.Where(one => one != target).Select(one => one.Danger).ToList();
        var leftOut = writer.Write(_asFound, _asFound, truth.Written.Where(aspect => aspect != danger.SeenBy).ToHashSet(), []);
        yield return (Lie.LeftOut, leftOut);
        yield return (Lie.Reason, Copy(leftOut).Put("/work/notDone", new JsonArray(new JsonObject { ["what"] = danger.Subject, ["because"] = ReasonFor(danger) })));

        var without = VisitGenerator.With(sound, others, seed);
        var replaced = writer.Write(without, without, truth.Written, []);
        yield return (Lie.WithdrawnSilently, replaced);
        yield return (Lie.WithdrawnAsMistyped, Copy(replaced).Put("/work/withdrawn", new JsonArray(new JsonObject { ["what"] = danger.Subject, ["because"] = "mistyped", ["note"] = "slip of the pen" })));

        yield return (Lie.TurnedOff, Copy(shown).Put("/appliance/stateOnLeaving", "turnedOff").Put("/appliance/leftOffBecause", "customerWish"));
        var lowered = new JsonObject { ["description"] = danger.Says, ["location"] = "boiler", ["topic"] = danger.Topic, ["subject"] = danger.Subject, ["class"] = "other", ["mechanism"] = danger.Mechanism, ["action"] = "none", ["told"] = new JsonArray("responsiblePerson") };
        yield return (Lie.ClassedLower, Copy(shown).Put("/defects", new JsonArray(lowered)));
        var elsewhere = Copy(lowered).Put("/class", danger.Class).Put("/concerns", "otherAppliance");
        yield return (Lie.OfAnotherAppliance, Copy(shown).Put("/defects", new JsonArray(elsewhere)));
    }

    private Written Lied(Lie lie, JsonObject record, HashSet<DangerKind> shown) => new(record, truth with
    {
        Lie = lie,
        Shown = shown,
        Dangers = [.. truth.Dangers.Select(danger => danger with { State = DangerState.Standing, IsHandled = false })],
        Written = lie == Lie.CopiedFromLastYear ? writer.Everything : truth.Written,
    });

    /// <summary>The one that sounds best.</summary>
    private static string ReasonFor(Danger danger) => danger.SeenBy switch
    {
        Aspect.Combustion or Aspect.AirInlet => "noInstrument",
        Aspect.Flue or Aspect.Terminal or Aspect.Case => "notReachable",
        Aspect.FlueFlow or Aspect.SafetyDevices => "unsafeToDo",
        _ => "customerRefused",
    };

    private static JsonObject Copy(JsonObject record) => record.DeepClone().AsObject();
}
