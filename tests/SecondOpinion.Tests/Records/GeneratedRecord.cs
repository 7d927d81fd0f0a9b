using ServiceRecords;

namespace SecondOpinion.Tests;

/// <summary>One made-up record.</summary>
/// <param name="Number">Its number: the same number always gives the same record.</param>
/// <param name="Changes">What was changed in the example record, in order.</param>
/// <param name="Record">The record.</param>
internal sealed record GeneratedRecord(int Number, IReadOnlyList<Change> Changes, ServiceRecord Record);
