using Findings;
using Kernel;
using Records;
using Visits.Facts;

namespace Visits;

/// <summary>
/// What figures, history, due dates and the store need of the law without a rule's asking for it. The rules have one class of it.
/// </summary>
public interface IVisitLaw : IRecordLaw
{
    /// <summary>Id of the limit on the probability of conformity of a plain pass.</summary>
    string ConformityGuard { get; }

    /// <summary>Id of the limit on how far two loads may differ and still be compared, in points of the rated input; the same everywhere.</summary>
    string DriftLoadDifference { get; }

    /// <summary>Id of the limit on the flow temperature, degrees Celsius.</summary>
    string HighestFlowTemperature { get; }

    /// <summary>Id of the limit on the margin below the relief valve's setting, %.</summary>
    string ReliefMargin { get; }

    /// <summary>Id of the limit on the vent of an open flue, cm2 for each kW.</summary>
    string OpenFlueVentPerKw { get; }

    /// <summary>Id of the limit on the input that a room's own leakage serves, kW.</summary>
    string LeakageInput { get; }

    /// <summary>Id of the limit on the share that vents through an inner room take on, %.</summary>
    string InnerRoomShare { get; }

    /// <summary>Does a landlord's early check count as made on its deadline?</summary>
    bool HasLandlordsWindow(Visit visit);

    /// <summary>What the standard permits a tightness test to lose, and how that was found; null where it permits nothing or cannot be told.</summary>
    PermittedDropFound? PermittedDropOf(TightnessTest test, string subject, Visit visit);

    /// <summary>The reason of the record that counts for what is absent at <paramref name="pointer"/>, in words; null where none does.</summary>
    string? ReasonNotDone(Visit visit, string pointer, IReadOnlyList<ServesAttribute> parts, Silence silence);

    /// <summary>Does the record show that what was found was dealt with, so that it no longer keeps the job open?</summary>
    bool IsDealtWith(Visit visit, Finding finding);

    /// <summary>As what a visit closes: visit, repair, check, service or installation.</summary>
    string ClosesAs(Visit visit, IReadOnlyList<Duty> duties, OverallOutcome outcome);

    /// <summary>What falls due by a visit; by its record alone where what was said of it is not at hand.</summary>
    IReadOnlyList<DueDate> DueDatesOf(Visit visit, Evaluation? said = null);
}

/// <summary>A permitted drop as it was looked up.</summary>
/// <param name="Limit">The drop.</param>
/// <param name="How">How it was found, in words.</param>
/// <param name="Inputs">JSON Pointers of what it hangs on.</param>
public sealed record PermittedDropFound(Limit Limit, string How, IReadOnlyList<string> Inputs);
