using Kernel;
using Records;

namespace Rules.Competence;

/// <summary>The category that the work on one appliance needs on one day.</summary>
internal sealed class NeededCategory(Fuel fuel, CategoryScope scope, DateOnly day)
{
    public bool IsMetBy(EngineerCategory category) => IsInDate(category) && IsOfTheFuel(category) && category.Scope == scope;

    /// <summary>Right fuel and in date, of the other scope.</summary>
    public bool IsMetButForScope(EngineerCategory category) => IsInDate(category) && IsOfTheFuel(category) && category.Scope is not null;

    /// <summary>Pointers of what an entry leaves open that might otherwise serve.</summary>
    public IEnumerable<string> Open(EngineerCategory category, string pointer)
    {
        var canServe = (category.Fuel is null || IsOfTheFuel(category)) && (category.Scope is null || category.Scope == scope)
            && (category.ExpiresOn is null || IsInDate(category));
        if (!canServe)
            yield break;
        if (category.Fuel is null)
            yield return $"{pointer}/fuel";
        if (category.Scope is null)
            yield return $"{pointer}/scope";
        if (category.ExpiresOn is null)
            yield return $"{pointer}/expiresOn";
    }

    /// <summary>Why an entry does not serve, in words.</summary>
    public string WhyNot(EngineerCategory category) => category switch
    {
        { Fuel: null } or { Scope: null } or { ExpiresOn: null } => "one is recorded only in part",
        { Fuel: var held } when !IsOfTheFuel(category) => WireText.Sentence($"{held} is another fuel"),
        { Scope: var held } when held != scope => WireText.Sentence($"{held} is another scope"),
        _ => WireText.Sentence($"{fuel} {scope} expired on {category.ExpiresOn}"),
    };

    // One category is for either liquefied gas.
    private bool IsOfTheFuel(EngineerCategory category) => category.Fuel == fuel || (category.Fuel is Fuel.Propane or Fuel.Butane && fuel is Fuel.Propane or Fuel.Butane);

    // The last day is a valid day.
    private bool IsInDate(EngineerCategory category) => category.ExpiresOn >= day;
}
