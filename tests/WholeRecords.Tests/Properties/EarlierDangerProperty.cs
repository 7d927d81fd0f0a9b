using Findings;
using MadeVisits;
using Records;
using Visits;
using WholeRecords.Tests.Made;
using DangerState = Findings.DangerState;

namespace WholeRecords.Tests.Properties;

/// <summary>4, over the years. What an earlier visit left goes on until a record says what became of it.</summary>
/// <param name="length">How much of it.</param>
internal sealed class EarlierDangerProperty(RunLength length) : IProperty
{
    public static readonly Claim Silent = new("4d", "A danger that an earlier visit left, and of which the record says nothing, never lets it close.");
    public static readonly Claim Left = new("4e", "That an earlier visit left a danger never betters.");

    private static readonly DangerState[] States = [DangerState.Standing, DangerState.LeftByRefusal, DangerState.TakenOutOfUse];

    public IReadOnlyList<Claim> Claims { get; } = [Silent, Left];

    public IEnumerable<Counterexample> Ask(Base one, Action<Claim> asked)
    {
        // Who did not get to the boiler says nothing of it.
        if (one.Record.Work?.Result is WorkResult.NoAccess or WorkResult.NoAccessToAppliance or WorkResult.Refused)
            yield break;
        var before = one.Judge(one.Json, After(one, null))!;
        foreach (var (kind, state) in Enum.GetValues<DangerKind>().SelectMany(kind => States.Select(state => (kind, state))).Where(left => length.Takes(one, $"{left}")))
        {
            var danger = new TrueDanger(kind, IsSeen: true, MadeVisits.DangerState.Standing, IsHandled: false);
            var variant = new Variant($"{Wire.WireNames.Of(state)} at the visit before") { Lookup = After(one, MadeHistory.Left(danger, state)), Words = $"{kind} left the day before" };
            var said = one.Judge(one.Json, variant.Lookup)!;
            asked(Left);
            if (Order.Betters(before, said) is { } better)
                yield return Counterexample.Of(Left, better, one, variant, said);
            if (!MadeHistory.IsSilentOn(one.Json, danger))
                continue;
            asked(Silent);
            if (said.MayClose)
                yield return Counterexample.Of(Silent, "closes", one, variant, said);
        }
    }

    /// <summary>A repair of the day before: no interval counts from it, and nobody came between.</summary>
    private static Lookup After(Base one, PastDanger? left) => new()
    {
        History =
        [
            new PastVisit
            {
                FinishedAt = one.Record.FinishedAt.Value.AddDays(-1),
                JobType = Wire.WireNames.Of(JobType.Repair),
                Maker = one.Record.Appliance.Maker,
                Model = one.Record.Appliance.Model,
                Values = [],
                Dangers = left is null ? null : [left],
            },
            .. one.Earlier,
        ],
    };
}
