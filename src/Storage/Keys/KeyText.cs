using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Storage.Keys;

/// <summary>
/// A secret as it is handed out, and as it is kept. It is random and 256 bits long, so that nobody finds it by trying and one plain
/// SHA-256 hides it; a slow hash is for what people make up themselves.
/// </summary>
public static class KeyText
{
    private const int IdBytes = 6;
    private const int SecretBytes = 32;

    /// <summary>A new key: its public id, a dot, and the secret.</summary>
    public static string New() => $"{Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes))}.{NewSecret()}";

    /// <summary>A new secret alone.</summary>
    public static string NewSecret() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(SecretBytes));

    /// <summary>The public id of a key: what stands before the dot; all of it where there is none.</summary>
    public static string IdOf(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key.Split('.', 2)[0];
    }

    /// <summary>What is kept of it.</summary>
    public static string HashOf(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));

    /// <summary>Is it the one of which this hash was kept? Takes as long for a wrong one as for the right one.</summary>
    public static bool Matches(string secret, string hash) =>
        CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(HashOf(secret)), Encoding.ASCII.GetBytes(hash));
}
