namespace Wire;

/// <summary>A text that is one of a set of values that no enumeration of the program has, because the rules bring them.</summary>
/// <param name="name">Name of the set, as documents call it.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ValuesOfAttribute(string name) : Attribute
{
    /// <summary>Name of the set.</summary>
    public string Name { get; } = name;
}
