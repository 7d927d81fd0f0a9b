using Findings;
using Kernel;
using Records;

namespace Rules.Duties;

/// <summary>A rule that calls because of work on some part of the installation; the cause in words is what shows that work.</summary>
[Topic(Topics.Paperwork), Coverage(Coverage.Full, "it calls wherever a rule of the duties inferred this work")]
public abstract class WorkCallRule : FactCallRule<TouchedPart>;
