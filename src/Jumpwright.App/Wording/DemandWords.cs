using System.Globalization;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.App.Wording;

/// <summary>What an exercise asks, in words with its numbers.</summary>
internal static class DemandWords
{
    /// <summary>The numbers behind the tiers, each with where it comes from.</summary>
    public static IEnumerable<string> Numbers(Exercise exercise) =>
        exercise.DemandValues.Select(v =>
            string.Create(
                CultureInfo.InvariantCulture,
                $"{What(v.Tissue)} {v.Value:0.##}{(v.Unit == DemandValue.BodyWeights ? " body weights" : "")}"
            )
            + (v.AtDropM is { } drop ? " from " + UnitWords.Value(drop, "m") : "")
            + (v.Estimated ? $" (estimated, {v.SourceId})" : $" (measured, {v.SourceId})")
        );

    /// <summary>Peak ground force on one leg of somebody of that mass.</summary>
    public static string GroundForceFor(Exercise exercise, double bodyMassKg)
    {
        GroundForce force = GroundForce.Of(exercise, bodyMassKg);
        string least = Newtons(force.LeastN);
        string range =
            force.MostN is not { } most ? $"above {least}"
            : force.LeastN <= 0 ? $"up to {Newtons(most)}"
            : $"{least} to {Newtons(most)}";
        return $"{range} N on each leg at {MeasureWords.Mass(bodyMassKg)}"
            + (force.BodyWeights is null ? " (bounds of the tier)" : " (± a quarter: technique moves it by so much)");
    }

    private static string What(Tissue tissue) =>
        tissue switch
        {
            Tissue.Achilles => "Achilles force",
            Tissue.Patellar => "patellar loading index",
            Tissue.Bone => "ground force on one leg",
            _ => Words.Of(tissue),
        };

    /// <summary>To two digits: more would look surer than it is.</summary>
    private static string Newtons(double n)
    {
        double step = n < 1000 ? 50 : 100;
        return (Math.Round(n / step) * step).ToString("0", CultureInfo.InvariantCulture);
    }
}
