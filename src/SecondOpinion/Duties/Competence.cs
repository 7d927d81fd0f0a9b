using Records;

namespace SecondOpinion.Duties;

/// <summary>The categories of whoever did the work, or of the supervisor, cover it on the day.</summary>
internal static class Competence
{
    private const string Categories = "/engineer/categories";

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached)
            yield break;
        yield return visit.Must(DutyKind.Competence, Categories, Covers(visit), "work on gas fittings");
        yield return visit.Must(DutyKind.Competence, "/engineer/licenceNumber", visit.Recorded("/engineer/licenceNumber"), "work on gas fittings");
        yield return visit.Should(DutyKind.Competence, "/engineer/businessNumber", visit.Recorded("/engineer/businessNumber"), "work on gas fittings");
    }

    /// <summary>One category for liquefied gas covers either (the trade assesses both together; from memory). Up to 70 kW net is domestic work.</summary>
    private static bool? Covers(Visit visit)
    {
        if (visit.Record.Engineer?.Categories is not { Count: > 0 } categories || visit.Record.Appliance.Fuel is not { } burnt)
            return null;
        var isNatural = burnt == Fuel.NaturalGas;
        var held = categories.Where(one => one.ExpiresOn >= visit.One.AsOf && one.Fuel is { } fuel && (fuel == Fuel.NaturalGas) == isNatural).Select(one => one.Scope).ToHashSet();
        var isWorkplace = visit.Record.Premises?.Use == PremisesUse.Workplace;
        return visit.One.NetInputKw() > 70 ? held.Contains(CategoryScope.NonDomestic)
            : held.Contains(CategoryScope.Domestic) || (isWorkplace && held.Contains(CategoryScope.NonDomestic));
    }
}
