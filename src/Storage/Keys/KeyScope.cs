namespace Storage.Keys;

/// <summary>What the holder of a key may do.</summary>
public enum KeyScope
{
    /// <summary>Read what is stored.</summary>
    Read,

    /// <summary>Have single records judged and stored.</summary>
    Evaluate,

    /// <summary>Have many records judged, and cancel that.</summary>
    Audit,

    /// <summary>Save makers' limits.</summary>
    Profiles,

    /// <summary>All of it, and whatever asks for more than the others give.</summary>
    Admin,
}
