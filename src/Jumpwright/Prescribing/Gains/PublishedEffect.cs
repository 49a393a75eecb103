using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Gains;

/// <summary>What training of one kind brought in an outcome, as published.</summary>
/// <param name="Id">Kebab-case id.</param>
/// <param name="Quality">Quality that such training is meant to move.</param>
/// <param name="Outcome">Outcome that was measured.</param>
/// <param name="InPercent">True: % of the outcome; false: standard deviations between athletes.</param>
/// <param name="Value">Mean effect.</param>
/// <param name="StandardUncertainty">One standard deviation of that mean effect, same unit.</param>
/// <param name="Source">Where it was read.</param>
/// <param name="Training">What was trained, in whom, how long.</param>
public sealed record PublishedEffect(
    string Id,
    Quality Quality,
    ChosenOutcome Outcome,
    bool InPercent,
    double Value,
    double StandardUncertainty,
    Source Source,
    string Training
)
{
    /// <summary>The exercise whose training it was, where it was one; null for training of many kinds.</summary>
    public string? ExerciseId { get; init; }
}
