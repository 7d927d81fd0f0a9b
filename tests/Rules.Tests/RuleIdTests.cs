using System.Reflection;

namespace Rules.Tests;

/// <summary>What rules are called.</summary>
public sealed class RuleIdTests
{
    private static readonly List<string> Ids = [.. typeof(RuleIds).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (string)field.GetRawConstantValue()!)];

    [Fact]
    public void Ids_are_words_joined_by_dashes_each_once()
    {
        Assert.All(Ids, id => Assert.All(id.Split('-'), word => Assert.True(word.Length > 0 && word.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c)), id)));
        Assert.Equal(Ids.Count, Ids.Distinct(StringComparer.Ordinal).Count());
    }
}
