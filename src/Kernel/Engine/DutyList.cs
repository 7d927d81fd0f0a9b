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
    /// <param name="findings">What the rules said.</param>
    /// <param name="rules">The rule of each finding; null for what no rule says.</param>
    public static IReadOnlyList<Duty> Of(RuleCatalogue catalogue, OwedDuties owed, List<Finding> findings, List<RuleFace?> rules)
    {
        if (owed.Weights.Count == 0)
            return [];

        var (states, notShown) = StatesOf(catalogue, owed, findings, rules);
        int[][] kinds = [.. owed.Calls.Select(called => ReferenceEquals(called.Parts, called.Call.Parts) ? catalogue.KindsOf(called.Call) : [.. called.Parts.Select(catalogue.KindOf).Distinct()])];
        var duties = new List<Duty>(states.Length);
        for (var kind = 0; kind < states.Length; kind++)
        {
            if (states[kind] is { } state)
                duties.Add(DutyOf(catalogue, owed, kinds, kind, state, notShown[kind]));
        }

        return duties;
    }

    /// <summary>What calls for what <paramref name="rule"/> asks for, in words.</summary>
    public static IEnumerable<string> CausesOf(OwedDuties owed, RuleInfo rule) =>
        rule.Serves.SelectMany(serves => owed.CausesOf(serves.Part)).Select(because => because.Words);

    /// <summary>How far each kind of duty was shown to be done, null where nothing of it is owed; and what the gravest weighs of what is not shown.</summary>
    private static (DutyState?[] States, Weight?[] NotShown) StatesOf(RuleCatalogue catalogue, OwedDuties owed, List<Finding> findings, List<RuleFace?> rules)
    {
        var states = new DutyState?[catalogue.DutyKinds.Count];
        var notShown = new Weight?[states.Length];
        foreach (var part in owed.Weights.Keys)
            Raise(part, owed.IsDeferred(part) ? DutyState.Deferred : DutyState.Met);
        for (var i = 0; i < findings.Count; i++)
        {
            if (rules[i] is not { Rule.Info.Serves: { Count: > 0 } served } || StateOf(findings[i]) is not (> DutyState.Met and var state))
                continue;
            foreach (var serves in served)
            {
                if (!owed.Weights.TryGetValue(serves.Part, out var weight))
                    continue;

                Raise(serves.Part, state);
                if (state == DutyState.Missing)
                    Weigh(serves.Part, Lesser(Lesser(weight, serves.AtMost), findings[i].Weight ?? Weight.Must));
            }
        }

        foreach (var part in owed.Contradicted)
        {
            if (catalogue.KindOf(part) is >= 0 and var kind && states[kind] is not null)
                Raise(part, DutyState.Contradicted);
        }

        return (states, notShown);

        void Raise(string part, DutyState state)
        {
            ref var known = ref states[catalogue.KindOf(part)];
            known = state > known || known is null ? state : known;
        }

        void Weigh(string part, Weight weight)
        {
            ref var known = ref notShown[catalogue.KindOf(part)];
            known = weight > known || known is null ? weight : known;
        }

        static Weight Lesser(Weight one, Weight other) => one < other ? one : other;
    }

    private static Duty DutyOf(RuleCatalogue catalogue, OwedDuties owed, int[][] kinds, int kind, DutyState state, Weight? notShown)
    {
        var weight = Weight.Should;
        List<DutyCause> because = [];
        List<RuleInfo> by = [];
        Span<bool> isShown = owed.Shown.Count <= 256 ? stackalloc bool[owed.Shown.Count] : new bool[owed.Shown.Count];
        for (var i = 0; i < kinds.Length; i++)
        {
            var called = owed.Calls[i];
            if (called.Call.Weight is not { } calledFor || !kinds[i].Contains(kind))
                continue;

            weight = calledFor > weight ? calledFor : weight;
            if (!by.Contains(called.Rule.Info))
                by.Add(called.Rule.Info);
            if (called.Fact is null && !because.Contains(called.Because))
                because.Add(called.Because);
            foreach (var shown in called.Fact?.Shown ?? [])
                isShown[shown.Index] = true;
        }

        for (var i = 0; i < isShown.Length; i++)
        {
            if (isShown[i])
                because.Add(owed.Shown[i]);
        }

        return new Duty
        {
            Kind = catalogue.DutyKinds[kind].Kind,
            Title = catalogue.DutyKinds[kind].Title,
            Weight = weight,
            State = state,
            NotShown = notShown == weight ? null : notShown,
            Because = because,
            References = ReferencesOf(by, catalogue.References),
        };
    }

    private static List<Reference> ReferencesOf(List<RuleInfo> rules, ReferenceBook references)
    {
        List<Reference> all = [];
        foreach (var rule in rules)
        {
            foreach (var reference in references.Of(rule))
            {
                if (!all.Exists(known => known.Id == reference.Id && known.Clause == reference.Clause))
                    all.Add(reference);
            }
        }

        return all;
    }

    private static DutyState StateOf(Finding finding) => finding.Outcome switch
    {
        Outcome.Unsafe or Outcome.Error => DutyState.Bad,
        Outcome.Missing => DutyState.Missing,
        Outcome.Advisory when finding.NotDone == true => DutyState.ByReason,
        _ => DutyState.Met,
    };
}
