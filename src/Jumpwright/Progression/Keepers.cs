using System.Collections.Immutable;
using Jumpwright.Exercises;

namespace Jumpwright.Progression;

/// <summary>Harder neighbours: who does one of them keeps the exercise alive.</summary>
internal static class Keepers
{
    /// <summary>For each exercise, all that progressions lead to from it, or that ask to own it, however far.</summary>
    internal static ImmutableDictionary<string, ImmutableHashSet<string>> Of(Catalogue catalogue)
    {
        ILookup<string, string> up = catalogue
            .Exercises.SelectMany(e =>
                e.Progressions.Select(harder => (From: e.Id, To: harder))
                    .Concat(e.Entry.Select(c => c.OwnedExercise).OfType<string>().Select(o => (From: o, To: e.Id)))
            )
            .ToLookup(edge => edge.From, edge => edge.To, StringComparer.Ordinal);
        return catalogue.Exercises.ToImmutableDictionary(e => e.Id, e => From(e.Id, up), StringComparer.Ordinal);
    }

    private static ImmutableHashSet<string> From(string start, ILookup<string, string> up)
    {
        var found = new HashSet<string>(StringComparer.Ordinal);
        var next = new Stack<string>([start]);
        while (next.TryPop(out string? id))
        {
            foreach (string harder in up[id].Where(h => h != start && found.Add(h)))
            {
                next.Push(harder);
            }
        }

        return found.ToImmutableHashSet(StringComparer.Ordinal);
    }
}
