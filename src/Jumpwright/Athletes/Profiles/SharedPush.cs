using Jumpwright.Recordings;
using Jumpwright.Statistics;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>How two plates share the push of a countermovement jump off both legs, as long as that speaks.</summary>
/// <param name="Evidence">Asymmetry of the propulsive impulse, %; positive: the left leg pushes more.</param>
/// <param name="OffLeft">Probability that the right leg pushes more by more than is wished (0 to 1).</param>
/// <param name="OffRight">The same of the left leg.</param>
internal sealed record SharedPush(Evidence Evidence, double OffLeft, double OffRight)
{
    /// <summary>The freshest; null where none was measured, or too long ago.</summary>
    internal static SharedPush? In(Known known)
    {
        Evidence? push = known.Find(MeasureNames.AsymmetryPropulsiveImpulse, JumpTask.CountermovementJump);
        if (push is null || !known.IsFresh(push.Date))
        {
            return null;
        }

        double limit = ProfileLimits.ImpulseAsymmetry.Value;
        double value = push.Measure.Value;
        double doubt = push.Measure.StandardUncertainty;
        return new(push, Likelihood.Below(value, doubt, -limit), Likelihood.Above(value, doubt, limit));
    }
}
