using Records;

namespace SecondOpinion.Duties;

/// <summary>An alarm that landlord or owner owes, by nation: never holds a service.</summary>
internal static class AlarmOwed
{
    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached || visit.IsRemoval || visit.IsBesideTheBoiler)
            yield break;
        var (day, use) = (visit.One.AsOf, visit.Record.Premises?.Use);
        var isOwed = visit.Record.Jurisdiction switch
        {
            Nations.Scotland => use != PremisesUse.Workplace && day >= new DateOnly(2022, 2, 1),
            Nations.Wales => visit.IsLet && day >= new DateOnly(2022, 12, 1),
            Nations.England => visit.IsLet && day >= new DateOnly(2022, 10, 1) && visit.Record.Premises?.RoomIsLivingSpace != false,
            _ => false,
        };
        const string Why = "by the law of the nation";
        if (isOwed)
            yield return visit.Should(DutyKind.AlarmOwed, "/coAlarm/present", visit.Record.CoAlarm?.Present, Why);
        if ((isOwed || visit.IsInstallation) && visit.Record.CoAlarm?.Present == true)
            yield return visit.Should(DutyKind.AlarmOwed, "/coAlarm/tested", visit.Record.CoAlarm.Tested, Why);
    }
}
