using Kernel.Catalogues;

namespace Visits.Judging;

/// <summary>What stands beside the record of a case.</summary>
public static class CaseLookup
{
    /// <summary>What is looked up beside the record of this case.</summary>
    public static Lookup Beside(this RuleCase one)
    {
        ArgumentNullException.ThrowIfNull(one);
        return new Lookup { History = one.History, SaidBefore = one.SaidBefore };
    }

    /// <inheritdoc cref="Beside(RuleCase)" />
    public static Lookup Beside(this DutyCase one)
    {
        ArgumentNullException.ThrowIfNull(one);
        return new Lookup { History = one.History };
    }
}
