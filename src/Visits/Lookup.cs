using Findings;
using Records;

namespace Visits;

/// <summary>What the service looked up beside the record, before judging.</summary>
public sealed class Lookup
{
    /// <summary>Nothing.</summary>
    public static readonly Lookup None = new();

    /// <summary>The stored evaluation that serves as the previous visit.</summary>
    public string? PreviousEvaluationId { get; init; }

    /// <summary>Stored visits with the same serial number, the latest first; null: none.</summary>
    public IReadOnlyList<PastVisit>? History { get; init; }

    /// <summary>Answers to other records of the same visit that named a danger, the latest first; null: none.</summary>
    public IReadOnlyList<EarlierAnswer>? SaidBefore { get; init; }

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
            SaidBefore = context.SaidBefore,
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
        SaidBefore = SaidBefore,
        ProfileId = ProfileId,
        ProfileVersion = ProfileVersion,
    };

    /// <summary>
    /// The record's own limits, filled up from the profile. Where both state a value, the record's counts if it names its source; without
    /// one the stricter of the two does, so that a slip of the pen loosens nothing.
    /// </summary>
    public MakerLimits Fill(MakerLimits? own)
    {
        if (ProfileLimits is not { } stored)
            return own ?? new MakerLimits();
        if (own is null)
            return stored;

        var isSourced = !string.IsNullOrWhiteSpace(own.Source);
        return new MakerLimits
        {
            CoCo2RatioMax = Smaller(own.CoCo2RatioMax, stored.CoCo2RatioMax),
            CoPpmMax = Smaller(own.CoPpmMax, stored.CoPpmMax),
            Co2PercentMin = Larger(own.Co2PercentMin, stored.Co2PercentMin),
            Co2PercentMax = Smaller(own.Co2PercentMax, stored.Co2PercentMax),
            InletPressureMbarMin = Larger(own.InletPressureMbarMin, stored.InletPressureMbarMin),
            // A pressure to set is neither loose nor strict.
            BurnerPressureMbar = isSourced ? own.BurnerPressureMbar ?? stored.BurnerPressureMbar : stored.BurnerPressureMbar ?? own.BurnerPressureMbar,
            ElectrodeGapMmMin = Larger(own.ElectrodeGapMmMin, stored.ElectrodeGapMmMin),
            ElectrodeGapMmMax = Smaller(own.ElectrodeGapMmMax, stored.ElectrodeGapMmMax),
            FlueTemperatureCMax = Smaller(own.FlueTemperatureCMax, stored.FlueTemperatureCMax),
            ServiceIntervalMonths = Smaller(own.ServiceIntervalMonths, stored.ServiceIntervalMonths),
            // A list that is shorter asks for less: what the profile adds stays, and the rule on it minds whose it is.
            SealsToRenew = (own.SealsToRenew, stored.SealsToRenew) is ({ } mine, { } theirs) ? [.. mine, .. theirs.Except(mine)] : own.SealsToRenew ?? stored.SealsToRenew,
            DecisionReference = own.DecisionReference,
        };

        decimal? Smaller(decimal? mine, decimal? theirs) => theirs < mine && !isSourced ? theirs : mine ?? theirs;
        decimal? Larger(decimal? mine, decimal? theirs) => theirs > mine && !isSourced ? theirs : mine ?? theirs;
    }
}
