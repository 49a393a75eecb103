using Jumpwright.Athletes;
using Jumpwright.Calculators.Boxes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using Jumpwright.Trials;

namespace Jumpwright.Dosing;

/// <summary>
/// How high a box to land on. A box's height is not the jump's: tucking or a deep landing fakes it. So the ceiling is the box that
/// can be landed on no deeper than a half squat, from the measured rise and the fall into a half squat by the link model, less twice the doubt of both and a hand's clearance; what is
/// proposed lies a step lower, and an exercise that is not yet owned gets the lowest of its range.
/// </summary>
internal static class BoxHeights
{
    internal static (double HeightM, Sentence Because) For(
        Exercise exercise,
        Rung rung,
        Profile profile,
        Athlete athlete,
        LimitBook limits
    )
    {
        HeightRange range = exercise.BoxRangeM!.Value;
        HeightToSet lowest = new(range.MinM);
        if (rung.State != RungState.Owned)
        {
            return (range.MinM, $"Box of {lowest}, the lowest of its range: it is not owned yet.");
        }

        if (exercise.Limb != "both" || exercise.Start != "floor" || exercise.Intent != "maximal")
        {
            return (
                range.MinM,
                $"Box of {lowest}, the lowest of its range: the standing jump says nothing of this one."
            );
        }

        if (StandingJump.Of(profile.Current) is not { } jump || athlete.StatureM is not { } stature)
        {
            return (
                range.MinM,
                $"Box of {lowest}, the lowest of its range: the standing jump or the stature is not known."
            );
        }

        double rise = jump.Measure.In(Unit.Metre);
        double doubt = jump.Measure.StandardUncertainty;
        (double fall, double fallDoubt) = BoxLandings.HalfSquatFall(stature);
        double both = Math.Sqrt((doubt * doubt) + (fallDoubt * fallDoubt));
        double ceiling = rise + fall - (2 * both) - limits["box-clearance"];
        double proposed = Math.Round(Math.Floor((ceiling - limits["box-step"] + 1e-9) / 0.05) * 0.05, 2);
        double height = Math.Clamp(proposed, range.MinM, range.MaxM);
        return height <= range.MinM
            ? (
                range.MinM,
                Sentence.Of(
                    $"Box of {lowest}, the lowest of its range: a jump of {new Length(rise):0.0 (cm)} ± {new Length(doubt):0.0 cm} allows no higher."
                )
            )
            : (
                height,
                Sentence.Of(
                    $"Box of {new HeightToSet(height)}: a jump of {new Length(rise):0.0 (cm)} ± {new Length(doubt):0.0 cm} reaches {new Length(ceiling):0 cm} in a half squat; a step lower is enough."
                )
            );
    }
}
