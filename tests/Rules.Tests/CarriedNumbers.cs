using System.Globalization;
using Calculations;
using Findings;
using Kernel;
using Visits.Judging;

namespace Rules.Tests;

/// <summary>
/// The numbers and days that a sentence may name: what the finding carries as evidence, limit and margin, the figures, the limits that
/// the same rule has in its cases, what stands in title and clauses, what follows from two of these in one step, and a few that are listed.
/// </summary>
internal sealed class CarriedNumbers
{
    /// <summary>Limits that a rule reads and that are never the one that decides.</summary>
    private static readonly Dictionary<string, string[]> OtherLimits = new(StringComparer.Ordinal)
    {
        [RuleIds.VesselVolume] = [LimitIds.HighestFlowTemperature],
        [RuleIds.AirtightHomeVent] = [LimitIds.AirtightHome],
        [RuleIds.InletPressure] = [LimitIds.InletPressure],
        [RuleIds.PlantRoomVentArea] = [LimitIds.PlantRoomHigh, LimitIds.PlantRoomLow, LimitIds.BoilerEnclosureHigh, LimitIds.BoilerEnclosureLow],
    };

    /// <summary>Numbers that come from elsewhere.</summary>
    private static readonly Dictionary<string, decimal[]> Others = new(StringComparer.Ordinal)
    {
        // The most CO2 that the flue gas of each fuel can hold.
        [RuleIds.Co2AgreesWithO2] = [.. Enum.GetValues<GasFamily>().Select(family => family.Co2MaxPercent())],

        [RuleIds.FlueCo2] = [.. Enum.GetValues<GasFamily>().Select(family => family.Co2MaxPercent())],

        // The ratio of the previous visit that the record states, worked out from two of its values.
        [RuleIds.RatioDrift] = [40m / (10_000 * 9.2m)],

        // Steps of the gauges in the cases: one of several accuracies of one of several instruments, which no pointer names.
        [RuleIds.PressureFinerThanGauge] = [0.01m, 0.2m, 0.5m],

        // Flue temperatures of the cases: of one of several readings, which no pointer names.
        [RuleIds.CondensingAgrees] = [52m, 54m],
    };

    /// <summary>The day on which paragraph (ca) of regulation 26(9) came into force: SI 2018/139.</summary>
    private static readonly (string RuleId, DateOnly Day) DayOfLaw = (RuleIds.PressureOrHeatInputExamined, new DateOnly(2018, 4, 6));

    private static readonly Lazy<ILookup<string, decimal>> LimitsByRule = new(() => RuleSet.Cases.AsParallel()
        .SelectMany(pair => RuleSet.AnswersOf(pair.Rule.Info.Id, RuleSet.Engine.Evaluate(RuleSet.RecordOf(pair.Case), pair.Case.Beside())))
        .Where(finding => finding.Limit is not null)
        .SelectMany(finding => new[] { finding.Limit!.Min, finding.Limit.Max }.OfType<decimal>().Select(bound => (finding.RuleId, bound)))
        .Distinct()
        .ToLookup(pair => pair.RuleId, pair => pair.bound, StringComparer.Ordinal));

    public CarriedNumbers(Finding finding, Evaluation evaluation)
    {
        var evidence = finding.Evidence ?? [];
        var limited = finding.Margin is { } margin ? new[] { finding.Limit?.Max - margin, finding.Limit?.Min + margin, margin } : [];
        var measured = evidence.Select(item => item.Number).Concat(limited).OfType<decimal>().Select(Math.Abs).ToList();
        var earlier = evaluation.Context.History ?? [];
        var moments = evidence.Select(item => item.Value).Select(Moment).OfType<DateTimeOffset>().ToList();
        var others = OtherLimits.GetValueOrDefault(finding.RuleId, []);
        var limits = LimitsByRule.Value[finding.RuleId].Select(Math.Abs)
            .Concat(RuleSet.Catalogue.Limits.Definitions.Where(line => others.Contains(line.Id)).SelectMany(line => new[] { line.Min, line.Max }.OfType<decimal>()))
            .Concat(finding.Conformity is { } probability ? [probability, RuleSet.Catalogue.Limits.Definitions.Single(line => line.Id == LimitIds.ConformityGuard).Min!.Value] : [])
            .ToList();

        moments.AddRange(earlier.Select(visit => visit.FinishedAt));
        moments.AddRange(earlier.Select(visit => visit.CheckCountedOn).OfType<DateOnly>().Select(day => new DateTimeOffset(day, default, default)));
        Days = DaysFrom(finding, evaluation, moments, [.. limits, .. measured]).ToHashSet();
        All =
        [
            .. measured, .. limits, .. Others.GetValueOrDefault(finding.RuleId, []), .. evaluation.Figures.Select(figure => figure.Value).OfType<decimal>().Select(Math.Abs),
            .. evidence.Select(item => item.Value).Concat((finding.References ?? []).Select(reference => reference.Clause)).Append(finding.Title)
                .OfType<string>().SelectMany(WordingTests.NumbersIn).Select(text => Math.Abs(decimal.Parse(text, CultureInfo.InvariantCulture))),
            .. earlier.SelectMany(visit => visit.Values).Select(value => Math.Abs(value.Value)), .. Enumerable.Range(2, earlier.Count).Select(visits => (decimal)visits),
            .. measured.SelectMany(one => measured.SelectMany(other => new[] { one + other, Math.Abs(one - other) })),
            .. others.Length > 0 ? measured.SelectMany(one => limits.Select(limit => one * limit)) : [],
            .. Days.SelectMany(one => Days.Select(other => (decimal)Math.Abs(one.DayNumber - other.DayNumber))),
            .. moments.SelectMany(one => moments.Select(other => (decimal)Math.Abs((one - other).TotalMinutes))),
        ];
    }

    public IReadOnlyList<decimal> All { get; }

    public IReadOnlySet<DateOnly> Days { get; }

    /// <summary>Recorded days, the days of the evaluation, what is due, the rule's first day, and what lies a limit of days or months after one.</summary>
    private static IEnumerable<DateOnly> DaysFrom(Finding finding, Evaluation evaluation, IEnumerable<DateTimeOffset> moments, IEnumerable<decimal> terms)
    {
        var rule = RuleSet.Catalogue.Rules.Single(candidate => candidate.Info.Id == finding.RuleId).Info;
        var recorded = moments.Select(moment => DateOnly.FromDateTime(moment.DateTime)).Append(evaluation.AsOf).Append(evaluation.LookedAtOn).Distinct().ToList();
        var whole = terms.Where(term => term is > 0 and <= 1200 && term == decimal.Truncate(term)).Append(12).Select(term => (int)term).Distinct().ToList();
        return recorded
            .Concat(recorded.SelectMany(day => whole.SelectMany(term => new[] { day.AddDays(term), day.AddMonths(term) })))
            .Concat(recorded.Select(day => day.AddDays(-1)))
            .Concat(evaluation.Due.Select(due => due.By))
            .Append(rule.InForceFrom)
            .Concat(rule.Id == DayOfLaw.RuleId ? [DayOfLaw.Day] : []);
    }

    private static DateTimeOffset? Moment(string? text) =>
        text is [_, _, _, _, '-', _, _, '-', _, _, ..] && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var moment) ? moment : null;
}
