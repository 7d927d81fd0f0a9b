using System.Text.Json.Nodes;
using Findings;
using Records.Canonical;
using Records.Reading;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>
/// Recorded values on which the other opinions advise, whatever the visit owes. Silence is not theirs: a duty says whether it weighs. Nor is
/// the accuracy of an instrument: stating it is evidence, and evidence that contradicts nothing never lowers (duties 6.1).
/// </summary>
internal static class Advice
{
    /// <summary>Said of defects, papers and visits, or judged here by the page of duties.</summary>
    private static readonly HashSet<string> JudgedElsewhere =
    [
        .. InferenceOpinions.All.Select(one => one.RuleId), .. UnsafeSituationOpinions.All.Select(one => one.RuleId),
        .. GraveHistoryOpinions.All.Select(one => one.RuleId), .. HistoryOpinions.All.Select(one => one.RuleId),
        .. PaperworkOpinions.All.Select(one => one.RuleId), "safety-device-proved", "safety-devices-listed", "landlord-deadline", "readings-at-both-rates",
    ];

    /// <summary>What each of these reads: where any is absent it advises on silence. Of the others, the member that it names.</summary>
    private static readonly Dictionary<string, string[]> Reads = new(StringComparer.Ordinal)
    {
        ["airtight-home-vent"] = ["/premises/airPermeabilityM3PerHM2"],
        ["flue-co2"] = ["/makerLimits/co2PercentMin", "/makerLimits/co2PercentMax"],
        ["flue-effective"] = ["/flue/effectivenessConfirmed", "/flue/wholeRouteSeen"],
        ["inlet-pressure-loss"] = ["/gasSupply/meterOperatingMbar", "/gasSupply/applianceInletMbar"],
        ["new-boiler-design-flow"] = ["/commissioning/designFlowC"],
        ["new-boiler-extra-measure"] = ["/commissioning/extraMeasure"],
        ["pipework-sound"] = ["/pipework/visualOk"],
        ["pressure-finer-than-gauge"] = ["/instruments", "/gasSupply"],
        ["pressure-or-heat-input-examined"] = ["/gasSupply/applianceInletMbar"],
        ["vessel-volume"] = ["/water/vesselVolumeL", "/water/systemVolumeL"],
        ["electrode-gap"] = ["/burner/electrodeGapMm"],
        ["co-alarm-works"] = ["/coAlarm/present"],
        ["fuse-and-isolator"] = ["/electrical/fuseAmps", "/electrical/doublePoleIsolation"],
    };

    /// <summary>Of a list's item: the member that it reads.</summary>
    private static readonly Dictionary<string, string> ReadsOfItem = new(StringComparer.Ordinal)
    {
        ["combustion-joint-checked"] = "leakChecked",
        ["gas-joint-leak-check"] = "leakChecked",
        ["new-seal-part-number"] = "partNumber",
        ["part-for-this-gas"] = "forFuel",
        ["gas-valve-union-seal"] = "renewed",
    };

    /// <summary>What is said, rule by rule.</summary>
    public static IEnumerable<string> Of(Visit visit)
    {
        var bare = WithoutAccuracies(visit.One);
        foreach (var (rule, say) in OpinionTable.All.Where(one => !JudgedElsewhere.Contains(one.Key)))
        {
            foreach (var opinion in say(bare).Where(opinion => opinion.Outcome == Outcome.Advisory && IsOfValues(visit, rule, opinion.Subject)))
                yield return $"{rule} {opinion.Subject}";
        }

        if (visit.Record.PreviousVisit is { } earlier && visit.IsCheck && (earlier.DeemedOn ?? earlier.FinishedAt?.Date)?.AddMonths(12) < visit.One.AsOf)
            yield return "landlord-deadline /previousVisit";
        foreach (var clearance in Terminal.JudgedByEffect(visit))
            yield return $"judged by effect {clearance}";
        if (visit.IsSleepingRoomExcepted)
            yield return "slept in since before the Regulations /premises";
        foreach (var (place, _) in (visit.Record.Work?.Withdrawn ?? []).Index())
            yield return $"taken back /work/withdrawn/{place}";
        if (Analysis.IsNought(visit))
            yield return "nought at every rate /combustion/readings";
    }

    private static bool IsOfValues(Visit visit, string rule, string subject)
    {
        if (rule == "electrode-gap" && visit.Record is { MakerLimits: { ElectrodeGapMmMin: var least, ElectrodeGapMmMax: var most, Source: not null }, Burner.ElectrodeGapMm: { } gap })
            return gap < least || gap > most;
        if (Reads.TryGetValue(rule, out var members))
            return members.All(visit.Pages.Has);
        return ReadsOfItem.TryGetValue(rule, out var member) ? visit.Pages.Has($"{subject}/{member}") : subject.Length == 0 || visit.Pages.Has(subject);
    }

    private static Case WithoutAccuracies(Case one)
    {
        if (one.Record.Instruments?.Any(instrument => instrument.Accuracies is not null) != true)
            return one;
        var json = JsonNode.Parse(CanonicalForm.Write(one.Record))!;
        foreach (var instrument in json["instruments"]!.AsArray())
            instrument!.AsObject().Remove("accuracies");
        return new Case(RecordReader.Read(System.Text.Encoding.UTF8.GetBytes(json.ToJsonString())).Record!, one.History, one.FirstPass);
    }
}
