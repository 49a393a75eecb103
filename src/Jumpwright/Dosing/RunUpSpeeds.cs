using Jumpwright.Athletes;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Dosing;

/// <summary>
/// How fast the run-up: the slowest speed of the athlete's own curve that is expected to lose nothing that counts, never more than
/// 110 % of the fastest measured; nothing where no run-up was timed.
/// </summary>
internal static class RunUpSpeeds
{
    /// <summary>Of that speed, for the exercises that are done easily.</summary>
    private const double EasyShare = 0.75;

    internal static (double SpeedMS, Sentence Because)? For(Exercise exercise, History history, LocalDate day)
    {
        if (
            exercise.RunUpSteps is null
            || exercise.Landing != "floor"
            || exercise.ContactsPerRep == 0
            || !ApproachJumps.Of(history, day).TryGet(out ApproachJumps? jumps, out _)
        )
        {
            return null;
        }

        TakeOffFoot foot = exercise.Limb == "both" ? TakeOffFoot.TwoFeet : TakeOffFoot.OneFoot;
        if (
            jumps.Fastest(foot) is not { } fastest
            || !jumps.Curve(seekNext: false).TryGet(out RunUp? run, out _)
            || (foot == TakeOffFoot.TwoFeet ? run.TwoFeet : run.OneFoot) is not { } curve
        )
        {
            return null;
        }

        double full = Math.Min(curve.GoodFromMS, fastest * Bounds.Share.Value / 100);
        bool easy = exercise.Intent != "maximal";
        double speed = Math.Floor((easy ? EasyShare * full : full) * 10) / 10;
        return speed <= 0
            ? null
            : (
                speed,
                Sentence.Of(
                    $"Run up at {speed:0.0} m/s{(easy ? Sentence.Of($", three quarters of the speed that serves best") : Sentence.Of($""))}: {curve.GoodFromMS:0.0} to {curve.GoodToMS:0.0} m/s lose least in this athlete's own jumps (fastest measured {fastest:0.0} m/s)."
                )
            );
    }
}
