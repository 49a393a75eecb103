using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Jumpwright.Plans.Asking;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.App.Desk.Keeping;

/// <summary>
/// A sentence with what fills it, so that it is said in the language and units of whoever reads it later: its template, its parts by kind,
/// and what kind of reason it is. What came written out is a string. A part of a kind that is not known here is kept as its English words.
/// </summary>
internal sealed class KeptSentences : JsonConverter<Sentence>
{
    private static readonly FrozenDictionary<string, Type> Parts = Named(
        typeof(string),
        typeof(int),
        typeof(double),
        typeof(LocalDate),
        typeof(LocalTime),
        typeof(Sentence),
        typeof(Length),
        typeof(Mass),
        typeof(HeightToSet),
        typeof(LoadToTake),
        typeof(DoubtedLength),
        typeof(SaidExercise),
        typeof(SaidKit),
        typeof(SaidLimit),
        typeof(SaidMeasure),
        typeof(SaidMethod),
        typeof(SaidNumber),
        typeof(SaidRole),
        typeof(SaidSession),
        typeof(UnitName)
    );

    private static readonly FrozenDictionary<string, Type> Reasons = Named(typeof(WantedFor), typeof(OpenStep));

    public override Sentence Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var document = JsonDocument.ParseValue(ref reader);
        JsonElement kept = document.RootElement;
        if (kept.ValueKind == JsonValueKind.String)
        {
            return Sentence.Plain(kept.GetString()!);
        }

        Parted parted = kept.Deserialize<Parted>(options) ?? throw new JsonException("A sentence is not null.");
        Sentence sentence = Sentence.Of(
            parted.Template,
            [.. parted.Parts.Select(p => p is null ? null : Kept(p, Parts, options))]
        );
        return parted.Reason is { } reason ? sentence.As((IReason)Kept(reason, Reasons, options)) : sentence;
    }

    public override void Write(Utf8JsonWriter writer, Sentence value, JsonSerializerOptions options)
    {
        if (value.IsPlain)
        {
            writer.WriteStringValue(value.ToString());
            return;
        }

        JsonSerializer.Serialize(
            writer,
            new Parted(
                value.Template,
                [.. value.Arguments.Select(a => a is null ? null : Kept(a, options))],
                value.Reason is { } reason && Reasons.ContainsKey(reason.GetType().Name) ? Kept(reason, options) : null
            ),
            options
        );
    }

    private static Part Kept(object part, JsonSerializerOptions options)
    {
        Type type = part.GetType();
        object kept = Parts.ContainsKey(type.Name) || Reasons.ContainsKey(type.Name) ? part : $"{part}";
        return new(kept.GetType().Name, JsonSerializer.SerializeToElement(kept, kept.GetType(), options));
    }

    private static object Kept(Part part, FrozenDictionary<string, Type> kinds, JsonSerializerOptions options) =>
        kinds.TryGetValue(part.Kind, out Type? type) && part.Value.Deserialize(type, options) is { } value
            ? value
            : throw new JsonException($"A part of kind '{part.Kind}' is not known.");

    private static FrozenDictionary<string, Type> Named(params IEnumerable<Type> types) =>
        types.ToFrozenDictionary(t => t.Name, StringComparer.Ordinal);

    private sealed record Parted(
        [property: JsonPropertyName("t")] string Template,
        [property: JsonPropertyName("p")] ImmutableArray<Part?> Parts,
        [property: JsonPropertyName("r")] Part? Reason
    );

    private sealed record Part(
        [property: JsonPropertyName("k")] string Kind,
        [property: JsonPropertyName("v")] JsonElement Value
    );
}
