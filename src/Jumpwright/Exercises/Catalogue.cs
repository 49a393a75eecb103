using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>All exercises and the bibliography they point into.</summary>
/// <param name="Exercises">In the order of stages, then id.</param>
/// <param name="Sources">By id.</param>
public sealed record Catalogue(ImmutableArray<Exercise> Exercises, ImmutableDictionary<string, Source> Sources)
{
    /// <summary>Exercises by id for as long as their array lives; plans of weeks look them up by the thousand.</summary>
    private static readonly ConditionalWeakTable<Exercise[], Dictionary<string, Exercise>> ById = [];

    private static readonly Lazy<Catalogue> Shipped = new(() =>
        Read(
                Embedded
                    .Names("Jumpwright.Exercises.Data.", ".json")
                    .Select(n => KeyValuePair.Create(n, Embedded.Text(n))),
                Bibliography.Standard
            )
            .Require()
    );

    /// <summary>The catalogue that ships with the product.</summary>
    public static Catalogue Standard => Shipped.Value;

    /// <summary>
    /// Reads exercise files (name and JSON text) against a bibliography. Refuses the first one that is unreadable, or
    /// whose id stands twice. What reads may still be wrong: <see cref="CatalogueLint.Check"/> judges it.
    /// </summary>
    public static Outcome<Catalogue> Read(IEnumerable<KeyValuePair<string, string>> files, Bibliography bibliography)
    {
        var exercises = new Dictionary<string, Exercise>(StringComparer.Ordinal);
        foreach ((string name, string json) in files)
        {
            if (!ExerciseFile.Read(name, json).TryGet(out Exercise? exercise, out Refusal? refusal))
            {
                return refusal;
            }

            if (!exercises.TryAdd(exercise.Id, exercise))
            {
                return new Refusal($"Exercise file {name}: the id '{exercise.Id}' is taken by another file.");
            }
        }

        return new Catalogue(
            [.. exercises.Values.OrderBy(e => e.Stage).ThenBy(e => e.Id, StringComparer.Ordinal)],
            bibliography.Sources.ToImmutableDictionary(StringComparer.Ordinal)
        );
    }

    /// <summary>The exercise of that id, or null.</summary>
    public Exercise? Find(string id) =>
        Exercises.IsDefaultOrEmpty
            ? null
            : ById.GetValue(ImmutableCollectionsMarshal.AsArray(Exercises)!, Index).GetValueOrDefault(id);

    private static Dictionary<string, Exercise> Index(Exercise[] exercises) =>
        exercises
            .GroupBy(e => e.Id, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);

    /// <summary>
    /// What can be done instead when that tissue is sore: along the regressions, nearest first, those that ask less of it.
    /// None of them asks more of any other tissue either, which the linter holds.
    /// </summary>
    public ImmutableArray<Exercise> EasierOn(Tissue tissue, Exercise exercise)
    {
        int tier = exercise.Demand[tissue];
        return [.. Below(exercise).Where(e => e.Demand[tissue] < tier)];
    }

    /// <summary>All that its regressions lead to, nearest first.</summary>
    public ImmutableArray<Exercise> Below(Exercise exercise)
    {
        var found = new List<Exercise>();
        var next = new Queue<string>(exercise.Regressions);
        while (next.TryDequeue(out string? id))
        {
            if (Find(id) is { } easier && easier.Id != exercise.Id && !found.Contains(easier))
            {
                found.Add(easier);
                foreach (string further in easier.Regressions)
                {
                    next.Enqueue(further);
                }
            }
        }

        return [.. found];
    }
}
