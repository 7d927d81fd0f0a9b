using Findings;
using Kernel;
using Kernel.Catalogues;
using Wording;

namespace ComplianceApi.Api.Rules;

/// <summary>What of a rule is shown in words, on its page and in the terminal alike.</summary>
internal static class RuleWords
{
    /// <summary>A set, as a heading.</summary>
    public static string Of(SetOfRules set) => set switch
    {
        SetOfRules.Duties => "Duties: what a visit owes",
        SetOfRules.Demands => "Demands: what the record must show",
        SetOfRules.Situation => "Situation: what follows from all that was found",
        _ => throw new InvalidOperationException($"{set} is no set of rules."),
    };

    /// <summary>What a rule calls for, and of which visits.</summary>
    public static string Of(CalledFor call, IReadOnlyList<DutyKind> duties)
    {
        var weight = call.Weight is { } known ? $"{OutcomeWords.Of(known)}{(call.PutOffAgain == true ? ", put off again" : "")}" : "put off until the boiler is used again";
        return $"{weight}{(call.Where is { } where ? $", where {where}" : "")}: {string.Join("; ", call.Parts.Select(part => Part(part, duties)))}";
    }

    /// <summary>A part of a duty that a demand serves.</summary>
    public static string Of(ServedPart serves, IReadOnlyList<DutyKind> duties) =>
        $"{Part(serves.Part, duties)}{(serves.AtMost == Weight.Should ? ", as a should at most" : "")}{(serves.Of is { } member ? $", for {Say.Place(member)}" : "")}";

    /// <summary>What a rule of the duties makes of a case.</summary>
    public static string Of(DutyExpectation expected) => expected switch
    {
        { Calls: true } => "It calls.",
        { Calls: false } => "It does not call.",
        { Infers: { Count: > 0 } inferred } => $"It infers: {string.Join(", ", inferred.Select(Say.Value))}.",
        _ => "It infers nothing.",
    };

    private static string Part(string part, IReadOnlyList<DutyKind> duties)
    {
        var names = part.Split('/');
        var title = duties.First(kind => kind.Kind == names[0]).Title;
        return names.Length > 1 ? $"{title} ({Say.Value(names[1])})" : title;
    }
}
