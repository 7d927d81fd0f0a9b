using Records;

namespace SecondOpinion.Duties;

/// <summary>The dangers of a visit and what is open about them.</summary>
internal sealed record Situation(IReadOnlyList<Danger> Dangers)
{
    /// <summary>The worst state; null without a danger.</summary>
    public DangerState? State => Dangers.Count == 0 ? null : Dangers.Min(danger => danger.State);

    /// <summary>Kinds of duties that are not met about some danger.</summary>
    public IEnumerable<DutyKind> Open => Dangers.SelectMany(danger => danger.Handling).Where(one => one.Holds).Select(one => one.Kind).Distinct();

    public bool IsHandled => Dangers.All(danger => danger.IsHandled);

    /// <summary>Dangers by what the record shows and by what the engineer classed.</summary>
    public static Situation Of(Visit visit)
    {
        var shown = visit.Shown;
        var dangers = new List<Danger>();
        var answered = new HashSet<Shown>();
        foreach (var (place, defect) in visit.Defects.Index())
        {
            var its = shown.Where(one => DefectPlace.Answers(defect, one)).ToList();
            if (!DefectPlace.IsOfThisBoiler(visit, defect))
            {
                answered.UnionWith(its.Where(one => one.Section == "gasSupply"));
                if (DangerElsewhere.Of(visit, place) is { } elsewhere)
                    dangers.Add(elsewhere);
                continue;
            }

            var isMended = defect is { Action: DefectAction.Rectified, Mechanism: DefectMechanism.GasLeak or DefectMechanism.ProductsNotRemoved };
            if (!DefectPlace.IsDangerous(defect) && !isMended)
                continue;
            answered.UnionWith(its);
            dangers.Add(Handling.Of(visit, place, its));
        }

        dangers.AddRange(shown.Where(one => !answered.Contains(one)).Select(one => Undocumented(visit, one)));
        if (dangers.Count == 0)
            dangers.AddRange(Escapes.Unclassed(visit));
        return new Situation(dangers);
    }

    /// <summary>Seen and not written down as a defect: nobody was told of it.</summary>
    private static Danger Undocumented(Visit visit, Shown shown)
    {
        // A defect of a lower class than any danger has is asked for its class.
        var low = visit.Defects.Index().Where(one => one.Item.Class is DefectClass.Other or null && DefectPlace.Answers(one.Item, shown)).Select(one => $"/defects/{one.Index}/class").FirstOrDefault();
        IEnumerable<string> asks = [low ?? "/defects", .. AlsoAsked(visit, shown)];
        var isUnproved = shown.Pointer.EndsWith("/leakChecked", StringComparison.Ordinal);
        return new Danger(
            shown.Pointer, isUnproved ? DangerState.NotExcluded : DangerState.Standing,
            isUnproved ? [Asked(DutyKind.ProveGasPath, shown.Pointer), Asked(DutyKind.HandleDanger, shown.Pointer)] : [.. asks.Select(ask => Asked(DutyKind.HandleDanger, ask)), Asked(DutyKind.MadeKnown, "/defects"), .. OfItsDuty().Select(kind => Asked(kind, "/defects"))]);

        // The duty that looked at it is as little met as if nobody had.
        IEnumerable<DutyKind> OfItsDuty() => shown.Section switch
        {
            "safetyDevices" => [DutyKind.SafetyDevices],
            "disturbedJoints" => [DutyKind.ProveCombustionCircuit],
            _ => [],
        };


        Owed Asked(DutyKind kind, string pointer) => new(kind, DutyWeight.Must, pointer, DutyState.Missing, shown.Pointer);
    }

    /// <summary>What might show that it is no longer so, or who was called.</summary>
    public static IEnumerable<string> AlsoAsked(Visit visit, Shown shown) => shown.Section switch
    {
        "combustion" when shown.Pointer.StartsWith("/combustion/readings/", StringComparison.Ordinal) =>
            (visit.Record.Combustion?.Readings ?? []).Index().Where(one => one.Item.TakenAt is null).Select(one => $"/combustion/readings/{one.Index}/takenAt"),
        "gasSupply" => [shown.Pointer, "/gasSupply/reportedTo"],
        "combustion" => [shown.Pointer],
        _ => [],
    };
}
