using System.Text.Json.Serialization;
using Wire;

namespace Kernel;

/// <summary>Which change of a limit makes the rules that read it stricter.</summary>
[JsonConverter(typeof(WireEnumConverter<Tightening>))]
public enum Tightening
{
    /// <summary>A narrower range: what lies outside is found fault with.</summary>
    Narrower,

    /// <summary>A wider range: what lies inside is found fault with, or is to be withstood.</summary>
    Wider,

    /// <summary>None: it tells apart which rules apply, so that no change of it is only stricter.</summary>
    Neither,
}
