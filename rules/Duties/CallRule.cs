using Findings;
using Kernel;
using Visits;

namespace Rules.Duties;

/// <inheritdoc />
[Topic(Topics.Paperwork), Coverage(Coverage.Full, "the record states what calls")]
public abstract class CallRule(string? pointer) : VisitCallRule<Visit>(pointer);
