using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Progression;

/// <summary>One reason for which an exercise or a test is closed on a day.</summary>
/// <param name="By">What closes it.</param>
/// <param name="Because">The sentence for the practitioner.</param>
public sealed record Closing(ClosedBy By, Sentence Because)
{
    /// <summary>The ruling; null where none closes it.</summary>
    public Ruling? Ruling { get; init; }

    /// <summary>The exercise that is closed; null where nobody knows it, or for a test without one.</summary>
    public SaidExercise? Exercise { get; init; }

    /// <summary>What the ladder says would lead to it, or that this waits too; null where it is not the ladder.</summary>
    public Sentence? Step { get; init; }

    /// <summary>The reason in a few words.</summary>
    public required Sentence Brief { get; init; }

    /// <summary>What stands in the place of a test that is closed.</summary>
    public Sentence InPlaceOfTest =>
        this switch
        {
            { Step: { } waits } when CriterionJudge.IsWaiting(waits) => waits,
            { Step: { } step, Exercise: { } exercise } =>
                $"closed for now: {exercise:small} is closed on the ladder; first {step:open}",
            { By: ClosedBy.Kit } => $"closed for now: {Because:open}",
            _ => CriterionJudge.Waits(Because, Ruling),
        };
}
