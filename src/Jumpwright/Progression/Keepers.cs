using System.Collections.Immutable;
using Jumpwright.Exercises;

namespace Jumpwright.Progression;

/// <summary>Harder neighbours: who does one of them keeps the exercise alive.</summary>
internal static class Keepers
{
    /// <summary>All that progressions lead to from it, or that ask to own it, however far.</summary>
    internal static ImmutableHashSet<string> Of(Exercise exercise, Catalogue catalogue)
    {
        ImmutableHashSet<string>.Builder found = ImmutableHashSet.CreateBuilder<string>(StringComparer.Ordinal);
        var next = new Stack<string>([exercise.Id]);
        while (next.TryPop(out string? id))
        {
            IEnumerable<string> up = (catalogue.Find(id)?.Progressions ?? []).Concat(
                catalogue.Exercises.Where(e => e.Entry.Any(c => c.OwnedExercise == id)).Select(e => e.Id)
            );
            foreach (string harder in up.Where(h => h != exercise.Id && found.Add(h)))
            {
                next.Push(harder);
            }
        }

        return found.ToImmutable();
    }
}
