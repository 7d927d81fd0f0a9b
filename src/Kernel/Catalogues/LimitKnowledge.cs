using Findings;

namespace Kernel.Catalogues;

/// <summary>How well the figures of the shipped limits are known, counted line by line.</summary>
public sealed class LimitKnowledge
{
    /// <summary>Counts.</summary>
    /// <param name="lines">The shipped lines.</param>
    /// <param name="rules">The rules that read them, which tell the subject areas.</param>
    public LimitKnowledge(IReadOnlyList<LimitDefinition> lines, IReadOnlyList<RuleInfo> rules)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(rules);
        var facts = lines.Where(line => line.Kind == LimitKind.Fact).ToList();
        (All, Facts, FactsRead) = (lines.Count, facts.Count, Read(facts));
        ByStrength = [.. Enum.GetValues<LimitStrength>().Select(strength => new StrengthCount(strength, lines.Count(line => line.Strength == strength)))];

        var areas = rules.SelectMany(rule => rule.Uses.Select(limit => (limit, rule.Topic))).Distinct().ToLookup(one => one.limit, one => one.Topic, StringComparer.Ordinal);
        ByTopic = [.. facts.SelectMany(line => areas[line.Id].Select(topic => (topic, line))).GroupBy(one => one.topic, one => one.line, StringComparer.Ordinal)
            .OrderBy(of => Topics.All.IndexOf(of.Key)).Select(of => new FactCount(of.Key, of.Count(), Read(of)))];
        ByDocument = [.. facts.Where(line => line.Document is not null).GroupBy(line => line.Document!, StringComparer.Ordinal)
            .Select(of => new FactCount(of.Key, of.Count(), Read(of))).OrderByDescending(of => of.Facts).ThenBy(of => of.Of, StringComparer.Ordinal)];
    }

    /// <summary>All lines.</summary>
    public int All { get; }

    /// <summary>Those that some document or the trade gives, and not this service's judgement or arithmetic.</summary>
    public int Facts { get; }

    /// <summary>Those of them that were read where they stand.</summary>
    public int FactsRead { get; }

    /// <summary>Lines by strength.</summary>
    public IReadOnlyList<StrengthCount> ByStrength { get; }

    /// <summary>Facts by subject area; one that rules of several areas read counts in each.</summary>
    public IReadOnlyList<FactCount> ByTopic { get; }

    /// <summary>Facts by the document that gives them, of those that name one.</summary>
    public IReadOnlyList<FactCount> ByDocument { get; }

    /// <summary>Documents whose figures are not all read, with the most to confirm first.</summary>
    public IEnumerable<FactCount> ToConfirm => ByDocument.Where(of => of.Unread > 0).OrderByDescending(of => of.Unread).ThenBy(of => of.Of, StringComparer.Ordinal);

    private static int Read(IEnumerable<LimitDefinition> lines) => lines.Count(line => line.Verified);
}

/// <summary>How many lines have a strength.</summary>
/// <param name="Strength">The strength.</param>
/// <param name="Lines">How many.</param>
public sealed record StrengthCount(LimitStrength Strength, int Lines);

/// <summary>How many facts there are, and were read.</summary>
/// <param name="Of">The subject area or document.</param>
/// <param name="Facts">How many.</param>
/// <param name="Read">How many of them were read where they stand.</param>
public sealed record FactCount(string Of, int Facts, int Read)
{
    /// <summary>How many were not.</summary>
    public int Unread => Facts - Read;
}
