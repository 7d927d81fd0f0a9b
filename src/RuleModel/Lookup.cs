using Findings;
using ServiceRecords;

namespace RuleModel;

/// <summary>What the service looked up beside the record, before judging.</summary>
public sealed class Lookup
{
    /// <summary>Nothing.</summary>
    public static readonly Lookup None = new();

    /// <summary>The stored evaluation that serves as the previous visit.</summary>
    public string? PreviousEvaluationId { get; init; }

    /// <summary>Stored visits with the same serial number, the latest first; null: none, or not looked up because the record states its previous visit itself.</summary>
    public IReadOnlyList<PastVisit>? History { get; init; }

    /// <summary>The stored maker's profile.</summary>
    public string? ProfileId { get; init; }

    /// <summary>Its version.</summary>
    public int? ProfileVersion { get; init; }

    /// <summary>Its limits.</summary>
    public MakerLimits? ProfileLimits { get; init; }

    /// <summary>What an answer says was looked up: with it, the same record is judged alike again.</summary>
    /// <param name="context">The answer's context.</param>
    /// <param name="profileLimits">The limits of the profile that it names.</param>
    public static Lookup Of(EvaluationContext context, MakerLimits? profileLimits = null)
    {
        ArgumentNullException.ThrowIfNull(context);
        return new Lookup
        {
            PreviousEvaluationId = context.PreviousEvaluationId,
            History = context.History,
            ProfileId = context.ProfileId,
            ProfileVersion = context.ProfileVersion,
            ProfileLimits = profileLimits,
        };
    }

    /// <summary>As answers show it.</summary>
    public EvaluationContext ToContext() => new()
    {
        PreviousEvaluationId = PreviousEvaluationId,
        History = History,
        ProfileId = ProfileId,
        ProfileVersion = ProfileVersion,
    };

    /// <summary>The record's own limits where it states them, the profile's elsewhere.</summary>
    public MakerLimits Fill(MakerLimits? own) => ProfileLimits is { } stored
        ? new MakerLimits
        {
            CoCo2RatioMax = own?.CoCo2RatioMax ?? stored.CoCo2RatioMax,
            CoPpmMax = own?.CoPpmMax ?? stored.CoPpmMax,
            Co2PercentMin = own?.Co2PercentMin ?? stored.Co2PercentMin,
            Co2PercentMax = own?.Co2PercentMax ?? stored.Co2PercentMax,
            InletPressureMbarMin = own?.InletPressureMbarMin ?? stored.InletPressureMbarMin,
            BurnerPressureMbar = own?.BurnerPressureMbar ?? stored.BurnerPressureMbar,
            ServiceIntervalMonths = own?.ServiceIntervalMonths ?? stored.ServiceIntervalMonths,
            SealsToRenew = own?.SealsToRenew ?? stored.SealsToRenew,
            // A value and its source come from the same side: the profile's source must not vouch for a value that the record states.
            Source = StatesALimit(own) ? own!.Source : stored.Source,
            DecisionReference = own?.DecisionReference,
        }
        : own ?? new MakerLimits();

    private static bool StatesALimit(MakerLimits? own) => own is not null && (own.CoCo2RatioMax ?? own.CoPpmMax ?? own.Co2PercentMin
        ?? own.Co2PercentMax ?? own.InletPressureMbarMin ?? own.BurnerPressureMbar ?? own.ServiceIntervalMonths) is not null;
}
