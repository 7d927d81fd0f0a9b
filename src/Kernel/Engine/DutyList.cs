using Findings;
using Kernel.Catalogues;

namespace Kernel.Engine;

/// <summary>The duties of a visit with how far its record shows that each was done.</summary>
internal static class DutyList
{
    /// <summary>The kind of which <paramref name="part"/> is a part.</summary>
    public static string KindOf(string part) => part.IndexOf('/', StringComparison.Ordinal) is >= 0 and var end ? part[..end] : part;

    /// <summary>The duties, in the order of duties.json.</summary>
    /// <param name="catalogue">The rules.</param>
    /// <param name="owed">What the visit owes.</param>
    /// <param name="answers">What each rule said.</param>
    public static IReadOnlyList<Duty> Of(RuleCatalogue catalogue, OwedDuties owed, IEnumerable<(Finding Finding, RuleInfo? Rule)> answers)
    {
        if (owed.All.Count == 0)
            return [];

        var states = new Dictionary<string, DutyState>(StringComparer.Ordinal);
        foreach (var part in owed.All.Keys)
            Raise(states, KindOf(part), owed.IsDeferred(part) ? DutyState.Deferred : DutyState.Met);
        foreach (var (finding, rule) in answers)
        {
            if (rule is null || rule.Serves.Count == 0 || StateOf(finding) is not (> DutyState.Met and var state))
                continue;
            foreach (var serves in rule.Serves.Where(serves => owed.All.ContainsKey(serves.Part)))
                Raise(states, KindOf(serves.Part), state);
        }

        return
        [
            .. catalogue.DutyKinds.Where(kind => states.ContainsKey(kind.Kind)).Select(kind => (kind, parts: owed.All.Where(part => KindOf(part.Key) == kind.Kind).ToList()))
                .Select(duty => new Duty
                {
                    Kind = duty.kind.Kind,
                    Title = duty.kind.Title,
                    Weight = duty.parts.Max(part => part.Value.Weight),
                    State = states[duty.kind.Kind],
                    Because = [.. duty.parts.SelectMany(part => part.Value.Because).Distinct()],
                    References = [.. duty.parts.SelectMany(part => part.Value.By).Distinct().SelectMany(catalogue.References.Of).DistinctBy(reference => (reference.Id, reference.Clause))],
                }),
        ];
    }

    /// <summary>What calls for what <paramref name="rule"/> asks for, in words.</summary>
    public static IEnumerable<string> CausesOf(OwedDuties owed, RuleInfo rule) =>
        rule.Serves.SelectMany(serves => owed.All.TryGetValue(serves.Part, out var part) ? part.Because : []).Select(because => because.Words);

    private static DutyState StateOf(Finding finding) => finding.Outcome switch
    {
        Outcome.Unsafe or Outcome.Error => DutyState.Bad,
        Outcome.Missing => DutyState.Missing,
        Outcome.Advisory when finding.NotDone == true => DutyState.ByReason,
        _ => DutyState.Met,
    };

    private static void Raise(Dictionary<string, DutyState> states, string kind, DutyState state)
    {
        if (!states.TryGetValue(kind, out var known) || state > known)
            states[kind] = state;
    }
}
