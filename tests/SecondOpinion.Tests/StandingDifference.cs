using Records;

namespace SecondOpinion.Tests;

/// <summary>
/// Where the rules say something else than the page of duties, shown from the sources to be the rules' fault and not yet mended. Each is
/// looked for among the generated records: one that no longer differs is deleted here.
/// </summary>
internal sealed record StandingDifference(string Name, IReadOnlyList<string> Rules, Func<Disagreement, bool> IsMeant)
{
    private static readonly string[] PutRight = ["at-risk-recorded", "immediately-dangerous-recorded", "unsafe-left-in-use", "escape-made-safe"];

    /// <summary>So seldom that a plain run need not meet it.</summary>
    public bool IsSeldom { get; init; }

    public static IReadOnlyList<StandingDifference> All { get; } =
    [
    ];

    private static IReadOnlyList<Defect> DefectsOf(Disagreement one) => one.Record.Record.Defects ?? [];
}
