using Findings;
using Kernel.Catalogues;

namespace Kernel.Engine;

/// <summary>What waits after a visit until the appliance is used again, and what of that the visit made up.</summary>
internal static class DeferralList
{
    /// <summary>First what earlier visits put off, then what this one did, in the order of the parts.</summary>
    /// <param name="catalogue">The rules.</param>
    /// <param name="visit">What was judged.</param>
    /// <param name="blockedBy">Ids of the rules that stand in the way of closing.</param>
    public static IReadOnlyList<Deferral> Of(RuleCatalogue catalogue, JudgedVisit visit, IReadOnlySet<string> blockedBy)
    {
        var owed = visit.Owed;
        List<Deferral>? all = null;
        foreach (var before in visit.DeferredBefore)
            (all ??= []).Add(IsMadeUp(before.Part) ? before with { MadeUp = true } : before with { Weight = Graver(before) });
        foreach (var (part, weight) in owed.Weights)
        {
            if (owed.IsDeferred(part) && catalogue.ComingBack.Contains(part) && all?.Exists(known => known.Part == part) != true)
                (all ??= []).Add(new Deferral { Part = part, Weight = weight, On = visit.AsOf });
        }

        return all is null ? [] : [.. all.OrderBy(deferral => deferral.On).ThenBy(deferral => deferral.Part, StringComparer.Ordinal)];

        // Owed, and neither put off again nor asked for in vain. A visit that does not owe it leaves it waiting.
        bool IsMadeUp(string part) => owed.IsKnown && owed.Weights.ContainsKey(part) && !owed.IsDeferred(part)
            && !catalogue.Rules.Any(rule => blockedBy.Contains(rule.Info.Id) && rule.Info.Serves.Any(serves => serves.Part == part));

        Weight Graver(Deferral before) => owed.Weights.TryGetValue(before.Part, out var weight) && weight > before.Weight ? weight : before.Weight;
    }
}
