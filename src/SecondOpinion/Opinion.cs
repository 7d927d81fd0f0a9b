using Findings;

namespace SecondOpinion;

/// <summary>What a rule must say of one subject.</summary>
/// <param name="Subject">JSON Pointer; empty for the whole visit.</param>
/// <param name="Outcome">The outcome.</param>
/// <param name="Class">Of an unsafe opinion: the class that the finding must expect. It must be stated.</param>
internal sealed record Opinion(string Subject, Outcome Outcome, ExpectedClass? Class = null)
{
    /// <summary>An opinion as a line of a report shows it.</summary>
    public override string ToString() => $"{(Subject.Length == 0 ? "(visit)" : Subject)} {Outcome}{(Class is { } c ? $" {c}" : "")}";
}
