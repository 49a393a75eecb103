using System.Collections.Immutable;

namespace Jumpwright.Exercises;

/// <summary>
/// The order in which a stage's exercises are taught, which is the order they are shown in: both legs before one, free before loaded, what
/// an exercise builds on before the exercise (the catalogue's own progressions and regressions: single before continuous among them), then
/// from the lower height and the smaller demand up.
/// </summary>
public static class TeachingOrder
{
    /// <summary>All exercises, stage by stage.</summary>
    public static ImmutableArray<Exercise> InTeachingOrder(this Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        return [.. catalogue.Exercises.GroupBy(e => e.Stage).OrderBy(s => s.Key).SelectMany(s => OfOneStage([.. s]))];
    }

    /// <summary>Where each exercise stands in it, by id, from 0.</summary>
    public static Dictionary<string, int> TeachingPlaces(this Catalogue catalogue) =>
        catalogue.InTeachingOrder().Select((e, n) => KeyValuePair.Create(e.Id, n)).ToDictionary(StringComparer.Ordinal);

    private static IEnumerable<Exercise> OfOneStage(Exercise[] stage)
    {
        ILookup<string, string> before = stage
            .SelectMany(e => e.Regressions.Select(r => (Id: e.Id, Before: r)))
            .Concat(stage.SelectMany(e => e.Progressions.Select(p => (Id: p, Before: e.Id))))
            .ToLookup(link => link.Id, link => link.Before, StringComparer.Ordinal);
        HashSet<string> here = [.. stage.Select(e => e.Id)];
        var steps = new Dictionary<string, int>(StringComparer.Ordinal);

        // A squad's own exercise may lead back to itself: whatever is on its way to itself counts as a first step.
        int Steps(string id)
        {
            if (!steps.TryGetValue(id, out int known))
            {
                steps[id] = 0;
                known = before[id].Where(here.Contains).Select(b => Steps(b) + 1).DefaultIfEmpty(0).Max();
                steps[id] = known;
            }

            return known;
        }

        return stage
            .OrderBy(e => e.Limb != "both")
            .ThenBy(e =>
                e.ExternalLoad switch
                {
                    null => 0,
                    "band" => 1,
                    _ => 2,
                }
            )
            .ThenBy(e => Steps(e.Id))
            .ThenBy(e => e.DropRangeM?.MinM ?? e.BoxRangeM?.MinM ?? 0)
            .ThenBy(e => e.Demand.Values.Sum())
            .ThenBy(e => e.Id, StringComparer.Ordinal);
    }
}
