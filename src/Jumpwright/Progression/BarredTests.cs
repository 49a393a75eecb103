using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Progression;

/// <summary>
/// A test is an exercise under every limit: what a profile would test next is not said where a ruling of the day forbids the jump that
/// the test is made of. What is known already stays.
/// </summary>
public static class BarredTests
{
    /// <summary>The jumps that settle a quality, of the catalogue's own; where one of them is forbidden, the test waits.</summary>
    private static readonly ImmutableDictionary<Quality, string> Jumps = ImmutableDictionary.CreateRange<
        Quality,
        string
    >([
        new(Quality.Landing, "low-drop-landing"),
        new(Quality.AnkleStiffness, "rebound-hops"),
        new(Quality.Push, "squat-jump"),
        new(Quality.StretchShortening, "countermovement-jump"),
        new(Quality.ReactiveStrength, "low-drop-jump"),
        new(Quality.SingleLeg, "single-leg-forward-hop"),
        new(Quality.RunUp, "approach-jump-two-feet"),
    ]);

    /// <summary>The profile with why a test waits in the place of the test.</summary>
    public static Profile In(Profile profile, ImmutableArray<Ruling> rulings, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(catalogue);
        NamedTest? named = profile.Test;
        var findings = ImmutableArray.CreateBuilder<Finding>(profile.Findings.Length);
        foreach (Finding finding in profile.Findings)
        {
            if (finding.NextTest is not null && Bars(finding.Quality, rulings, catalogue) is { } ruling)
            {
                findings.Add(finding with { NextTest = CriterionJudge.Waits(ruling) });
                named =
                    named?.Quality == finding.Quality
                        ? named with
                        {
                            Said = $"Its test waits: it is not for now.",
                        }
                        : named;
            }
            else
            {
                findings.Add(finding);
            }
        }

        return profile with
        {
            Findings = findings.MoveToImmutable(),
            Test = named,
        };
    }

    private static Ruling? Bars(Quality quality, ImmutableArray<Ruling> rulings, Catalogue catalogue) =>
        catalogue.Find(Jumps[quality]) is { } jump ? rulings.FirstOrDefault(r => r.Effect.Forbids(jump.Facts)) : null;
}
