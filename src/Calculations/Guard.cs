using System.Numerics;
using System.Runtime.CompilerServices;

namespace Calculations;

/// <summary>Refuses input outside a formula's range, so that no number ever comes out of one. NaN is outside every range.</summary>
internal static class Guard
{
    /// <summary>Both ends belong to the range.</summary>
    public static T Within<T>(T value, T min, T max, [CallerArgumentExpression(nameof(value))] string name = "")
        where T : INumber<T> =>
        value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"{name} must be from {min} to {max}."));

    /// <summary>The lower end is shut out: for divisors and for limits a reading cannot reach.</summary>
    public static T Above<T>(T value, T floor, T max, [CallerArgumentExpression(nameof(value))] string name = "")
        where T : INumber<T> =>
        value > floor && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"{name} must be above {floor} and at most {max}."));

    /// <summary>The upper end is shut out.</summary>
    public static T Below<T>(T value, T min, T ceiling, [CallerArgumentExpression(nameof(value))] string name = "")
        where T : INumber<T> =>
        value >= min && value < ceiling
            ? value
            : throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"{name} must be at least {min} and below {ceiling}."));
}
