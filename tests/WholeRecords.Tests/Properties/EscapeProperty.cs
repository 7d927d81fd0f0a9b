using System.Text.Json.Nodes;
using Findings;

namespace WholeRecords.Tests.Properties;

/// <summary>7. No word, and no two words, get a dangerous record closed or rid of its danger.</summary>
/// <param name="length">How much of it.</param>
internal sealed class EscapeProperty(RunLength length) : IProperty
{
    public static readonly Claim Job = new("7a", "No word makes a dangerous record closable as a repair, a check, a service or an installation.");
    public static readonly Claim Visit = new("7b", "No word makes a record with an unhandled danger closable at all.");
    public static readonly Claim Lost = new("7c", "No word makes a dangerous record anything but unsafe.");
    public static readonly Claim OneLost = new("7d", "No word makes one of the dangers of a record go.");

    public IReadOnlyList<Claim> Claims { get; } = [Job, Visit, Lost, OneLost];

    public IEnumerable<Counterexample> Ask(Base one, Action<Claim> asked)
    {
        if (one.Whole is not { Danger: not ("none" or "putRight") } whole)
            yield break;
        foreach (var variant in Variants(one))
            if (one.With(variant) is { } said)
                foreach (var found in Compare(one, whole, variant, said, asked))
                    yield return found;
    }

    private IEnumerable<Variant> Variants(Base one)
    {
        var words = Escapes.Words(one).ToList();
        var reasons = Escapes.ReasonsThatMatter(one).ToList();
        List<Variant> singles = [.. words, .. reasons];
        return words.Concat(length.EveryPlace ? Escapes.EveryReason(one) : reasons).Concat(length.Pairs is { } number ? Sampled(one, singles, number) : AllPairs(words, reasons));
    }

    private static IEnumerable<Variant> AllPairs(List<Variant> words, List<Variant> reasons) =>
        words.SelectMany((word, index) => words.Skip(index + 1).Where(other => other.Changes[0].Pointer != word.Changes[0].Pointer).Concat(reasons).Select(other => word + other));

    /// <summary>By the record's name alone, so that each run takes the same.</summary>
    private static IEnumerable<Variant> Sampled(Base one, List<Variant> singles, int number)
    {
        var random = new Random(RunLength.NumberOf(one.Name));
        for (var left = number; left > 0; left--)
            yield return singles[random.Next(singles.Count)] + singles[random.Next(singles.Count)];
    }

    private static IEnumerable<Counterexample> Compare(Base one, WholeRecord whole, Variant variant, Answer said, Action<Claim> asked)
    {
        if (said.ClosesAsTheJob is { } asTheJob)
        {
            asked(Job);
            if (asTheJob && !whole.AcceptedClosesAs.Contains(said.ClosesAs) && !(one.Said.MayClose && one.Said.ClosesAs == said.ClosesAs))
                yield return Counterexample.Of(Job, $"closes as {said.ClosesAs}", one, variant, said);
        }

        if (whole.IsHandled == false && !MayHandle(one, whole, variant))
        {
            asked(Visit);
            if (said.MayClose && !one.Said.MayClose)
                yield return Counterexample.Of(Visit, "closes", one, variant, said);
        }

        if (one.Said.Outcome == OverallOutcome.Unsafe)
        {
            asked(Lost);
            if (said.Outcome != OverallOutcome.Unsafe)
                yield return Counterexample.Of(Lost, $"{Wire.WireNames.Of(said.Outcome)}", one, variant, said);
            asked(OneLost);
            if (one.Said.Dangers.Except(said.Dangers).Order(StringComparer.Ordinal).FirstOrDefault() is { } gone)
                yield return Counterexample.Of(OneLost, $"{gone.Split(' ')[0]} gone", one, variant, said);
        }
    }

    /// <summary>
    /// Whether the word may be the very act that the danger wanted: its defect says that the boiler was turned off or disconnected, nothing
    /// but handling it is open, and the word says that it was left so.
    /// </summary>
    private static bool MayHandle(Base one, WholeRecord whole, Variant variant) =>
        whole.Open is ["handleDanger"]
        && variant.Changes.Any(change => change.Pointer == "/appliance/stateOnLeaving" && change.Value is JsonValue value && value.GetValue<string>() != "inUse")
        && one.Record.Defects?.Any(defect => defect.Action is Records.DefectAction.TurnedOff or Records.DefectAction.Disconnected) == true;
}
