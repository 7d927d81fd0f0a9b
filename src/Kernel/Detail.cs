namespace Kernel;

/// <summary>How much of what the rules see is kept.</summary>
public enum Detail
{
    /// <summary>Sentence and evidence of what is reported, and of what a loosened limit let pass.</summary>
    Problems,

    /// <summary>Sentence and evidence of every answer: for whatever is stored or shown whole.</summary>
    Everything,
}
