using Records;

namespace SecondOpinion.Duties;

/// <summary>A danger on another appliance or on the supply made known; it does not make this boiler unsafe.</summary>
internal static class DangerElsewhere
{
    private const DutyKind Kind = DutyKind.DangerElsewhere;

    /// <summary>
    /// What stays a danger of the visit: one that the engineer classed immediately dangerous, and one that nobody was told of. Made known, one at
    /// risk is somebody else's.
    /// </summary>
    public static Danger? Of(Visit visit, int place)
    {
        var (defect, at) = (visit.Defects[place], $"/defects/{place}");
        if (defect.Class == DefectClass.AtRisk)
            return IsTold(visit, defect) ? null : new Danger(at, DangerState.Standing, [visit.Must(Kind, $"{at}/told", null, "34(3)")]);
        if (defect.Class != DefectClass.ImmediatelyDangerous)
            return null;
        var isIsolated = defect.Action is DefectAction.Rectified or DefectAction.Disconnected or DefectAction.TurnedOff && defect.IsolatedAt is not (null or IsolationPoint.NotIsolated);
        return new Danger(at, isIsolated ? DangerState.TakenOutOfUse : DangerState.Standing, [visit.Must(DutyKind.HandleDanger, $"{at}/isolatedAt", isIsolated ? true : null, "34(3)")]);
    }

    public static IEnumerable<Owed> Of(Visit visit)
    {
        foreach (var (place, defect) in visit.Defects.Index())
        {
            var at = $"/defects/{place}";
            if (DefectPlace.IsOfThisBoiler(visit, defect))
            {
                if (defect.Concerns is DefectConcern.OtherAppliance or DefectConcern.Supply && !IsItsOwn(defect))
                    yield return Visit.Contradiction(Kind, $"{at}/concerns", $"{at}/subject");
                continue;
            }

            yield return visit.Must(Kind, $"{at}/told", IsTold(visit, defect) ? true : null, "34(3)");
            if (DefectPlace.IsDangerous(defect))
                yield return visit.Should(Kind, $"{at}/labelled", defect.Labelled, "34(3)");
        }
    }

    /// <summary>Of the supply: whoever it belongs to, or the emergency service for him.</summary>
    public static bool IsTold(Visit visit, Defect defect) => defect.Concerns == DefectConcern.Supply
        ? defect.Told?.Any(one => one is ToldParty.Transporter or ToldParty.Supplier or ToldParty.EmergencyService) == true || !string.IsNullOrWhiteSpace(defect.EmergencyReference)
        : MadeKnown.IsTold(visit, defect) == true;

    /// <summary>The supply may be named by its own section.</summary>
    private static bool IsItsOwn(Defect defect) => defect.Concerns == DefectConcern.Supply && DefectPlace.SectionOf(defect) is "gasSupply" or "tightnessTests" or "pipework" or "escape" or "electrical";
}
