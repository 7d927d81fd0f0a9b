using Findings;
using Records;
using static SecondOpinion.Opinions.Reply;

namespace SecondOpinion.Opinions;

internal static class CompetenceOpinions
{
    public static IEnumerable<(string RuleId, Func<Case, IEnumerable<Opinion>> Say)> All =>
    [
        ("business-number-recorded", c => On("/engineer/businessNumber", Given(c.Record.Engineer?.BusinessNumber) ? Outcome.Pass : Outcome.Missing)),
        ("category-covers-appliance", c => On("/engineer/categories", Category(c))),
        ("licence-number-recorded", c => On("/engineer/licenceNumber", Given(c.Record.Engineer?.LicenceNumber) ? Outcome.Pass : Outcome.Missing)),
    ];

    // Expired is outside the scope; without the net input and the fuel nobody can say which scope serves.
    private static Outcome Category(Case c)
    {
        if (c.NetInputKw() is not { } netKw || c.Record.Appliance.Fuel is not { } fuel)
            return Outcome.Missing;

        var held = (c.Record.Engineer?.Categories ?? [])
            .Where(category => Serves(category.Fuel, fuel) && category.ExpiresOn >= c.Day())
            .Select(category => category.Scope)
            .ToHashSet();
        var isSmall = c.Limit("domestic-scope-input")!.Holds(netKw);
        if (held.Contains(isSmall ? CategoryScope.Domestic : CategoryScope.NonDomestic))
            return Outcome.Pass;

        return isSmall && c.IsWorkplace() == true && held.Contains(CategoryScope.NonDomestic) ? Outcome.Advisory : Outcome.Missing;
    }

    // One category is held for liquefied gas, propane and butane alike.
    private static bool Serves(Fuel? held, Fuel burnt) => held == burnt || (held is Fuel.Propane or Fuel.Butane && burnt is Fuel.Propane or Fuel.Butane);
}
