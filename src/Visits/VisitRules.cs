using Kernel;

namespace Visits;

/// <inheritdoc />
public abstract class ComplianceRule<T> : SubjectRule<Visit, T>;

/// <inheritdoc />
public abstract class VisitRule : WholeVisitRule<Visit>;
