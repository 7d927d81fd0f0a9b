using Findings;
using Kernel;
using Visits;

namespace Rules.Duties;

/// <summary>A rule that says what a visit owes, and because of what. Its title is that cause in words.</summary>
public abstract class CallRule : DutyRule
{
    /// <summary>The visit owes <paramref name="parts"/>, because of what <paramref name="pointer"/> says; null: because of no one member.</summary>
    protected void Owe(Visit visit, Weight weight, string? pointer, params string[] parts) => OweBecause(visit, weight, new DutyCause(pointer, Info.Title), parts);

    /// <summary>The same with a cause of its own.</summary>
    protected void OweBecause(Visit visit, Weight weight, DutyCause because, params string[] parts)
    {
        ArgumentNullException.ThrowIfNull(visit);
        foreach (var part in parts)
            visit.Owed.Owe(part, weight, because, Info);
    }
}
