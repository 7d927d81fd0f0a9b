using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>Seals of the fire side listed with their state, circuit and case checked, analysis where the chamber was opened.</summary>
internal static class ProveCombustionCircuit
{
    private const DutyKind Kind = DutyKind.ProveCombustionCircuit;

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached || !(visit.Touched.Has(TouchedPart.CombustionCircuit) || visit.HasPart(PartKind.GasValve, PartKind.Injector)))
            yield break;
        foreach (var owed in Seals(visit).Concat(Case(visit)).Concat(Readings(visit)))
            yield return owed;
    }

    private static IEnumerable<Owed> Seals(Visit visit)
    {
        var seals = visit.Joints.Index().Where(one => one.Item.Place is JointPlace.TopPlate or JointPlace.BurnerDoor or JointPlace.Fan or JointPlace.Electrode or JointPlace.FlueCollector).ToList();
        var isOpened = visit.IsChamberOpened || visit.HasPart(PartKind.Fan, PartKind.Electrode, PartKind.CombustionSeal);
        if (isOpened && seals.Count == 0)
            yield return visit.Must(Kind, "/disturbedJoints", null, visit.Touched.Why(TouchedPart.CombustionCircuit));
        foreach (var (place, seal) in seals)
        {
            yield return visit.Must(Kind, $"/disturbedJoints/{place}/condition", seal.Condition is SealCondition.Good or SealCondition.Damaged ? true : null, $"/disturbedJoints/{place}");
            yield return visit.Must(Kind, $"/disturbedJoints/{place}/leakChecked", seal.LeakChecked == true ? true : null, $"/disturbedJoints/{place}", Seen.Running);
        }
    }

    private static IEnumerable<Owed> Case(Visit visit)
    {
        if (visit.One.IsOpenFlued() == true || visit.Record.Appliance.FlueType == FlueType.RoomSealedNatural)
            yield break;
        yield return visit.Must(Kind, "/flue/caseSealOk", visit.Record.Flue is { CaseSealChecked: true, CaseSealOk: not null } ? true : null, "the case was off", Seen.Running);
    }

    private static IEnumerable<Owed> Readings(Visit visit)
    {
        var hasReading = Analysis.After(visit).Any(one => one.Reading.Rate != FiringRate.Minimum && CombustionOpinions.RatioOf(one.Reading) is not null) ? true : (bool?)null;
        var why = visit.Touched.Why(TouchedPart.CombustionCircuit);
        if (visit.IsAnalysisNecessary)
        {
            yield return visit.Must(Kind, "/combustion/readings", hasReading, why, Seen.Running);
            if (hasReading == true)
                yield return visit.Must(Kind, "/combustion/testPointClosed", visit.Record.Combustion?.TestPointClosed, why);
        }
        else
        {
            yield return visit.Should(Kind, "/combustion/readings", hasReading, why, Seen.Running);
        }

        if (Analysis.IsModulating(visit) && hasReading == true)
        {
            var atMinimum = Analysis.After(visit).Any(one => one.Reading.Rate == FiringRate.Minimum) ? true : (bool?)null;
            yield return visit.Should(Kind, "/combustion/readings", atMinimum, "it burns at two rates", Seen.Running);
        }
    }
}
