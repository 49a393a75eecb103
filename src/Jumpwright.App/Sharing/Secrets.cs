using System.Security.Cryptography;
using System.Text;

namespace Jumpwright.App.Sharing;

/// <summary>Random words that open something. Only their SHA-256 is kept, so that nothing here can be read and used.</summary>
internal static class Secrets
{
    /// <summary>No letter that looks like another: what a person reads off one screen and types on another.</summary>
    private const string Letters = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";

    /// <summary>256 random bits in 43 letters that an address may hold.</summary>
    public static string Token() =>
        Convert.ToBase64String(RandomNumberGenerator.GetBytes(32)).TrimEnd('=').Replace('+', '-').Replace('/', '_');

    /// <summary>Eight letters (39 bits): enough for five minutes and five tries.</summary>
    public static string Code() => RandomNumberGenerator.GetString(Letters, 8);

    public static string Hash(string secret) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));

    /// <summary>As typed: small letters and gaps do no harm.</summary>
    public static string Clean(string typed) => new([.. typed.ToUpperInvariant().Where(char.IsLetterOrDigit).Take(64)]);

    public static bool Same(string a, string b) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(a), Encoding.UTF8.GetBytes(b));
}
