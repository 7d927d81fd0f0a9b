using System.Text.Json;

namespace SecondOpinion;

/// <summary>What of a record contradicts a reason, by the words of the table of reasons.</summary>
internal static class Contradictions
{
    /// <summary>Does the record hold what this row says cannot stand beside its reason?</summary>
    public static bool IsContradicted(this Reason row, Case one) => row.ContradictedBy.Any(words => IsOnRecord(one, words));

    /// <summary>Words that begin with a member: the member alone, the values that contradict, or the only ones that do not; or a joint of some places.</summary>
    private static bool IsOnRecord(Case one, string words)
    {
        const string Joint = "a joint of place ";
        if (words.StartsWith(Joint, StringComparison.Ordinal))
            return words[Joint.Length..].Split(" or ").Any(place => one.Record.DisturbedJoints?.Any(joint => joint.Place is { } own && Name(own) == place) == true);
        var (member, rest) = words.Split(' ', 2) is [var first, var others] ? (first, others) : (words, "");
        if (one.Pages.Text(member) is not { } value)
            return false;
        const string Other = "other than ";
        return rest.Length == 0 || (rest.StartsWith(Other, StringComparison.Ordinal) ? rest[Other.Length..] != value : rest.Split(" or ").Contains(value, StringComparer.Ordinal));
    }

    private static string Name(Records.JointPlace place) => JsonSerializer.SerializeToElement(place).GetString()!;
}
