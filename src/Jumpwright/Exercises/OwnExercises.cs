using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>
/// A catalogue with a coach's own exercise files: new ones join, one with a known id stands instead of the shipped one. All
/// of it must pass the linter; a file that does not is left out with a sentence. A file may not ask less care than the
/// shipped exercise it stands for: no lower tier, no shorter recovery, no safety criterion fewer.
/// </summary>
/// <param name="Catalogue">What can be used.</param>
/// <param name="Remarks">Which files were left out, and why.</param>
public sealed record OwnExercises(Catalogue Catalogue, ImmutableArray<string> Remarks)
{
    /// <summary>Joins files (name and JSON text) to a catalogue, in the order given.</summary>
    public static OwnExercises Join(Catalogue catalogue, ImmutableArray<KeyValuePair<string, string>> files)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        var remarks = ImmutableArray.CreateBuilder<string>();
        Dictionary<string, (string File, Exercise Exercise)> own = new(StringComparer.Ordinal);
        foreach ((string file, string json) in files)
        {
            if (!ExerciseFile.Read(file, json).TryGet(out Exercise? exercise, out Refusal? refusal))
            {
                remarks.Add($"{refusal.Sentence} It was left out.");
            }
            else if (catalogue.Find(exercise.Id) is { } shipped && LessCareful(exercise, shipped) is { } less)
            {
                remarks.Add($"{file}: {exercise.Id} {less}; it was left out and the shipped one stands.");
            }
            else if (!own.TryAdd(exercise.Id, (file, exercise)))
            {
                remarks.Add($"{file}: the id '{exercise.Id}' is taken by {own[exercise.Id].File}; it was left out.");
            }
        }

        while (own.Count > 0)
        {
            Catalogue joined = With(catalogue, own.Values.Select(o => o.Exercise));
            ImmutableArray<string> wrong = CatalogueLint.Check(joined);
            if (wrong.IsEmpty)
            {
                return new(joined, remarks.ToImmutable());
            }

            // A sentence begins with the exercise it is about; one that is about none of these was brought about by one.
            string blamed =
                own.Keys.Order(StringComparer.Ordinal)
                    .FirstOrDefault(id => wrong.Any(w => w.StartsWith(id + ":", StringComparison.Ordinal)))
                ?? own.Keys.Order(StringComparer.Ordinal)
                    .FirstOrDefault(id => wrong.Any(w => w.Contains($"'{id}'", StringComparison.Ordinal)))
                ?? own.Keys.Order(StringComparer.Ordinal).Last();
            string why =
                wrong.FirstOrDefault(w => w.StartsWith(blamed + ":", StringComparison.Ordinal))
                ?? wrong.FirstOrDefault(w => w.Contains($"'{blamed}'", StringComparison.Ordinal))
                ?? wrong[0];
            remarks.Add($"{own[blamed].File}: {why} It was left out.");
            own.Remove(blamed);
        }

        return new(catalogue, remarks.ToImmutable());
    }

    /// <summary>
    /// The catalogue with these exercises; where a new one names an easier or a harder one, the edge stands at both ends, so
    /// that nobody has to edit a shipped file to be found from it.
    /// </summary>
    private static Catalogue With(Catalogue catalogue, IEnumerable<Exercise> own)
    {
        var all = catalogue.Exercises.ToDictionary(e => e.Id, StringComparer.Ordinal);
        Exercise[] added = [.. own];
        foreach (Exercise exercise in added)
        {
            all[exercise.Id] = exercise;
        }

        foreach (Exercise exercise in added)
        {
            foreach (string easier in exercise.Regressions.Where(all.ContainsKey))
            {
                Exercise its = all[easier];
                if (!its.Progressions.Contains(exercise.Id) && RaisesByOneAtMost(its, exercise))
                {
                    all[easier] = its with { Progressions = its.Progressions.Add(exercise.Id) };
                }
            }
        }

        return catalogue with
        {
            Exercises = [.. all.Values.OrderBy(e => e.Stage).ThenBy(e => e.Id, StringComparer.Ordinal)],
        };
    }

    private static bool RaisesByOneAtMost(Exercise easier, Exercise harder) =>
        harder.Demand.All(d => d.Value <= easier.Demand.GetValueOrDefault(d.Key) + 1);

    private static string? LessCareful(Exercise own, Exercise shipped)
    {
        foreach (Tissue tissue in Enum.GetValues<Tissue>())
        {
            if (own.Demand.GetValueOrDefault(tissue) < shipped.Demand.GetValueOrDefault(tissue))
            {
                return $"would ask tier {own.Demand.GetValueOrDefault(tissue)} of the {tissue.ToString().ToLowerInvariant()} instead of {shipped.Demand.GetValueOrDefault(tissue)}";
            }

            if (own.RecoveryHours.GetValueOrDefault(tissue) < shipped.RecoveryHours.GetValueOrDefault(tissue))
            {
                return $"would give the {tissue.ToString().ToLowerInvariant()} {own.RecoveryHours.GetValueOrDefault(tissue)} h instead of {shipped.RecoveryHours.GetValueOrDefault(tissue)}";
            }
        }

        if (shipped.Entry.FirstOrDefault(c => c.Kind == CriterionKind.Safety && !Keeps(own, c)) is { } missing)
        {
            return $"would drop or loosen the safety criterion '{missing.Id}'";
        }

        return
            (shipped.IsDepthJump && !own.IsDepthJump)
            || (shipped.SingleLegLanding && !own.SingleLegLanding)
            || (shipped.ExternalLoad is not null && own.ExternalLoad is null)
            || own.ContactsPerRep < shipped.ContactsPerRep
            || (own.DropRangeM?.MaxM ?? 0) > (shipped.DropRangeM?.MaxM ?? 0)
            ? "would no longer count as what it is for the rules of safety"
            : null;
    }

    private static bool Keeps(Exercise own, EntryCriterion shipped) =>
        own.Entry.Any(c =>
            c.Kind == CriterionKind.Safety
            && c.Test == shipped.Test
            && c.Task == shipped.Task
            && c.Sense == shipped.Sense
            && (c.Sense == "at-most" ? c.Value <= shipped.Value : c.Value >= shipped.Value)
            && c.Alternatives.Length <= shipped.Alternatives.Length
        );
}
