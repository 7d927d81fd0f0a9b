using System.Text;
using Records;

namespace Checking;

/// <summary>Whether two records are of the same appliance. What is in doubt is not the same.</summary>
public static class SameAppliance
{
    /// <summary>
    /// By serial number and maker, however they are spaced, capitalised or encoded; where one of the records lacks either of them, by the
    /// reference of the premises and the day, unless what both do say differs. What is absent from both agrees with nothing.
    /// </summary>
    public static bool Of(ServiceRecord one, ServiceRecord other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        var serialNumber = Agree(one.Appliance.SerialNumber, other.Appliance.SerialNumber);
        var maker = Agree(one.Appliance.Maker, other.Appliance.Maker);
        return (serialNumber, maker) switch
        {
            (true, true) => true,
            (false, _) or (_, false) => false,
            _ => Agree(one.Premises?.Reference, other.Premises?.Reference) == true && one.FinishedAt.Date == other.FinishedAt.Date,
        };
    }

    /// <summary>Null where one of the two says nothing.</summary>
    private static bool? Agree(string? one, string? other) =>
        Folded(one) is { Length: > 0 } left && Folded(other) is { Length: > 0 } right ? left == right : null;

    private static string Folded(string? text) =>
        string.Concat((text ?? "").Normalize(NormalizationForm.FormKC).ToUpperInvariant().Where(sign => !char.IsWhiteSpace(sign)));
}
