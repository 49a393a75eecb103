using Jumpwright.Statistics;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Push: whether the squat jump lags behind the countermovement jump.</summary>
internal static class FindPush
{
    internal static Finding In(Known known, SquatJumpShare? share)
    {
        if (share is null)
        {
            return SquatJumpShare.Untested(known, Quality.Push, ProfileLimits.SquatJumpShareLow);
        }

        if (!known.IsFresh(share.SquatJump.Date))
        {
            return Verdicts.Stale(
                Quality.Push,
                known,
                QualityTest.SquatAndCountermovementJumps,
                SquatJumpShare.Test,
                ProfileLimits.SquatJumpShareLow,
                share.SquatJump
            );
        }

        return Verdicts.From(
            Quality.Push,
            Likelihood.Below(share.Pct, share.StandardUncertaintyPct, ProfileLimits.SquatJumpShareLow.Value),
            guardsHealth: false,
            $"{share.Sentence} Below {ProfileLimits.SquatJumpShareLow.Value:0} % the push from stillness lags.",
            QualityTest.SquatAndCountermovementJumps,
            SquatJumpShare.Test,
            ProfileLimits.SquatJumpShareLow,
            share.SquatJump,
            share.Countermovement
        );
    }
}
