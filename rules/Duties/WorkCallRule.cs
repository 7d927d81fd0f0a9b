using Kernel;
using Records;

namespace Rules.Duties;

/// <summary>A rule that calls because of work on some part of the installation; the cause in words is what shows that work.</summary>
public abstract class WorkCallRule : FactCallRule<TouchedPart>;
