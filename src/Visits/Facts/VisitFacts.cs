using System.Globalization;
using Calculations;
using Findings;
using Records;
using Visits.Computations;
using Wire;

namespace Visits.Facts;

/// <summary>What is kept of a visit for those that follow.</summary>
public static class VisitFacts
{
    /// <summary>The facts of a visit that was evaluated.</summary>
    /// <param name="record">Its record.</param>
    /// <param name="evaluation">What was said of it; its figures tell on which date a landlord's check counts.</param>
    /// <param name="law">What is a landlord's check.</param>
    public static PastVisit Of(ServiceRecord record, Evaluation evaluation, IRecordLaw law)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(evaluation);
        ArgumentNullException.ThrowIfNull(law);
        var countedOn = evaluation.Figures.FirstOrDefault(figure => figure.Name == DateComputations.LandlordCountedOn.Name)?.Date ?? record.FinishedAt.Date;
        return Of(record) with { EvaluationId = evaluation.EvaluationId, CheckCountedOn = law.IsLandlordsCheck(record, evaluation) ? countedOn : null, Dangers = DangersOf(record, evaluation), Deferrals = evaluation.Deferrals };
    }

    /// <summary>What a record says of itself, without what only its evaluation settles.</summary>
    public static PastVisit Of(ServiceRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return new PastVisit
        {
            FinishedAt = record.FinishedAt.Value,
            JobType = WireNames.Of(record.JobType),
            Maker = record.Appliance.Maker,
            Model = record.Appliance.Model,
            Fuel = WireNames.Of(record.Appliance.Fuel),
            Values = ValuesOf(record, record.Combustion?.Readings, "/combustion/readings", record.Water?.ReturnTemperatureC, "/water/returnTemperatureC"),
            PartsFitted = record.PartsFitted?.Count > 0 ? true : record.PartsFitted is null ? null : false,
            ExchangerCleaned = record.HeatExchanger?.Cleaned,
            Defects = record.Defects is { Count: > 0 } defects ? [.. defects.Select(FactsOf)] : null,
        };
    }

    /// <summary>The visit before, as a record states it itself; null where it does not date it.</summary>
    public static PastVisit? OfPrevious(ServiceRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.PreviousVisit is { FinishedAt: { } finishedAt } previous
            ? new PastVisit
            {
                FinishedAt = finishedAt.Value,
                Maker = record.Appliance.Maker,
                Values = ValuesOf(record, previous.Readings, "/previousVisit/readings", previous.ReturnTemperatureC, "/previousVisit/returnTemperatureC"),
            }
            : null;
    }

    private static List<PastDanger>? DangersOf(ServiceRecord record, Evaluation evaluation)
    {
        var dangers = (evaluation.Situation?.Dangers ?? []).Where(danger => danger.Concerns is null).Select(danger => FactsOf(danger, record, evaluation)).Distinct().ToList();
        return dangers.Count > 0 ? dangers : null;
    }

    // A defect says where the danger is in words that the next record can repeat; its own place in the list it cannot.
    private static PastDanger FactsOf(Danger danger, ServiceRecord record, Evaluation evaluation)
    {
        var defect = danger.Defect is { } pointer && int.TryParse(pointer[(pointer.LastIndexOf('/') + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            ? record.Defects?.ElementAtOrDefault(index) : null;
        return new PastDanger
        {
            RuleId = danger.RuleId,
            Topic = defect?.Topic ?? evaluation.Findings.FirstOrDefault(finding => finding.RuleId == danger.RuleId && finding.Subject == danger.Subject)?.Topic
                ?? evaluation.Context.SaidBefore?.SelectMany(answer => answer.Dangers).FirstOrDefault(told => told.RuleId == danger.RuleId && told.Subject == danger.Subject)?.Topic,
            Subject = defect?.Subject is { Length: > 0 } subject ? subject : danger.Subject,
            Rate = RateAt(danger.Subject, record),
            State = danger.State,
        };
    }

    private static string? RateAt(string subject, ServiceRecord record)
    {
        const string Readings = "/combustion/readings/";
        return subject.StartsWith(Readings, StringComparison.Ordinal) && int.TryParse(subject[Readings.Length..].Split('/')[0], NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            ? WireNames.Of(record.Combustion?.Readings?.ElementAtOrDefault(index)?.Rate) : null;
    }

    private static PastDefect FactsOf(Defect defect) => new()
    {
        Topic = defect.Topic,
        Subject = defect.Subject is { Length: > 0 } subject ? subject : null,
        Location = defect.Location,
        Description = defect.Description,
        Action = defect.Action is { } action ? WireNames.Of(action) : null,
    };

    private static List<PastValue> ValuesOf(
        ServiceRecord record, IReadOnlyList<CombustionReading>? readings, string readingsAt, decimal? returnC, string returnAt)
    {
        var facts = new FactSheet(record);
        if (readings?.Index().LastOrDefault(place => place.Item is { Rate: FiringRate.Maximum, Stage: WorkStage.AfterWork }) is (var index, { } reading))
            facts.AddReading(reading, FormattableString.Invariant($"{readingsAt}/{index}"), returnC, returnAt);
        if (!readingsAt.StartsWith("/combustion", StringComparison.Ordinal))
            return facts.Values;

        var (water, supply) = (record.Water, record.GasSupply);
        facts.Add(MeasuredNames.VesselPrechargeBar, water?.VesselPrechargeBar, "/water/vesselPrechargeBar");
        facts.Add(MeasuredNames.FlameCurrentMicroamps, record.Burner?.FlameCurrentMicroamps, "/burner/flameCurrentMicroamps");
        facts.Add(MeasuredNames.MeterStandingMbar, supply?.MeterStandingMbar, "/gasSupply/meterStandingMbar");
        facts.Add(MeasuredNames.MeterOperatingMbar, supply?.MeterOperatingMbar, "/gasSupply/meterOperatingMbar");
        facts.Add(MeasuredNames.ApplianceInletMbar, supply?.ApplianceInletMbar, "/gasSupply/applianceInletMbar");
        facts.Add(MeasuredNames.BurnerMbar, supply?.BurnerMbar, "/gasSupply/burnerMbar");
        return facts.Values;
    }

    /// <summary>Collects the values of one visit.</summary>
    private sealed class FactSheet(ServiceRecord record)
    {
        // Below this no flame burns, and a ratio to it says nothing.
        private const decimal LeastCo2 = 0.001m;

        // A stated accuracy beyond all measure says nothing either.
        private const double MostUncertainty = 1e9;

        public List<PastValue> Values { get; } = [];

        public PastValue? Add(string name, decimal? value, string pointer, decimal? load = null)
        {
            if (value is not { } number)
                return null;

            var fact = new PastValue
            {
                Name = name,
                Value = number,
                Uncertainty = Rounded(StatedAccuracy.UncertaintyOf(record, pointer, number)),
                Instrument = StatedAccuracy.SerialOf(record, pointer),
                LoadPercent = load,
            };
            Values.Add(fact);
            return fact;
        }

        public void AddReading(CombustionReading reading, string at, decimal? returnC, string returnAt)
        {
            var co = Add(MeasuredNames.CoPpm, reading.CoPpm, $"{at}/coPpm");
            var co2 = Add(MeasuredNames.Co2Percent, reading.Co2Percent, $"{at}/co2Percent");
            Add(MeasuredNames.O2Percent, reading.O2Percent, $"{at}/o2Percent");
            var flue = Add(MeasuredNames.FlueTemperatureC, reading.FlueTemperatureC, $"{at}/flueTemperatureC");
            if (co is not null && co2 is { Value: >= LeastCo2 })
            {
                Values.Add(co with
                {
                    Name = MeasuredNames.CoCo2Ratio,
                    Value = FlueGas.Ratio(co.Value, co2.Value),
                    Uncertainty = co.Uncertainty is { } uCo && co2.Uncertainty is { } uCo2
                        ? Rounded(Uncertainty.OfRatio(new((double)co.Value, (double)uCo), new((double)co2.Value, (double)uCo2)))
                        : null,
                });
            }

            // Without the load two of these cannot be compared.
            if (flue is not null && returnC is { } returned && reading.LoadPercent is { } load)
            {
                var uReturn = StatedAccuracy.UncertaintyOf(record, returnAt, returned);
                Values.Add(flue with
                {
                    Name = MeasuredNames.FlueAboveReturnK,
                    Value = flue.Value - returned,
                    Uncertainty = flue.Uncertainty is { } uFlue && uReturn is { } known ? Rounded(double.Hypot((double)uFlue, known)) : null,
                    LoadPercent = load,
                });
            }
        }

        // Uncertainties are estimates; more digits would only look better.
        private static decimal? Rounded(double? uncertainty) => uncertainty <= MostUncertainty ? Digits.Keep(uncertainty.Value, 4) : null;
    }
}
