using Findings;
using Records;

namespace SecondOpinion.Tests.Records;

/// <summary>Earlier visits for a record: mostly one to five of its own appliance, near its values or far, by its instruments or others.</summary>
internal static class Histories
{
    private static readonly string[] Jobs = ["annualService", "annualService", "annualService", "landlordCheck", "repair", "commissioning"];

    public static IReadOnlyList<PastVisit> Make(int number, ServiceRecord record)
    {
        var dice = new Dice(unchecked(77_777 + (number * 13)));
        // Dice of their own leave the other draws be. Of a visit that states the one before itself the stored ones matter by their dangers only.
        var dangers = new Dice(unchecked(33_331 + (number * 23)));
        if (record.PreviousVisit is not null && !dangers.Chance(0.3))
            return [];

        var visits = new List<PastVisit>();
        var finished = record.FinishedAt.Value;
        var steps = dice.OneOf([-1m, 0m, 1m]);
        var left = dice.UpTo(6);
        for (var back = 1; back <= left; back++)
        {
            finished = finished.AddDays(-dice.OneOf([0, 200, 364, 366, 400])).AddHours(-1);
            visits.Add(Visit(record, dice, finished, steps * back));
        }

        if (dice.Chance(0.1))
            visits.Add(Visit(record, dice, record.FinishedAt.Value.AddDays(-dice.OneOf([30, 500])), 1) with { Maker = "Another" });
        return [.. visits.Select(visit => visit with { Dangers = dangers.Chance(0.25) ? [.. Left(record, dangers)] : null })];
    }

    private static PastVisit Visit(ServiceRecord record, Dice dice, DateTimeOffset finished, decimal steps)
    {
        var job = dice.OneOf(Jobs);
        return new PastVisit
        {
            FinishedAt = finished,
            JobType = job,
            CheckCountedOn = job == "landlordCheck" ? DateOnly.FromDateTime(finished.DateTime) : null,
            Maker = record.Appliance.Maker,
            Model = dice.OneOf([record.Appliance.Model, record.Appliance.Model, "Another"]),
            Fuel = dice.OneOf(["naturalGas", "naturalGas", "propane"]),
            PartsFitted = dice.OneOf<bool?>([null, false, false, true]),
            ExchangerCleaned = true,
            Values = [.. Values(record, dice, steps)],
            Defects = dice.Chance(0.3) ? [.. (record.Defects ?? []).Select(defect => Noted(defect, dice))] : null,
        };
    }

    private static IEnumerable<PastValue> Values(ServiceRecord record, Dice dice, decimal steps)
    {
        var reading = record.Combustion?.Readings?.LastOrDefault(one => one is { Rate: FiringRate.Maximum, Stage: WorkStage.AfterWork });
        var ratio = reading is { CoPpm: { } co, Co2Percent: > 0 and { } co2 } ? co / (co2 * 10_000) : (decimal?)null;
        var supply = record.GasSupply;
        (string Name, decimal? Value, decimal Step, string Serial)[] near =
        [
            ("coCo2Ratio", ratio, 0.0001m, "FA-1"), ("coPpm", reading?.CoPpm, 1, "FA-1"), ("co2Percent", reading?.Co2Percent, 0.1m, "FA-1"),
            ("o2Percent", reading?.O2Percent, 0.1m, "FA-1"), ("flueTemperatureC", reading?.FlueTemperatureC, 1, "FA-1"),
            ("flueAboveReturnK", reading?.FlueTemperatureC - record.Water?.ReturnTemperatureC, 1, "FA-1"),
            ("vesselPrechargeBar", record.Water?.VesselPrechargeBar, 0.1m, "PG-1"), ("flameCurrentMicroamps", record.Burner?.FlameCurrentMicroamps, 0.2m, "MM-1"),
            ("meterStandingMbar", supply?.MeterStandingMbar, 0.1m, "PG-1"), ("applianceInletMbar", supply?.ApplianceInletMbar, 0.1m, "PG-1"),
        ];
        foreach (var (name, value, step, serial) in near.Where(one => one.Value is not null && !dice.Chance(0.1)))
        {
            yield return new PastValue
            {
                Name = name,
                Value = value!.Value + (dice.Chance(0.85) ? steps * step : step),
                Uncertainty = dice.Chance(0.5) ? step / 2 : null,
                Instrument = dice.Chance(0.9) ? serial : "other",
                LoadPercent = name == "flueAboveReturnK" ? dice.OneOf([100, 95, 60]) : null,
            };
        }
    }

    /// <summary>One or two dangers that were left: mostly of what a defect of this record is about, else any.</summary>
    private static IEnumerable<PastDanger> Left(ServiceRecord record, Dice dice)
    {
        for (var left = dice.OneOf<int>([1, 1, 2]); left > 0; left--)
        {
            var (topic, place) = Dangers.Any(dice);
            if (record.Defects is { Count: > 0 } defects && dice.Chance(0.75))
            {
                var defect = dice.OneOf(defects);
                topic = defect.Topic ?? topic;
                place = dice.Chance(0.6) && !string.IsNullOrEmpty(defect.Subject) ? defect.Subject : place;
            }

            yield return new PastDanger
            {
                RuleId = "flue-supports",
                Topic = dice.Chance(0.9) ? topic : null,
                Subject = place,
                State = dice.OneOf([DangerState.Standing, DangerState.NotExcluded, DangerState.LeftByRefusal, DangerState.TakenOutOfUse]),
            };
        }
    }

    private static PastDefect Noted(Defect defect, Dice dice) => new()
    {
        Topic = defect.Topic,
        Subject = defect.Subject,
        Location = dice.Chance(0.7) ? defect.Location : "elsewhere",
        Description = dice.Chance(0.7) ? defect.Description : "in other words",
        Action = dice.OneOf<string?>([null, "none", "rectified"]),
    };
}
