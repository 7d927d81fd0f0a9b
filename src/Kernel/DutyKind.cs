namespace Kernel;

/// <summary>A kind of duty, a line of duties.json.</summary>
/// <param name="Kind">Its name.</param>
/// <param name="Title">What it asks for, in words.</param>
/// <param name="OfDanger">Is it a duty towards a danger, and so part of whether the danger is handled?</param>
public sealed record DutyKind(string Kind, string Title, bool OfDanger = false);
