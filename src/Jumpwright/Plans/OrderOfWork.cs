using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>
/// The order inside a session: low work first, and in it the easiest; what must be done fresh (shock, run-ups, anything of high intensity)
/// begins while the session is young; the rest when it fits (common practice).
/// </summary>
public static class OrderOfWork
{
    /// <summary>Landing and low ankle work that needs no recovery: what a session begins with.</summary>
    public static bool IsLow(Exercise exercise) =>
        exercise.Stage is Stage.Landing or Stage.AnkleStiffness
        && exercise.MostRecoveryHours == 0
        && exercise.TopTier < 3;

    /// <summary>0 low work, 1 what must be done fresh (shock, run-ups, anything of high intensity), 2 the rest.</summary>
    public static int PhaseOf(Exercise exercise, double? dropHeightM)
    {
        if (IsLow(exercise) && !exercise.IsHighIntensityAt(dropHeightM))
        {
            return 0;
        }

        return exercise.Stage is Stage.Shock or Stage.RunUp || exercise.IsHighIntensityAt(dropHeightM) ? 1 : 2;
    }

    /// <summary>
    /// The order inside the low work: 0 what needs nothing before it (the snap-down, hops in place), 1 the rest of it, drops from a low box among it; 2 all other
    /// work (common practice: a landing is shown on the floor before height or distance is added to it).
    /// </summary>
    public static int RankOf(Exercise exercise, double? dropHeightM) =>
        PhaseOf(exercise, dropHeightM) != 0 ? 2
        : exercise.Entry.IsEmpty ? 0
        : 1;

    /// <summary>True when the exercise asks the top tier of some tissue.</summary>
    public static bool IsTopTier(Exercise exercise) => exercise.TopTier >= 3;

    /// <summary>Hours of recovery that the exercise asks for a tissue; above 0 it counts as demanding for it.</summary>
    public static int RecoveryHoursOf(Exercise exercise, Tissue tissue) =>
        exercise.RecoveryHours.GetValueOrDefault(tissue);
}
