using System.Security.Cryptography;
using System.Text.Json.Serialization;

namespace Jumpwright.App.Settings;

/// <summary>
/// After how long the pages lock, and what opens them. The word itself is not kept: only a salted hash that takes long to try
/// (PBKDF2 with HMAC-SHA-256). It keeps out who passes by; whoever can copy this machine's files can try words for as long as
/// they like.
/// </summary>
/// <param name="Minutes">Minutes without a touch after which a device is locked.</param>
/// <param name="Here">Whether this machine locks too, or only paired devices.</param>
/// <param name="Salt">Base64.</param>
/// <param name="Hash">Base64.</param>
/// <param name="Rounds">Iterations of PBKDF2.</param>
internal sealed record LockSettings(
    [property: JsonPropertyName("minutes")] int Minutes,
    [property: JsonPropertyName("here")] bool Here,
    [property: JsonPropertyName("salt")] string Salt,
    [property: JsonPropertyName("hash")] string Hash,
    [property: JsonPropertyName("rounds")] int Rounds
)
{
    public const int LeastLetters = 4;
    public const int MostLetters = 128;

    /// <summary>OWASP's figure for PBKDF2 with HMAC-SHA-256 (Password Storage Cheat Sheet, 2023).</summary>
    private const int RoundsNow = 600_000;
    private const int Bytes = 32;

    public static LockSettings Of(string word, int minutes, bool here)
    {
        byte[] salt = RandomNumberGenerator.GetBytes(16);
        return new LockSettings(
            minutes,
            here,
            Convert.ToBase64String(salt),
            Convert.ToBase64String(Derived(word, salt, RoundsNow)),
            RoundsNow
        );
    }

    public bool Opens(string word) =>
        word.Length <= MostLetters
        && CryptographicOperations.FixedTimeEquals(
            Derived(word, Convert.FromBase64String(Salt), Rounds),
            Convert.FromBase64String(Hash)
        );

    private static byte[] Derived(string word, byte[] salt, int rounds) =>
        Rfc2898DeriveBytes.Pbkdf2(word, salt, rounds, HashAlgorithmName.SHA256, Bytes);
}
