namespace MadeVisits;

/// <summary>Draws that a number alone decides.</summary>
internal sealed class Dice(int seed)
{
    // The generator of .NET for a given seed is fixed; the parts of a seed that lie close together are driven apart first.
    private readonly Random _random = new(unchecked((int)((uint)seed * 2_654_435_761u)));

    public int UpTo(int count) => _random.Next(count);

    public bool Chance(double probability) => _random.NextDouble() < probability;

    public T OneOf<T>(params ReadOnlySpan<T> items) => items[_random.Next(items.Length)];

    /// <summary>One of the items, each as often as its weight says.</summary>
    public T Weighted<T>(params ReadOnlySpan<(T Item, int Weight)> items)
    {
        var sum = 0;
        foreach (var (_, weight) in items)
            sum += weight;
        var left = _random.Next(sum);
        foreach (var (item, weight) in items)
            if ((left -= weight) < 0)
                return item;
        throw new InvalidOperationException("There is nothing to draw from.");
    }

    public decimal Between(decimal low, decimal high) => low + ((high - low) * (decimal)_random.NextDouble());

    /// <summary>Around a middle, with a standard deviation; never further than three of them.</summary>
    public decimal Around(decimal middle, decimal deviation)
    {
        var normal = Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
        return middle + (deviation * (decimal)Math.Clamp(normal, -3, 3));
    }
}
