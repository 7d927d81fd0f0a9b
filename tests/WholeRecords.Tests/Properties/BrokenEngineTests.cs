using Findings;
using Records;
using Visits;
using WholeRecords.Tests.Made;

namespace WholeRecords.Tests.Properties;

/// <summary>Each claim is broken by an engine made to break it: what these properties would not notice, they would not hold.</summary>
public sealed class BrokenEngineTests
{
    private static readonly TodaysEngine Today = new();

    /// <summary>Dangerous, honest, let, commissioned, with and without parts: enough for every claim.</summary>
    private static readonly IReadOnlyList<Start> Some =
    [
        // One with visits before it.
        MadeStarts.Of(10).First(start => start.Lookup.History is { Count: > 1 }),
        .. WholeRecord.All.Where(whole => whole.Name is "annualService/opened-premix-combi-everything-written-down" or "annualService/ratio-over-the-ceiling-left-on"
            or "annualService/ratio-over-the-ceiling-turned-off-and-labelled" or "annualService/a-service-that-touched-nothing" or "repair/pump-renewed" or "landlordCheck/record-not-signed").Select(Start.Of),
    ];

    private static readonly IReadOnlyList<IProperty> Few = PropertyRun.AllProperties(new(EveryPlace: false, Pairs: 5, OneIn: 1));

    public static TheoryData<string> ClaimsOfAll => [.. Few.SelectMany(property => property.Claims).Select(claim => claim.Id)];

    [Theory]
    [MemberData(nameof(ClaimsOfAll))]
    public void An_engine_that_breaks_it_is_found_out(string claim)
    {
        var property = Few.Single(property => property.Claims.Any(one => one.Id == claim));
        var run = new PropertyRun(new Broken(Faults[claim]), Some, property);
        Assert.Contains(run.Found, one => one.Claim.Id == claim);
    }

    /// <summary>An engine that holds everything for the same danger keeps them all. It gives no duties, and its dangers are what holds.</summary>
    [Fact]
    public void An_engine_that_keeps_them_is_not_accused()
    {
        var strict = new Answer
        {
            Outcome = OverallOutcome.Unsafe,
            MayClose = false,
            Rows = [],
            Missing = [],
            Dangers = new HashSet<string> { "all" },
            IsHeldByADanger = null,
            Situation = new Situation("standing", false, ["handleDanger"]),
        };
        var run = new PropertyRun(new Broken((_, _, _) => strict), Some, Few);
        Assert.Empty(run.Found);
        Assert.All(run.Claims.Where(claim => claim.Id is not ("1b" or "4a" or "5a" or "5b")), claim => Assert.True(run.Asked(claim) > 0, claim.Id));
    }

    /// <summary>What each broken engine says in place of what today's does.</summary>
    private static readonly Dictionary<string, Func<ServiceRecord, Lookup, Answer, Answer>> Faults = new(StringComparer.Ordinal)
    {
        ["1a"] = (record, _, said) => record.Electrical?.InsulationMegohm is null ? said : Held(said),
        ["1b"] = (record, _, said) => said with { Duties = record.Electrical?.InsulationMegohm is null ? [] : [new Owed("waterCondensateElectrics", "must", "met")] },
        ["2a"] = (record, _, said) => record.Combustion?.Readings is { Count: > 0 } ? said : Closed(said),
        ["2b"] = (record, _, said) => record.HeatExchanger?.TopPlateRemoved is true ? said : Closed(said),
        ["2c"] = (record, _, said) => record.Premises?.AlteredSinceLastVisit is null ? Closed(said) : said,
        ["2d"] = (record, _, said) => said with { Rows = [new Row("a-rule", "", record.Flue?.VisualOk is null ? Outcome.Pass : Outcome.Advisory)] },
        ["3a"] = (record, _, said) => record.Combustion?.Readings?.Any(reading => reading.CoPpm > 1000) == true ? Closed(said) : said,
        ["3b"] = (record, _, said) => record.Flue?.VisualOk == false ? Closed(said) : said,
        ["3c"] = (record, _, said) => record.AmbientCo?.BeforePpm > 5 ? Closed(said) : said,
        ["4a"] = (_, _, said) => said with { IsHeldByADanger = true },
        ["4b"] = (_, _, said) => Closed(said),
        ["4c"] = (_, _, said) => Closed(said) with { Situation = new Situation("standing", false, ["handleDanger"]) },
        ["4d"] = (_, lookup, said) => lookup.History is null ? said : Closed(said),
        ["4e"] = (_, lookup, said) => lookup.History is [{ Dangers: not null }, ..] ? Closed(said) : said,
        ["5a"] = (_, _, said) => said with { Duties = [new Owed("identify", "must", null)] },
        ["5b"] = (_, _, said) => said with { Duties = [], Missing = [] },
        ["6a"] = (record, _, said) => record.Instruments is [{ Kind: InstrumentKind.FlueGasAnalyser }, ..] ? Closed(said) : said,
        ["6b"] = (_, lookup, said) => lookup.ProfileId is null ? said : Closed(said),
        ["6c"] = (record, _, said) => record.GasSupply?.Rate?.VolumeFt3 is null ? said : Closed(said),
        ["6d"] = (_, lookup, said) => lookup.History is [var first, .., var last] && first.FinishedAt < last.FinishedAt ? Closed(said) : said,
        ["7a"] = (record, _, said) => record.Work?.Result == WorkResult.GasOff ? Closed(said) with { ClosesAs = "service" } : said,
        ["7b"] = (record, _, said) => record.Work?.Touched is { Count: 0 } ? Closed(said) with { ClosesAs = "visit" } : said,
        ["7c"] = (record, _, said) => record.Premises?.Use == PremisesUse.OwnerOccupied && record.Water?.SystemType == WaterSystemType.OpenVented ? said with { Outcome = OverallOutcome.Incomplete } : said,
        ["7d"] = (_, lookup, said) => lookup.ProfileId is null ? said : said with { Dangers = new HashSet<string>() },
    };

    private static Answer Closed(Answer said) => said with { Outcome = OverallOutcome.Pass, MayClose = true };

    private static Answer Held(Answer said) => said with { Outcome = OverallOutcome.Unsafe, MayClose = false };

    /// <summary>Today's rules with a fault.</summary>
    private sealed class Broken(Func<ServiceRecord, Lookup, Answer, Answer> fault) : IEngine
    {
        public Answer Judge(ServiceRecord record, Lookup lookup) => fault(record, lookup, Today.Judge(record, lookup));
    }
}
