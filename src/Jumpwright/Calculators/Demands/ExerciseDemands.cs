using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Demands;

/// <summary>How hard an exercise is beside the landing of a vertical jump, and in which tier of patellar tendon load it stands.</summary>
public static class ExerciseDemands
{
    /// <summary>Upper end of the lowest tier of the index.</summary>
    public static Coefficient LowTier { get; } =
        new("patellar-tier-low", 0.33, Unit.One, null, Bibliography.Get("scattone-silva-2024"));

    /// <summary>Lower end of the top tier.</summary>
    public static Coefficient TopTier { get; } =
        new("patellar-tier-top", 0.66, Unit.One, null, Bibliography.Get("scattone-silva-2024"));

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "exercise-demand",
            "How hard an exercise is",
            $"Peak ground force of the exercise / peak of landing from a vertical jump (3.34 body weights in 14 track men, both feet). "
                + $"Patellar tier: 1 up to 0.33, 3 from 0.66, 2 between.",
            ["wallace-2010", "scattone-silva-2024"],
            $"One number does not rank exercises: a slow decline squat tops the patellar list and ground force would put it last, an ankle hop is low by ground force and high for the Achilles. Technique can change a force by a quarter. Ground force is not tissue load; a landing on one leg puts all of it on one."
        );

    /// <summary>The comparison; refused when nothing is asked and outside of what can be meant.</summary>
    public static Outcome<Demand> Of(DemandInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.PeakBw is null && input.PatellarIndex is null)
        {
            return Refusal.Of($"Give a peak ground force in body weights, a patellar index from 0 to 1, or both.");
        }

        Refusal? bad = Input.First(
            Input.Outside($"The peak of a jump's landing", input.JumpLandingBw, 1, 15, "body weights"),
            input.PeakBw is { } p ? Input.Outside($"The peak", p, 0.5, 15, "body weights") : null,
            input.PatellarIndex is { } i ? Input.Outside($"The index", i, 0, 1, "") : null
        );
        if (bad is not null)
        {
            return bad;
        }

        var values = ImmutableArray.CreateBuilder<Measure>();
        var words = new List<Sentence>();
        if (input.PeakBw is { } peak)
        {
            double ratio = peak / input.JumpLandingBw;

            // Group means scatter by about a quarter between people and techniques.
            values.Add(new("relative_ground_force", ratio, Unit.One, 0.25 * ratio, "ratio of group means"));
            words.Add(
                $"It lands with {ratio:0.00} times the force of a vertical jump's landing, give or take a quarter."
            );
        }

        if (input.PatellarIndex is { } index)
        {
            int tier = TierOf(index);
            values.Add(new("patellar_tier", tier, new Unit("tier"), 0, "index cut at 0.33 and 0.66"));
            words.Add($"For the patellar tendon it stands in tier {tier} of 3.");
        }

        return new Demand(Basis, values.ToImmutable(), Sentence.Join(" ", words))
        {
            NextTest = $"Three of the athlete's own landings on a plate say more than a group's mean.",
        };
    }

    /// <summary>1, 2 or 3.</summary>
    public static int TierOf(double patellarIndex) =>
        patellarIndex >= TopTier.Value ? 3
        : patellarIndex <= LowTier.Value ? 1
        : 2;
}
