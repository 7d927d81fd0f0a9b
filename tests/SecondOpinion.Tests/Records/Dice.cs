namespace SecondOpinion.Tests.Records;

/// <summary>Draws that a number alone decides.</summary>
internal sealed class Dice(int seed)
{
    private readonly Random _random = new(seed);

    public int UpTo(int count) => _random.Next(count);

    public bool Chance(double probability) => _random.NextDouble() < probability;

    public T OneOf<T>(IReadOnlyList<T> items) => items[_random.Next(items.Count)];
}
