namespace WholeRecords.Tests.Properties;

/// <summary>1. A good value more lowers nothing.</summary>
internal sealed class AdditionProperty : IProperty
{
    public static readonly Claim Lowers = new("1a", "Adding a good value of evidence that contradicts nothing never lowers.");
    public static readonly Claim Owes = new("1b", "Adding a good value calls for no further must duty.");

    public IReadOnlyList<Claim> Claims { get; } = [Lowers, Owes];

    public IEnumerable<Counterexample> Ask(Base one, Action<Claim> asked)
    {
        foreach (var variant in GoodValues.For(one.Json))
        {
            if (one.With(variant) is not { } said)
                continue;
            asked(Lowers);
            if (Order.Lowers(one.Said, said) is { } lower)
                yield return Counterexample.Of(Lowers, lower, one, variant, said);
            if ((one.Said.Duties, said.Duties) is not ({ } before, { } after))
                continue;
            asked(Owes);
            if (after.Where(duty => duty.Weight == "must").Select(duty => duty.Kind).Except(before.Where(duty => duty.Weight == "must").Select(duty => duty.Kind)).Order(StringComparer.Ordinal).FirstOrDefault() is { } kind)
                yield return Counterexample.Of(Owes, $"{kind} owed", one, variant, said);
        }
    }
}
