using System.Text.Json;
using System.Text.Json.Serialization;

namespace Jumpwright.Quantities;

/// <summary>A sentence in a file is its English; read back it is words and no more.</summary>
internal sealed class SentenceJson : JsonConverter<Sentence>
{
    public override Sentence Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Sentence.Plain(reader.GetString() ?? throw new JsonException("A sentence is not null."));

    public override void Write(Utf8JsonWriter writer, Sentence value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString());
}
