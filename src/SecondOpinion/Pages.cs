using System.Globalization;
using System.Text.Json;
using Records;
using Records.Canonical;

namespace SecondOpinion;

/// <summary>A record as its text, for what is known by a pointer only.</summary>
internal sealed class Pages(ServiceRecord record)
{
    private readonly JsonElement _root = JsonDocument.Parse(CanonicalForm.Write(record)).RootElement;

    /// <summary>The value at a pointer; null where the record has none, or an empty section.</summary>
    public JsonElement? At(string pointer)
    {
        var here = _root;
        foreach (var step in pointer.Split('/').Skip(1))
        {
            if (here.ValueKind == JsonValueKind.Object && here.TryGetProperty(step, out var member))
                here = member;
            else if (here.ValueKind == JsonValueKind.Array && int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var place) && place < here.GetArrayLength())
                here = here[place];
            else
                return null;
        }

        return here.ValueKind == JsonValueKind.Object && !here.EnumerateObject().Any() ? null : here;
    }

    public bool Has(string pointer) => At(pointer) is not null;

    /// <summary>Does what is recorded there say that it was done? A no and a list without items say that it was not; what is no pointer leads nowhere.</summary>
    public bool IsDone(string pointer) => pointer.StartsWith('/') && At(pointer) is { ValueKind: not JsonValueKind.False } value
        && !(value.ValueKind == JsonValueKind.Array && value.GetArrayLength() == 0);

    /// <summary>The value as a text: a name, a number, true or false.</summary>
    public string? Text(string pointer) => At(pointer)?.ToString() switch
    {
        "True" => "true",
        "False" => "false",
        var text => text,
    };

    /// <summary>Does a pointer meet a pattern, in which * is any item?</summary>
    public static bool Meets(string pointer, string pattern)
    {
        var (steps, wanted) = (pointer.Split('/'), pattern.Split('/'));
        return steps.Length == wanted.Length && steps.Zip(wanted).All(pair => pair.Second == "*" || pair.First == pair.Second);
    }

    /// <summary>Is one pointer the other, or a part of it?</summary>
    public static bool IsWithin(string part, string whole) => $"{part}/".StartsWith($"{whole}/", StringComparison.Ordinal);
}
