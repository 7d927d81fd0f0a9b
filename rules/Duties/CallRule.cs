using Kernel;
using Visits;

namespace Rules.Duties;

/// <inheritdoc />
public abstract class CallRule(string? pointer) : VisitCallRule<Visit>(pointer);
