using Storage;
using Visits.History;
using Visits.Judging;

namespace ComplianceApi.Api.Appliances;

/// <summary>The history of one appliance, as routes and pages show it.</summary>
public sealed class ApplianceHistory(TimelineStore timelines, ComplianceEngine engine, TimeProvider clock)
{
    /// <summary>How many visits a trend may reach over: as many as the rules see.</summary>
    private const int VisitsOfTrend = HistoryStore.MostVisits + 1;

    /// <summary>What had been said of an appliance by a moment; null when nothing had.</summary>
    /// <param name="tenant">Whose data.</param>
    /// <param name="serialNumber">Its serial number.</param>
    /// <param name="maker">Its maker; null: whoever made it.</param>
    /// <param name="knownAt">The moment; null: now.</param>
    /// <param name="limit">How many visits at most, from the latest on.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<ApplianceTimeline?> FindAsync(
        Tenant tenant, string serialNumber, string? maker, DateTimeOffset? knownAt, int limit, CancellationToken cancel)
    {
        var (visits, total) = await timelines.VisitsAsync(tenant, serialNumber, maker, knownAt ?? clock.GetUtcNow(), Math.Max(limit, VisitsOfTrend), cancel);
        return visits is [var latest, ..]
            ? new ApplianceTimeline
            {
                SerialNumber = serialNumber,
                Maker = latest.Facts.Maker,
                Model = latest.Facts.Model,
                Fuel = latest.Facts.Fuel,
                KnownAt = knownAt,
                Total = total,
                Trends = ReadingTrend.Of(
                    [.. visits.Select(visit => visit.Facts).Where(facts => VisitKey.OfName(facts.Maker) == VisitKey.OfName(latest.Facts.Maker)).Take(VisitsOfTrend)],
                    engine.Catalogue.Limits, engine.Law),
                Visits = [.. visits.Take(limit)],
            }
            : null;
    }
}

/// <summary>What had been said of one appliance by a moment.</summary>
public sealed class ApplianceTimeline
{
    /// <summary>Its serial number.</summary>
    public required string SerialNumber { get; init; }

    /// <summary>Maker, as the latest visit gives it.</summary>
    public string? Maker { get; init; }

    /// <summary>Model, as the latest visit gives it.</summary>
    public string? Model { get; init; }

    /// <summary>Fuel, as the latest visit gives it.</summary>
    public string? Fuel { get; init; }

    /// <summary>The moment by which it had been said; absent: now.</summary>
    public DateTimeOffset? KnownAt { get; init; }

    /// <summary>How many visits there are.</summary>
    public required int Total { get; init; }

    /// <summary>How the readings of the latest visit's appliance have moved, over the last 13 visits at most. A trend is no verdict: the rules judge each value.</summary>
    public required IReadOnlyList<ReadingTrend> Trends { get; init; }

    /// <summary>The visits, the latest first.</summary>
    public required IReadOnlyList<TimelineVisit> Visits { get; init; }
}
