using Records;

namespace SecondOpinion.Duties;

/// <summary>The dangers of a visit and what is open about them.</summary>
internal sealed record Situation(IReadOnlyList<Danger> Dangers)
{
    /// <summary>The worst state; null without a danger.</summary>
    public DangerState? State => Dangers.Count == 0 ? null : Dangers.Min(danger => danger.State);

    public bool IsHandled => Dangers.All(danger => danger.IsHandled);

    /// <summary>Dangers by what the record shows and by what the engineer classed.</summary>
    public static Situation Of(Visit visit)
    {
        var shown = ShownDangers.Of(visit).Distinct().ToList();
        var dangers = new List<Danger>();
        var answered = new HashSet<Shown>();
        foreach (var (place, defect) in visit.Defects.Index())
        {
            if (!DefectPlace.IsDangerous(defect) || !DefectPlace.IsOfThisBoiler(defect))
                continue;
            var its = shown.Where(one => DefectPlace.Answers(defect, one)).ToList();
            answered.UnionWith(its);
            dangers.Add(Handling.Of(visit, place, its));
        }

        dangers.AddRange(shown.Where(one => !answered.Contains(one)).Select(one => Undocumented(visit, one)));
        return new Situation(dangers);
    }

    /// <summary>Seen and not written down as a defect: nobody was told of it.</summary>
    private static Danger Undocumented(Visit visit, Shown shown)
    {
        // A defect of a lower class than any danger has is asked for its class.
        var low = visit.Defects.Index().Where(one => one.Item.Class is DefectClass.Other or null && DefectPlace.Answers(one.Item, shown)).Select(one => $"/defects/{one.Index}/class").FirstOrDefault();
        return new Danger(shown.Pointer, DangerState.Standing, [new Owed(DutyKind.HandleDanger, DutyWeight.Must, low ?? "/defects", DutyState.Missing, shown.Pointer)]);
    }
}
