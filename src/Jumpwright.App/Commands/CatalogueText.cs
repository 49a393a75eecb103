using Jumpwright.App.Wording;
using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.App.Commands;

/// <summary>The catalogue as plain text: a heading a stage, a line an exercise.</summary>
internal static class CatalogueText
{
    public static void Write(Catalogue catalogue, TextWriter to)
    {
        to.WriteLine("Demand is written for one contact on one leg, 0 to 3: Achilles, patellar, hip, bone.");
        foreach (IGrouping<Stage, Exercise> stage in catalogue.InTeachingOrder().GroupBy(e => e.Stage))
        {
            to.WriteLine();
            to.WriteLine(Words.Of(stage.Key));
            int width = stage.Max(e => e.Name.Length);
            foreach (Exercise exercise in stage)
            {
                string demand = string.Join(' ', Enum.GetValues<Tissue>().Select(t => Tier(exercise, t)));
                to.WriteLine($"  {exercise.Name.PadRight(width)}  {demand}  {exercise.Purpose}");
            }
        }

        to.WriteLine();
        to.WriteLine(
            $"{catalogue.Exercises.Length} exercises. Ids for tables, criteria, faults, doses and sources: jumpwright catalogue --json"
        );
    }

    private static string Tier(Exercise exercise, Tissue tissue) =>
        exercise.Demand.TryGetValue(tissue, out int tier) ? $"{tier}" : "?";
}
