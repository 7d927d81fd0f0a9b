using System.Security.Cryptography;
using System.Text;

namespace Calculations;

/// <summary>
/// Draws without replacement so that anybody can repeat it: items are taken in the order of HMAC-SHA-256 (RFC 2104 and FIPS 198-1, with
/// SHA-256 of FIPS 180-4) keyed with the seed, over the item, both in UTF-8. Neither the machine, nor the program's version, nor the order
/// of the list matters, and an item that is added moves no other.
/// </summary>
public static class SeededDraw
{
    /// <summary>All items in the order in which they are drawn; the first n are the draw of n.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="items">The items, each once.</param>
    public static IReadOnlyList<string> Order(string seed, IEnumerable<string> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        var key = Encoding.UTF8.GetBytes(seed);
        return [.. items
            .Select(item => (Item: item, Mark: Convert.ToHexStringLower(HMACSHA256.HashData(key, Encoding.UTF8.GetBytes(item)))))
            .OrderBy(drawn => drawn.Mark, StringComparer.Ordinal).ThenBy(drawn => drawn.Item, StringComparer.Ordinal)
            .Select(drawn => drawn.Item)];
    }

    /// <summary>By what a seed is promised before it is used: SHA-256 over it in UTF-8, lower-case hex.</summary>
    public static string Promise(string seed) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(seed)));
}
