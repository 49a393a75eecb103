using System.Text.Encodings.Web;
using System.Text.Json;

namespace Jumpwright.App.Contracts;

/// <summary>
/// How the contract's objects are written: names as in the contract, properties in the order of the contract, every
/// character as itself, and no number that is not finite (the writer throws rather than print one).
/// </summary>
internal static class ContractJson
{
    /// <summary>The schema number that every object carries.</summary>
    public const int Schema = 1;

    /// <summary>How one line is written.</summary>
    public static JsonSerializerOptions OneLine { get; } =
        new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, WriteIndented = false };

    private static readonly JsonSerializerOptions Indented = new(OneLine) { WriteIndented = true, NewLine = "\n" };

    /// <summary>One line.</summary>
    public static string Line<T>(T value) => JsonSerializer.Serialize(value, OneLine);

    /// <summary>One line in UTF-8.</summary>
    public static byte[] Bytes<T>(T value) => JsonSerializer.SerializeToUtf8Bytes(value, OneLine);

    /// <summary>For a file that a person may open.</summary>
    public static string Page<T>(T value) => JsonSerializer.Serialize(value, Indented);
}
