using Findings;

namespace SecondOpinion.Duties;

/// <summary>What has become of a danger, the worst first.</summary>
internal enum DangerState
{
    /// <summary>It is there, and nothing that counts was done about it.</summary>
    Standing,

    /// <summary>Nobody has shown that it is not there.</summary>
    NotExcluded,

    /// <summary>It is there because the responsible person refused.</summary>
    LeftByRefusal,

    /// <summary>It is there, and isolated where it is.</summary>
    TakenOutOfUse,

    /// <summary>It was there, was put right and looked at again.</summary>
    PutRight,
}

/// <summary>Something unsafe that the record shows, before anybody asks what was done about it.</summary>
/// <param name="Pointer">What shows it.</param>
/// <param name="Class">The class to expect.</param>
internal sealed record Shown(string Pointer, ExpectedClass Class)
{
    public string Section => Pointer.Split('/')[1];
}

/// <summary>One danger and what was done about it.</summary>
/// <param name="Subject">Pointer of what shows it, or of the defect that records it.</param>
/// <param name="State">What has become of it.</param>
/// <param name="Handling">What its handling asks for.</param>
internal sealed record Danger(string Subject, DangerState State, IReadOnlyList<Owed> Handling)
{
    public bool IsHandled => State > DangerState.NotExcluded && !Handling.Any(one => one.Holds);
}
