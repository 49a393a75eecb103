using System.Text.Json;
using System.Text.Json.Serialization;

namespace Jumpwright.Quantities;

/// <summary>Data that is built into the core: read from the assembly, never from a disk.</summary>
internal static class Embedded
{
    /// <summary>How our data files are read: snake_case keys, no unknown keys, nothing twice.</summary>
    internal static readonly JsonSerializerOptions Json = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        AllowDuplicateProperties = false,
        ReadCommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = false,
    };

    /// <summary>The text of an embedded resource.</summary>
    /// <exception cref="InvalidOperationException">It was not built in.</exception>
    internal static string Text(string name)
    {
        using Stream stream =
            typeof(Embedded).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The data '{name}' is not built in.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>Names of the embedded resources that begin and end so, in ordinal order.</summary>
    internal static IEnumerable<string> Names(string beginning, string ending) =>
        typeof(Embedded)
            .Assembly.GetManifestResourceNames()
            .Where(n =>
                n.StartsWith(beginning, StringComparison.Ordinal) && n.EndsWith(ending, StringComparison.Ordinal)
            )
            .Order(StringComparer.Ordinal);
}
