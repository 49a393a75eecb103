using Jumpwright.Statistics;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Stretch–shortening: whether the dip before the jump brings anything.</summary>
internal static class FindStretchShortening
{
    internal static Finding In(Known known, SquatJumpShare? share)
    {
        if (share is null)
        {
            return SquatJumpShare.Untested(known, Quality.StretchShortening, ProfileLimits.SquatJumpShareHigh);
        }

        if (!known.IsFresh(share.SquatJump.Date))
        {
            return Verdicts.Stale(
                Quality.StretchShortening,
                known,
                QualityTest.SquatAndCountermovementJumps,
                SquatJumpShare.Test,
                ProfileLimits.SquatJumpShareHigh,
                share.SquatJump
            );
        }

        return Verdicts.From(
            Quality.StretchShortening,
            Likelihood.Above(share.Pct, share.StandardUncertaintyPct, ProfileLimits.SquatJumpShareHigh.Value),
            guardsHealth: false,
            $"{share.Sentence} Above {ProfileLimits.SquatJumpShareHigh.Value:0} % the dip brings little.",
            QualityTest.SquatAndCountermovementJumps,
            SquatJumpShare.Test,
            ProfileLimits.SquatJumpShareHigh,
            share.SquatJump,
            share.Countermovement
        );
    }
}
