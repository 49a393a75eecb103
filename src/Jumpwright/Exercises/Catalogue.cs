using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>All exercises and the bibliography they point into.</summary>
/// <param name="Exercises">In the order of stages, then id.</param>
/// <param name="Sources">By id.</param>
public sealed record Catalogue(ImmutableArray<Exercise> Exercises, ImmutableDictionary<string, Source> Sources)
{
    /// <summary>The catalogue that ships with the product.</summary>
    public static Catalogue Standard => throw new NotImplementedException();

    /// <summary>The exercise of that id, or null.</summary>
    public Exercise? Find(string id) =>
        Exercises.FirstOrDefault(e => string.Equals(e.Id, id, StringComparison.Ordinal));
}
