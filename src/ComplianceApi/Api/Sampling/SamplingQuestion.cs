using Calculations;
using ComplianceApi.Api.OpenApi;
using ComplianceApi.Api.Requests;
using ComplianceApi.Api.Schemas;
using Records.Faults;

namespace ComplianceApi.Api.Sampling;

/// <summary>What is asked of a sample: how many there are, what is tolerated, how sure one wants to be, and what the visits gave.</summary>
internal sealed class SamplingQuestion
{
    private const int MostItems = 50_000;

    private static readonly BodyMember<int?> Population = BodyMember.Whole("population", "How many there are. Without it, and without items, the population counts as unlimited.", 1, Hypergeometric.LargestPopulation);

    private static readonly BodyMember<IReadOnlyList<string>?> Items = BodyMember.Lines("items", "All that may be drawn, each once, such as serial numbers or record ids; in place of population.", MostItems, RecordPatterns.LongestName);

    private static readonly BodyMember<int?> TolerableCount = BodyMember.Whole("tolerableCount", "From how many faulty ones on the sample is to show it.", 1, Hypergeometric.LargestPopulation);

    private static readonly BodyMember<decimal?> TolerableShare = BodyMember.Number("tolerableSharePercent", "The same as a share of the population. Unit (UCUM): %.", Inspection.LeastSharePercent, 100);

    private static readonly BodyMember<decimal?> Confidence = BodyMember.Number("confidencePercent", "With which confidence. Unit (UCUM): %.", 50, Inspection.HighestConfidencePercent, isRequired: true);

    private static readonly BodyMember<int?> Allowed = BodyMember.Whole("allowedFaults", "How many faults the sample may show all the same; by default none. More of them need a larger sample.", 0, Inspection.MostAllowed);

    private static readonly BodyMember<string?> SeedText = BodyMember.Line("seed", "The seed of the draw; the same seed and items give the same draw always.", 200);

    private static readonly BodyMember<string?> Promised = BodyMember.Line("seedPromise", "SHA-256 of the seed (UTF-8, lower-case hex), as it was made known before the list of items was fixed. A seed that does not fit is refused.", 64);

    private static readonly BodyMember<int?> VisitedCount = BodyMember.Whole("visited", "How many of those drawn have been visited.", 1, Inspection.MostVisited);

    private static readonly BodyMember<int?> FaultyCount = BodyMember.Whole("faulty", "How many of the visited were faulty.", 0, Inspection.MostVisited);

    /// <summary>The codes of what no schema says.</summary>
    public static BeyondSchema Beyond { get; } = new(FaultCodes.RequiredMember, PromiseBroken);

    /// <summary>The body.</summary>
    public static BodyShape Shape { get; } = new(
        "SamplingQuestion",
        "A sample to be sized, drawn and judged. Either population or items, or neither; tolerableCount or tolerableSharePercent; items and seed together; visited and faulty together.",
        Population, Items, TolerableCount, TolerableShare, Confidence, Allowed, SeedText, Promised, VisitedCount, FaultyCount);

    private const string PromiseBroken = "promiseBroken";

    /// <summary>How many there are; null: without end.</summary>
    public int? Size { get; private init; }

    /// <summary>All that may be drawn.</summary>
    public IReadOnlyList<string>? Drawable { get; private init; }

    /// <summary>From how many on it is to be shown; null where the population has no end.</summary>
    public int? Tolerable { get; private init; }

    /// <summary>The share, where it was given.</summary>
    public decimal? TolerablePercent { get; private init; }

    /// <summary>With which confidence, in percent.</summary>
    public decimal ConfidencePercent { get; private init; }

    /// <summary>Faults that are allowed.</summary>
    public int AllowedFaults { get; private init; }

    /// <summary>The seed; given with the items.</summary>
    public string? Seed { get; private init; }

    /// <summary>What the visits gave.</summary>
    public (int Visited, int Faulty)? Visits { get; private init; }

    /// <summary>Reads the question; its faults are in <paramref name="body"/>.</summary>
    public static SamplingQuestion? Of(BodyValues body)
    {
        if (!body.HasMembers)
            return null;

        var items = Items.Of(body);
        var population = items?.Count ?? Population.Of(body);
        CheckCompany(body);
        CheckItems(body, items);
        CheckSeed(body);
        if (body.Faults.Count > 0)
            return null;

        var share = TolerableShare.Of(body);
        var tolerable = TolerableCount.Of(body) ?? (population is { } count ? Inspection.CountOfShare(count, share!.Value) : null);
        var question = new SamplingQuestion
        {
            Size = population,
            Drawable = items,
            Tolerable = tolerable,
            TolerablePercent = share,
            ConfidencePercent = Confidence.Of(body)!.Value,
            AllowedFaults = Allowed.Of(body) ?? 0,
            Seed = SeedText.Of(body),
            Visits = VisitedCount.Of(body) is { } visited ? (visited, FaultyCount.Of(body)!.Value) : null,
        };
        question.CheckBounds(body);
        return body.Faults.Count > 0 ? null : question;
    }

    /// <summary>Which members go together.</summary>
    private static void CheckCompany(BodyValues body)
    {
        if (body.Has(Population) && body.Has(Items))
            body.Add("#/population", FaultCodes.OneOnly, "Give the population or the items, not both.");
        if (body.Has(TolerableCount) && body.Has(TolerableShare))
            body.Add("#/tolerableSharePercent", FaultCodes.OneOnly, "Give the tolerable number or the tolerable share, not both.");
        if (!body.Has(TolerableCount) && !body.Has(TolerableShare))
            body.Add("#/tolerableSharePercent", FaultCodes.RequiredMember, "Give the tolerable number or the tolerable share.");
        Needs(TolerableCount, Population, Items);
        Needs(VisitedCount, Population, Items);
        Needs(VisitedCount, FaultyCount);
        Needs(FaultyCount, VisitedCount);
        Needs(Items, SeedText);
        Needs(SeedText, Items);
        Needs(Promised, SeedText);

        void Needs(BodyMember given, params ReadOnlySpan<BodyMember> others)
        {
            foreach (var other in others)
            {
                if (!body.Has(given) || body.Has(other))
                    return;
            }

            body.Add("#/" + others[0].Name, FaultCodes.RequiredMember, $"'{given.Name}' needs '{others[0].Name}'.");
        }
    }

    private static void CheckItems(BodyValues body, IReadOnlyList<string>? items)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (index, item) in (items ?? []).Index())
        {
            if (item.Length > 0 && !seen.Add(item))
                body.Add($"#/items/{index}", FaultCodes.DuplicateItem, "The item is in the list already.");
        }
    }

    private static void CheckSeed(BodyValues body)
    {
        if (SeedText.Of(body) is { } seed && Promised.Of(body) is { } promise && SeededDraw.Promise(seed) != promise)
            body.Add("#/seedPromise", PromiseBroken, "This is not the SHA-256 of the seed (UTF-8, lower-case hex).");
    }

    private void CheckBounds(BodyValues body)
    {
        if (Tolerable > Size)
            body.Add("#/tolerableCount", FaultCodes.BoundsCrossed, "More are tolerable than there are.");
        if (Tolerable <= AllowedFaults)
            body.Add("#/allowedFaults", FaultCodes.BoundsCrossed, "The sample may not be allowed as many faults as it is to exclude.");
        if (Visits is { } visits && visits.Visited > Size)
            body.Add("#/visited", FaultCodes.BoundsCrossed, "More were visited than there are.");
        if (Visits is { } found && found.Faulty > found.Visited)
            body.Add("#/faulty", FaultCodes.BoundsCrossed, "More were faulty than were visited.");
    }
}
