using System.Text.Json.Nodes;
using Findings;
using Records;

namespace SecondOpinion.Tests.Records;

/// <summary>One made-up record.</summary>
/// <param name="Number">Its number: the same number always gives the same record.</param>
/// <param name="Changes">What was changed in the example record, in order.</param>
/// <param name="Json">The record as posted.</param>
/// <param name="Record">The record as read.</param>
internal sealed record GeneratedRecord(int Number, IReadOnlyList<Change> Changes, JsonObject Json, ServiceRecord Record)
{
    /// <summary>The earlier visits made up for it: the same number and record always have the same.</summary>
    public IReadOnlyList<PastVisit> History => field ??= Histories.Make(Number, Record);

    /// <summary>The earlier answers to this visit made up for it, likewise; mostly none.</summary>
    public IReadOnlyList<EarlierAnswer> SaidBefore => field ??= EarlierAnswers.Make(Number, Record);
}
