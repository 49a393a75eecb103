namespace Jumpwright.Trials;

/// <summary>
/// Who lands with a foot beside the plate stands there at a part of the weight: the stand before the jump weighs, that one does not,
/// and the landing shows but a part of what the body takes.
/// </summary>
internal static class LandedBeside
{
    /// <summary>A stand below this part of the one before the flight shows not the whole athlete: no drift and no sway takes as much (house rule).</summary>
    private const double WholePart = 0.9;

    /// <summary>The first of a landing and the last before a take-off is no standing, s.</summary>
    private const double MovingS = 0.1;

    /// <summary>Takes out of a stay's still stretches, in order of time, those that weigh but a part of an earlier one.</summary>
    public static void TakeOut(List<QuietStanding> still)
    {
        double most = 0;
        for (int k = 0; k < still.Count; k++)
        {
            if (still[k].MeanN < WholePart * most)
            {
                still.RemoveAt(k--);
            }
            else
            {
                most = Math.Max(most, still[k].MeanN);
            }
        }
    }

    /// <summary>What a landing stands on the plate with, N, where that is but a part of the weight; null where it is all of it, or nobody stands.</summary>
    /// <param name="plate">The recording.</param>
    /// <param name="landing">From touch-down to the next movement.</param>
    /// <param name="weightN">The weight, of another stand, N.</param>
    public static double? StandsWithN(Plate plate, Stretch landing, double weightN)
    {
        int moving = (int)(MovingS * plate.RateHz);
        var within = new Stretch(landing.From + moving, landing.To - moving);
        if (within.Length <= 0)
        {
            return null;
        }

        // Round the weight first: whoever stands whole at any time of it landed whole.
        var found = new List<QuietStanding>();
        foreach (double roughN in (ReadOnlySpan<double>)[weightN, weightN / 2])
        {
            QuietStanding.Find(plate.ForceN, plate.RateHz, within, roughN, plate.Levels.NoiseN, found);
            if (found.Count > 0)
            {
                double most = found.Max(stand => stand.MeanN);
                return most < WholePart * weightN ? most : null;
            }
        }

        return null;
    }
}
