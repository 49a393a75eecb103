using System.Globalization;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>What an exercise asks, in words with its numbers.</summary>
internal static class DemandWords
{
    /// <summary>The numbers behind the tiers, each with where it comes from.</summary>
    public static IEnumerable<string> Numbers(Exercise exercise) =>
        exercise.DemandValues.Select(v =>
        {
            string number = $"{What(v.Tissue)} {ItemWords.Number(v.Value)}";
            string said = v.Unit == DemandValue.BodyWeights ? T["demand.body-weights", number] : number;
            string from = v.AtDropM is { } drop ? T["demand.from", said, UnitWords.Spoken(drop, "m")] : said;
            return T[v.Estimated ? "demand.estimated" : "demand.measured", from, Origins.Short(v.SourceId)];
        });

    /// <summary>Peak ground force on one leg of somebody of that mass.</summary>
    public static string GroundForceFor(Exercise exercise, double bodyMassKg)
    {
        GroundForce force = GroundForce.Of(exercise, bodyMassKg);
        string least = Newtons(force.LeastN);
        string range =
            force.MostN is not { } most ? T["demand.above", least]
            : force.LeastN <= 0 ? T["demand.up-to", Newtons(most)]
            : T["demand.range", least, Newtons(most)];
        return T[
            force.BodyWeights is null ? "demand.force.tier" : "demand.force.quarter",
            range,
            MeasureWords.Mass(bodyMassKg)
        ];
    }

    private static string What(Tissue tissue) => TextBook.Find($"demand.{tissue}") ?? Spoken.Of(tissue);

    /// <summary>To two digits: more would look surer than it is.</summary>
    private static string Newtons(double n)
    {
        double step = n < 1000 ? 50 : 100;
        return (Math.Round(n / step) * step).ToString("0", CultureInfo.InvariantCulture);
    }
}
