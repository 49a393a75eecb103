using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace Jumpwright.Quantities;

/// <summary>All sources that formulas, thresholds and exercises point into, by id.</summary>
public sealed class Bibliography
{
    private const string Resource = "Jumpwright.Quantities.Data.sources.json";

    private static readonly Lazy<Bibliography> Shipped = new(() => Read(Embedded.Text(Resource)).Require());

    private static readonly ImmutableDictionary<string, SourceKind> Kinds = ImmutableDictionary.CreateRange(
        StringComparer.Ordinal,
        [
            KeyValuePair.Create("published", SourceKind.Published),
            KeyValuePair.Create("consensus", SourceKind.Consensus),
            KeyValuePair.Create("common-practice", SourceKind.CommonPractice),
            KeyValuePair.Create("house", SourceKind.House),
        ]
    );

    private Bibliography(ImmutableSortedDictionary<string, Source> sources) => Sources = sources;

    /// <summary>The bibliography that ships with the product.</summary>
    public static Bibliography Standard => Shipped.Value;

    /// <summary>By id, in ordinal order.</summary>
    public ImmutableSortedDictionary<string, Source> Sources { get; }

    /// <summary>The source of that id.</summary>
    /// <exception cref="KeyNotFoundException">There is none; the message says where to add it.</exception>
    public Source this[string id] =>
        TryFind(id, out Source? source)
            ? source
            : throw new KeyNotFoundException($"No source '{id}' in the bibliography: add a line to sources.json.");

    /// <summary>The source of that id in the bibliography that ships with the product.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public static Source Get(string id) => Standard[id];

    /// <summary>True when there is a source of that id.</summary>
    public bool TryFind(string id, [NotNullWhen(true)] out Source? source) => Sources.TryGetValue(id, out source);

    /// <summary>
    /// Reads a JSON array of sources, one object a source: <c>id</c>, <c>kind</c>, <c>from_memory</c>, <c>doi</c> (may
    /// be left out), <c>text</c>. Refuses a duplicate id, an empty text, an unknown kind or field.
    /// </summary>
    public static Outcome<Bibliography> Read(string json)
    {
        List<SourceLine?>? lines;
        try
        {
            lines = JsonSerializer.Deserialize<List<SourceLine?>>(json, Embedded.Json);
        }
        catch (JsonException e)
        {
            return new Refusal($"The bibliography is not readable at line {e.LineNumber + 1}: {e.Message}");
        }

        var sources = ImmutableSortedDictionary.CreateBuilder<string, Source>(StringComparer.Ordinal);
        foreach (SourceLine? line in lines ?? [])
        {
            if (line is null || !Kebab.Is(line.Id))
            {
                return new Refusal($"The bibliography has a source with the id '{line?.Id}': ids are kebab-case.");
            }

            if (string.IsNullOrWhiteSpace(line.Text))
            {
                return new Refusal($"Source '{line.Id}' has no text: say author, year, place and what it supports.");
            }

            if (!Kinds.TryGetValue(line.Kind ?? "", out SourceKind kind))
            {
                return new Refusal(
                    $"Source '{line.Id}' has the kind '{line.Kind}': use one of {string.Join(", ", Kinds.Keys.Order(StringComparer.Ordinal))}."
                );
            }

            if (sources.ContainsKey(line.Id))
            {
                return new Refusal($"Source '{line.Id}' stands twice in the bibliography: keep one of them.");
            }

            sources.Add(line.Id, new Source(line.Id, line.Text, kind, line.FromMemory, line.Doi));
        }

        return new Bibliography(sources.ToImmutable());
    }

    private sealed record SourceLine(string? Id, string? Kind, bool FromMemory, string? Doi, string? Text);
}
