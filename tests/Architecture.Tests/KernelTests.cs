using System.Reflection;
using System.Text.RegularExpressions;

namespace Architecture.Tests;

/// <summary>The kernel judges whatever it is given: it has no word of the trade, and no country.</summary>
public sealed partial class KernelTests
{
    private const BindingFlags All = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    [Fact]
    public void No_name_in_the_kernel_is_a_word_of_the_trade()
    {
        var names = Assembly.Load("Kernel").GetTypes().SelectMany(type => type.GetMembers(All).Select(member => $"{type.FullName}.{member.Name}").Append(type.FullName!));
        Assert.DoesNotContain(names, name => Trade().IsMatch(name));
    }

    [Theory]
    [InlineData("Kernel.GasRate")]
    [InlineData("Kernel.LimitBook.FlueLimits")]
    [InlineData("Kernel.IsLandlordsCheck")]
    public void A_word_of_the_trade_is_found(string name) => Assert.Matches(Trade(), name);

    [GeneratedRegex("Gas|Flue|Boiler|Burner|Combustion|Landlord|Meter(?!s)|Joint(?!ly)|Tightness|Engineer|England|Wales|Scotland|Co2", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Trade();
}
