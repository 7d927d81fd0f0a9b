namespace SecondOpinion.Duties;

/// <summary>Items (i) to (ix) of regulation 36(3)(c) that can be written before leaving.</summary>
internal static class LandlordRecord
{
    private const DutyKind Kind = DutyKind.LandlordRecord;
    private static readonly string[] Musts = ["landlordName", "landlordAddress", "premisesAddressGiven", "engineerSigned", "defectsNotedOrNone", "workNoted", "examinationConfirmed"];

    public static IEnumerable<Owed> Of(Visit visit)
    {
        if (visit.IsNothingReached || !visit.IsCheck)
            yield break;
        const string Why = "36(3)(c): let, and a check";
        var isPutOff = visit.IsRunningPutOff;
        foreach (var member in Musts)
        {
            var answer = visit.Pages.Text($"/paperwork/{member}") switch { "true" => true, "false" when !isPutOff => false, _ => (bool?)null };
            yield return visit.Must(Kind, $"/paperwork/{member}", answer, Why, isPutOff ? Seen.Running : Seen.Always);
        }

        yield return visit.Should(Kind, "/tightnessTests", visit.Record.TightnessTests is { Count: > 0 } ? true : null, "36(2)");
        yield return visit.Should(Kind, "/pipework/visualOk", visit.Recorded("/pipework/visualOk"), "36(2)");
        yield return visit.Should(Kind, "/previousVisit", visit.Recorded("/previousVisit") ?? (visit.One.History.Count > 0 ? true : null), "36(3)(a)");
        yield return visit.Should(Kind, "/paperwork/nextDueOn", visit.Recorded("/paperwork/nextDueOn"), "36(3)(a)");
    }
}
