namespace Rules.Plausibility;

/// <summary>What a display can show.</summary>
internal static class Resolution
{
    /// <summary>Is the value a whole number of steps? Absent values are; a step of zero says nothing.</summary>
    public static bool CanShow(this decimal step, decimal? value) => value is not { } number || step == 0 || number % step == 0;
}
