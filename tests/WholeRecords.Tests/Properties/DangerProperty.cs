namespace WholeRecords.Tests.Properties;

/// <summary>4. A danger that was handled never holds a job, and one that was not never lets it be closed.</summary>
internal sealed class DangerProperty : IProperty
{
    public static readonly Claim Handled = new("4a", "A handled danger is never itself what holds closing.");
    public static readonly Claim Unhandled = new("4b", "A record with an unhandled danger never closes.");
    public static readonly Claim Agrees = new("4c", "What is said of the situation and of closing agrees: not handled is held, and names what is open.");

    public IReadOnlyList<Claim> Claims { get; } = [Handled, Unhandled, Agrees];

    public IEnumerable<Counterexample> Ask(Base one, Action<Claim> asked)
    {
        if (one.Whole is { IsHandled: true, MayClose: true } handled && one.Said.IsHeldByADanger is { } isHeld)
        {
            asked(Handled);
            if (isHeld)
                yield return Counterexample.OfItself(Handled, $"{handled.Danger}, held by the danger", one);
        }

        if (one.Whole is { IsHandled: false } unhandled)
        {
            asked(Unhandled);
            if (one.Said.MayClose)
                yield return Counterexample.OfItself(Unhandled, $"{unhandled.Danger}, closed", one);
        }

        if (one.Said.Situation is { } situation)
        {
            asked(Agrees);
            if (!situation.Handled && one.Said.MayClose)
                yield return Counterexample.OfItself(Agrees, "not handled by its own word, and closed", one);
            if (situation.Handled != (situation.Open.Count == 0))
                yield return Counterexample.OfItself(Agrees, "handled with something open, or not handled with nothing open", one);
        }
    }
}
