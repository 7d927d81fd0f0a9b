using System.Globalization;
using Findings;
using Kernel;
using NRules.Fluent.Dsl;
using NRules.RuleModel;
using Records;
using Rules.Combustion;
using Rules.Situation;
using Visits;
using Wire;

namespace Rules.History;

[Id(RuleIds.DangerTakenBack), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "26(9)"), Cites("GSIUR-1998", "34"), CommonPractice]
[Title("A danger named in an earlier answer to this visit is not dropped without a reason")]
[Why("An answer that names a danger also shows which value to leave out. If a record could simply be sent again without it, the danger would be gone from the paper and not from the house.")]
[Serves(Part.HandleDanger)]
[Uses(LimitIds.CoCo2Ratio, LimitIds.CoCo2RatioCeiling, LimitIds.CoPpm, LimitIds.FlueGasCo2, LimitIds.FlueGasO2, LimitIds.MaximumRateLoad)]
[Coverage(Coverage.MayUnderReport, "an answer that was not stored is not known, nor one under another record id, and a value made better step by step before any answer is not seen")]
public sealed class DangerTakenBackRule : InferenceRule
{
    private const string Withdrawn = "/work/withdrawn";

    public override void Define()
    {
        Visit visit = default!;
        IEnumerable<FoundDanger> found = default!;

        When()
            .Match(() => visit, v => v.SaidBefore.Count > 0)
            .Query(() => found, q => q
                .Match<FoundDanger>()
                .Collect())
            .Having(() => TakenBack(visit, found).Any());

        Then()
            .Do(context => Say(context, visit, found));
    }

    private void Say(IContext context, Visit visit, IEnumerable<FoundDanger> found)
    {
        var gone = TakenBack(visit, found).ToList();
        foreach (var danger in gone)
            visit.Dangers.Add(new Danger { RuleId = danger.RuleId, Subject = danger.Subject, State = DangerState.NotExcluded, Handled = false });

        var rules = string.Join(", ", gone.Select(danger => danger.RuleId).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
        Conclude(context, visit, Withdrawn, Visit.LookAt(Withdrawn)
            .Missing($"an earlier answer to this visit named a danger ({rules}); this record shows it no longer and does not say why", Withdrawn)
            .Warn(Cautions.DangerStands)
            .Advise("Record the danger as a defect with what was done about it or, where the value was wrong, take that value back and say why."));
    }

    /// <summary>The dangers that an earlier answer named and that this record neither shows, nor speaks of, nor takes back with a reason.</summary>
    private static IEnumerable<PastDanger> TakenBack(Visit visit, IEnumerable<FoundDanger> found)
    {
        foreach (var answer in visit.SaidBefore)
        {
            foreach (var told in answer.Dangers)
            {
                if (!IsShown(told, answer, found) && !visit.RecordedDefects.Any(recorded => SpeaksOf(recorded, told)) && !IsNamedAsTakenBack(visit, told) && !IsMeasuredLater(visit, told, answer))
                    yield return told;
            }
        }
    }

    // A danger of this boiler that is now said to be of another appliance is shown no longer. A list may have grown at its front since then, so that
    // as many as were told may stand at other places of it.
    private static bool IsShown(PastDanger told, EarlierAnswer answer, IEnumerable<FoundDanger> found)
    {
        var same = found.Where(danger => danger.RuleId == told.RuleId && danger.IsOfThisAppliance).ToList();
        return same.Exists(danger => AreOnePlace(danger.Subject, told.Subject) || danger.AnsweredBy.Any(recorded => recorded.Defect.Subject is { } place && AreOnePlace(place, told.Subject)))
            || (ListOf(told.Subject) is { } list && same.Count(danger => ListOf(danger.Subject) == list && IsOfTopic(danger, told)) is var stands and > 0
                && stands >= answer.Dangers.Count(other => other.RuleId == told.RuleId && other.Topic == told.Topic && ListOf(other.Subject) == list));
    }

    // Of what a defect's class alone told, another class on another matter does not stand for it.
    private static bool IsOfTopic(FoundDanger danger, PastDanger told) => danger.Finding is not null || (danger.AnsweredBy[0].Defect.Topic ?? Topics.UnsafeSituation) == told.Topic;

    private static string? ListOf(string place) => place.LastIndexOf('/') is var end and >= 0 && int.TryParse(place.AsSpan(end + 1), NumberStyles.None, CultureInfo.InvariantCulture, out _) ? place[..end] : null;

    // Of two dangers of one topic a defect that names a place speaks of that one only.
    private static bool SpeaksOf(RecordedDefect recorded, PastDanger told) => DangerLeftBeforeRule.SaysWhatBecameOfIt(recorded)
        && (recorded.Defect.Subject is { Length: > 0 } place ? AreOnePlace(place, told.Subject) : told.Topic is not null && recorded.Defect.Topic == told.Topic);

    // What is taken back is a value: a section or a list that holds it takes back nothing, or one line would excuse all that was ever told of it.
    private static bool IsNamedAsTakenBack(Visit visit, PastDanger told) =>
        visit.Record.Work?.Withdrawn?.Any(taken => taken is { What: { Length: > 0 } what, Because: not null } && IsAValueOf(what, told)) == true;

    // A finding rests on the values at its place; the engineer's own class on a whole section rests on none of them.
    private static bool IsAValueOf(string what, PastDanger told) => what == told.Subject
        || (told.Subject.Length > 0 && DefectWords.IsIn(what, told.Subject) && (!IsToldByClass(told) || ListOf(told.Subject) == "/defects"));

    private static bool IsToldByClass(PastDanger told) => told.RuleId is RuleIds.AtRiskRecorded or RuleIds.ImmediatelyDangerousRecorded;

    // Measured again at the same rate once that record was finished: no value was taken back, the visit went on.
    private static bool IsMeasuredLater(Visit visit, PastDanger told, EarlierAnswer answer) =>
        Enum.GetValues<FiringRate>().Where(rate => WireNames.Of(rate) == told.Rate).Any(rate => visit.After(answer.FinishedAt, rate).Any(visit.IsGood));

    private static bool AreOnePlace(string one, string other) => (one.Length > 0 && DefectWords.IsIn(other, one)) || (other.Length > 0 && DefectWords.IsIn(one, other));
}
