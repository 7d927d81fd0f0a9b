using System.Buffers;
using Findings;
using Kernel.Catalogues;
using Wire;

namespace Kernel.Engine;

/// <summary>The hashes by which two answers are told to be the same.</summary>
internal static class Hashes
{
    /// <summary>SHA-256 over the canonical form of the record, a line feed, and the context as written in answers.</summary>
    public static string OfInput(JudgedVisit visit)
    {
        using var text = new HashedText();
        visit.WriteRecord(text);
        text.Write("\n"u8);
        WireJson.Write(text, visit.Context, EvaluationJson.Default.EvaluationContext);
        return text.ToHash();
    }

    /// <summary>
    /// SHA-256 over what was judged, without what differs between two runs of the same judgement: ids, the caller's record id and with
    /// it the input hash, the time and the engine's version. What the rule set says once and for all (titles, citations, formulas) is in
    /// the rule set's own hashes, and what a pass says beyond its subject and margin follows from the record. Earlier visits are input, which the
    /// input hash covers.
    /// </summary>
    /// <remarks>
    /// The text is UTF-8. Each field ends with U+001F, each line with U+001E; no record can contain either. An absent member is an empty
    /// field, yes/no is true or false, numbers are written as in <see cref="CanonicalText"/>, days as yyyy-MM-dd, all else as in the
    /// answer with <c>include=all</c>. The lines, in this order:
    /// <list type="number">
    /// <item>One for the whole: ruleSet.id, ruleSet.version, ruleSet.lawHash, ruleSet.codeHash, asOf, lookedAtOn,
    /// context.profileId, context.profileVersion, outcome, closing.allowed, closing.closesAs, then each of closing.blockedBy.</item>
    /// <item>One for each of findings: ruleId, subject, outcome, margin, conformity; of a finding that is neither pass nor notApplicable
    /// besides: expectedClass, message, caution, remedy, weight, notDone.</item>
    /// <item>One for each of duties: kind, weight, state.</item>
    /// <item>One for situation, where there is one: state, appliance, handled, then each of open; and one for each of its dangers: ruleId,
    /// subject, state, handled, defect, isolatedAt, concerns.</item>
    /// <item>One for each of deferrals: part, weight, on, madeUp.</item>
    /// <item>One for each of missing, and then of notLookedAt: pointer, then each of neededBy.</item>
    /// <item>One for each of due: ruleId, by, beforeUse, what.</item>
    /// <item>One for each of figures: name, subject, value, date, uncertainty.</item>
    /// </list>
    /// </remarks>
    public static string OfResult(Evaluation evaluation)
    {
        using var text = new HashedText();
        AddWhole(text, evaluation);
        foreach (var finding in evaluation.Findings)
            AddFinding(text, finding);
        foreach (var duty in evaluation.Duties)
            text.Field(duty.Kind).Field(WireNames.Of(duty.Weight)).Field(WireNames.Of(duty.State)).EndLine();
        AddSituation(text, evaluation.Situation);
        foreach (var deferral in evaluation.Deferrals ?? [])
            text.Field(deferral.Part).Field(WireNames.Of(deferral.Weight)).Field(deferral.On).Field(YesNo(deferral.MadeUp)).EndLine();
        foreach (var item in evaluation.Missing.Concat(evaluation.NotLookedAt))
            text.Field(item.Pointer).Fields(item.NeededBy).EndLine();
        foreach (var item in evaluation.Due)
            text.Field(item.RuleId).Field(item.By).Field(YesNo(item.BeforeUse)).Field(item.What).EndLine();
        foreach (var figure in evaluation.Figures)
            text.Field(figure.Name).Field(figure.Subject).Field(figure.Value).Field(figure.Date).Field(figure.Uncertainty).EndLine();

        return text.ToHash();
    }

    private static void AddWhole(HashedText text, Evaluation evaluation)
    {
        var (rules, context) = (evaluation.RuleSet, evaluation.Context);
        text.Field(rules.Id).Field(rules.Version).Field(rules.LawHash).Field(rules.CodeHash).Field(evaluation.AsOf).Field(evaluation.LookedAtOn)
            .Field(context.ProfileId).Field(context.ProfileVersion).Field(WireNames.Of(evaluation.Outcome))
            .Field(YesNo(evaluation.Closing.Allowed)).Field(evaluation.Closing.ClosesAs).Fields(evaluation.Closing.BlockedBy).EndLine();
    }

    private static void AddSituation(HashedText text, Situation? situation)
    {
        if (situation is null)
            return;

        text.Field(WireNames.Of(situation.State)).Field(situation.Appliance).Field(YesNo(situation.Handled)).Fields(situation.Open).EndLine();
        foreach (var danger in situation.Dangers)
        {
            text.Field(danger.RuleId).Field(danger.Subject).Field(WireNames.Of(danger.State)).Field(YesNo(danger.Handled))
                .Field(danger.Defect).Field(danger.IsolatedAt).Field(danger.Concerns).EndLine();
        }
    }

    private static string? YesNo(bool? value) => value switch { true => "true", false => "false", null => null };

    private static void AddFinding(HashedText text, Finding finding)
    {
        text.Field(finding.RuleId).Field(finding.Subject).Field(WireNames.Of(finding.Outcome)).Field(finding.Margin).Field(finding.Conformity);
        if (finding.IsProblem)
            text.Field(finding.ExpectedClass is { } expected ? WireNames.Of(expected) : null).Field(finding.Message).Field(finding.Caution).Field(finding.Remedy)
                .Field(WireNames.Of(finding.Weight)).Field(YesNo(finding.NotDone));
        text.EndLine();
    }
}
