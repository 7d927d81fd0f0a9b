using System.Text.Json.Serialization;
using Wire;

namespace Kernel;

/// <summary>How far a rule covers its own demand when what the record says is true.</summary>
[JsonConverter(typeof(WireEnumConverter<Coverage>))]
public enum Coverage
{
    /// <summary>It finds every breach of its demand, and finds fault with nothing else.</summary>
    Full,

    /// <summary>It can find fault where the demand is met.</summary>
    MayOverReport,

    /// <summary>A breach of the demand can pass it.</summary>
    MayUnderReport,
}
