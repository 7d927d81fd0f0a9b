using System.Text.Json.Serialization;
using Wire;

namespace Kernel;

/// <summary>The sets in which the rules stand, in the order in which they are asked. They judge together, as one rule set of one version.</summary>
[JsonConverter(typeof(WireEnumConverter<SetOfRules>))]
public enum SetOfRules
{
    /// <summary>What a visit owes, and because of what.</summary>
    Duties,

    /// <summary>What is demanded of the record, each demand by itself.</summary>
    Demands,

    /// <summary>What follows from all that was found and done: each danger, what became of it, what is left.</summary>
    Situation,
}
