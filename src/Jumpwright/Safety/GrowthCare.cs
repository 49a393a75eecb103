using Jumpwright.Athletes;
using Jumpwright.Athletes.Growth;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Safety;

/// <summary>
/// Fast growth as a prompt for care. It closes nothing: no formula knows what a growing bone bears, and pain has rules of its own.
/// </summary>
public static class GrowthCare
{
    /// <summary>From this age on growth is not asked after, years (common practice).</summary>
    public const int AgeWithout = 18;

    /// <summary>A sentence for the coach's sheet, or null when there is nothing to say.</summary>
    public static Sentence? For(History history, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        if (history.Athlete.AgeOn(day) >= AgeWithout)
        {
            return null;
        }

        LimitBook limits = LimitBook.For(history, day);
        return
            GrowthRate.Of(history.Screens, day, limits.Whole("growth-look-back")) is { } rate
            && rate.CmPerYear > limits["growth-rate-for-care"]
            ? Sentence.Of(
                $"Grows fast: {new Length(rate.CmPerYear / 100):0.0 (cm)} ± {new Length(2 * rate.StandardUncertaintyCmPerYear / 100):0.0 cm} a year (two standard uncertainties) from {rate.From} to {rate.To}. Ask after heels, knees and back, look at landings again, and rather do less."
            )
            : null;
    }
}
