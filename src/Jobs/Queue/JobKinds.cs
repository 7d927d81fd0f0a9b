namespace Jobs.Queue;

/// <summary>What a job of the queue does with its chunks.</summary>
public static class JobKinds
{
    /// <summary>Judges the records that were posted with it.</summary>
    public const string Audit = "audit";

    /// <summary>Judges stored evaluations anew, by the rules in force and by a candidate.</summary>
    public const string Preview = "preview";
}
