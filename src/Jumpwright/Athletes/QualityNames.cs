using Jumpwright.Quantities;

namespace Jumpwright.Athletes;

/// <summary>A quality's name within a sentence: one for each, wherever it stands.</summary>
public static class QualityNames
{
    /// <summary>For example <c>ankle stiffness</c>.</summary>
    public static Sentence Of(Quality quality) =>
        quality switch
        {
            Quality.Landing => $"landing",
            Quality.AnkleStiffness => $"ankle stiffness",
            Quality.Push => $"the push",
            Quality.StretchShortening => $"use of the dip",
            Quality.ReactiveStrength => $"reactive strength",
            Quality.SingleLeg => $"single-leg ability",
            Quality.RunUp => $"use of the run-up",
            _ => $"{quality}",
        };
}
