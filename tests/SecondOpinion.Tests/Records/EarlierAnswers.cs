using Findings;
using Records;

namespace SecondOpinion.Tests.Records;

/// <summary>Answers to earlier records of the same visit: of some records one or two, whose dangers this record may show, speak of, take back or pass over.</summary>
internal static class EarlierAnswers
{
    /// <summary>Dangers as rules tell them: the rule, its topic and the place.</summary>
    private static readonly (string RuleId, string Topic, string Place)[] Told =
    [
        ("ambient-co-running", Topics.AmbientAir, "/ambientCo"), ("ambient-co-running", Topics.AmbientAir, "/ambientCo/runningPeakPpm"),
        ("combustion-ratio", Topics.Combustion, "/combustion/readings/0"), ("combustion-ratio", Topics.Combustion, "/combustion/readings/1"),
        ("flue-co", Topics.Combustion, "/combustion/readings/0"), ("air-inlet-check", Topics.Combustion, "/combustion/airInlet"),
        ("flue-supports", Topics.Flue, "/flue/supportsOk"), ("flue-examined", Topics.Flue, "/flue/visualOk"), ("case-seal", Topics.Flue, "/flue/caseSealOk"),
        ("tightness-result", Topics.Tightness, "/tightnessTests/0"), ("escape-made-safe", Topics.UnsafeSituation, "/escape"),
        ("disturbed-gas-joint-proved", Topics.Joints, "/disturbedJoints/0"), ("safety-device-proved", Topics.SafetyDevices, "/safetyDevices/0"),
    ];

    public static IReadOnlyList<EarlierAnswer> Make(int number, ServiceRecord record)
    {
        var dice = new Dice(unchecked(51_241 + (number * 29)));
        if (!dice.Chance(0.3))
            return [];

        // Sent after this record was finished, at its end, or while the work went on: then a reading may be later.
        return
        [
            .. Enumerable.Range(0, dice.OneOf<int>([1, 1, 2])).Select(_ => new EarlierAnswer
            {
                FinishedAt = record.FinishedAt.Value.AddMinutes(-dice.OneOf([0, 13, 30, 30, 80, 80])),
                Dangers = [.. Enumerable.Range(0, dice.OneOf<int>([1, 1, 1, 2, 3])).Select(_ => Danger(record, dice))],
            }),
        ];
    }

    /// <summary>Often at a place that a defect or a value taken back names.</summary>
    private static PastDanger Danger(ServiceRecord record, Dice dice)
    {
        if (record.Defects is { Count: > 0 } defects && dice.Chance(0.15))
            return Classed(defects, dice);

        string[] named = [.. (record.Defects ?? []).Select(defect => defect.Subject).Concat((record.Work?.Withdrawn ?? []).Select(entry => entry.What)).OfType<string>()];
        var near = Told.Where(danger => named.Any(place => place.Length > 0 && (Pages.IsWithin(danger.Place, place) || Pages.IsWithin(place, danger.Place)))).ToList();
        var (rule, topic, at) = near.Count > 0 && dice.Chance(0.5) ? dice.OneOf(near) : dice.OneOf(Told);
        return new PastDanger
        {
            RuleId = rule,
            Topic = dice.Chance(0.9) ? topic : null,
            Subject = at,
            Rate = at.StartsWith("/combustion/readings", StringComparison.Ordinal) ? dice.OneOf(["maximum", "maximum", "minimum", null]) : null,
            State = dice.OneOf(Enum.GetValues<DangerState>()),
        };
    }

    /// <summary>A danger that is only a defect's class is told by the defect's own topic and place.</summary>
    private static PastDanger Classed(IReadOnlyList<Defect> defects, Dice dice)
    {
        var (index, defect) = dice.OneOf(defects.Index().ToList());
        return new PastDanger
        {
            RuleId = (defect.Class == DefectClass.AtRisk) == dice.Chance(0.8) ? "at-risk-recorded" : "immediately-dangerous-recorded",
            Topic = defect.Topic ?? Topics.UnsafeSituation,
            Subject = string.IsNullOrEmpty(defect.Subject) ? FormattableString.Invariant($"/defects/{index}") : defect.Subject,
            State = dice.OneOf(Enum.GetValues<DangerState>()),
        };
    }
}
