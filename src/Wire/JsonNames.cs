using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;

namespace Wire;

/// <summary>The names of a JSON object's members.</summary>
public static class JsonNames
{
    /// <summary>A member's name; as it was written when it has half of a surrogate pair, which JSON can write and Unicode forbids.</summary>
    public static string Of(JsonProperty property)
    {
        try
        {
            return property.Name;
        }
        catch (InvalidOperationException)
        {
            return Encoding.UTF8.GetString(JsonMarshal.GetRawUtf8PropertyName(property));
        }
    }
}
