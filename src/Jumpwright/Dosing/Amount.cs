using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Dosing;

/// <summary>How many reps, and how many sets the planner may choose from.</summary>
internal sealed record Amount(int SetsMin, int SetsMax, int Reps, Sentence Because)
{
    /// <summary>
    /// The least usual reps for whoever does not own the exercise, is new to jump training, young or coming back; the middle of
    /// the range for the others. Common practice: no trial fixes a number.
    /// </summary>
    internal static Amount Of(
        Exercise exercise,
        Rung rung,
        Ladder ladder,
        Athlete athlete,
        LocalDate day,
        LimitBook limits
    )
    {
        DoseRange usual = exercise.Dose;
        if (ladder.ComingBack is { } back)
        {
            return new Amount(
                usual.SetsMin,
                usual.SetsMin,
                usual.RepsMin,
                $"The least usual dose while coming back ({back.Sentence:open})."
            );
        }

        bool young = athlete.AgeOn(day) is not { } age || age < limits["age-for-depth-jumps"];
        bool fresh = athlete.Level is TrainingLevel.Unknown or TrainingLevel.Beginner;
        bool owned = rung.State == RungState.Owned;
        int setsMax = fresh || young || !owned ? Math.Max(usual.SetsMin, usual.SetsMax - 1) : usual.SetsMax;
        if (owned && !fresh && !young)
        {
            return new Amount(
                usual.SetsMin,
                setsMax,
                (usual.RepsMin + usual.RepsMax) / 2,
                $"Owned, so the middle of the usual {usual.RepsMin} to {usual.RepsMax} reps."
            );
        }

        Sentence why =
            !owned ? Sentence.Of($"not owned yet")
            : young ? Sentence.Of($"under 16 or age unknown")
            : Sentence.Of($"new to jump training, or level unknown");
        return new Amount(
            usual.SetsMin,
            setsMax,
            usual.RepsMin,
            $"The least of the usual {usual.RepsMin} to {usual.RepsMax} reps: {why}."
        );
    }
}
