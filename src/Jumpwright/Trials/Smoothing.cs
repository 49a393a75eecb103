using System.Collections.Immutable;
using System.Numerics;

namespace Jumpwright.Trials;

/// <summary>
/// A force that was smoothed before it was written. Noise shows it: a plate's is as loud between neighbours as between samples some
/// milliseconds apart (real recordings: 0.5 to 1 times as much variance), a smoothed one's is not. Smoothed edges meet zero farther out
/// than the force did, and peaks are cut; impulses stay. The two heights then agree with each other, and both are too low.
/// </summary>
internal static class Smoothing
{
    /// <summary>What rests on edges or peaks.</summary>
    private static readonly ImmutableArray<string> Smeared =
    [
        MeasureNames.JumpHeight,
        MeasureNames.JumpHeightFlightTime,
        MeasureNames.TakeOffVelocity,
        MeasureNames.FlightTime,
        MeasureNames.ContactTime,
        MeasureNames.DropHeight,
        MeasureNames.ReactiveStrengthIndex,
        MeasureNames.ReactiveStrengthIndexModified,
        MeasureNames.MeanPropulsivePower,
        MeasureNames.PeakLandingForce,
        MeasureNames.PeakLoadingRate,
        MeasureNames.VerticalStiffness,
        MeasureNames.VerticalStiffnessTimeModel,
    ];

    /// <summary>Louder neighbours are no smoothed ones, N: a quick look.</summary>
    private const double LoudN = 0.5;

    /// <summary>Variance between neighbours against that between samples farther apart, below which nothing real is (house rule).</summary>
    private const double LeastPart = 0.1;

    /// <summary>Of an empty plate no body moves the samples farther apart, so that less says it, if there are so many (house rules).</summary>
    private const double LeastEmptyPart = 0.25;

    private const int FewestEmpty = 100;

    /// <summary>Smoothing above this moves an edge by less than it is doubted anyway, Hz (house rule, held by simulated jumps through filters).</summary>
    private const double HarmlessHz = 125;

    /// <summary>Slower than this it may be the body, Hz; and how long a stretch is looked at, s.</summary>
    private const double SlowestHz = 25;

    private const double LookedAtS = 1;

    private const double ShortestS = 0.12;

    /// <summary>Trials of a smoothed recording with what is smeared named; others as they are.</summary>
    public static ImmutableArray<Trial> Named(Plate plate, ImmutableArray<Trial> trials) =>
        CutOffHz(plate) is { } hz ? [.. trials.Select(trial => trial.Doubting(Cautions.Smoothed(hz), Smeared))]
        : SwingBack.Newtons(plate) is > 0 and var newtons
            ? [.. trials.Select(trial => trial.Doubting(Cautions.SwingsBack(newtons), Smeared))]
        : trials;

    /// <summary>Above which frequency about nothing is left, Hz; null where it is not smoothed, or harmlessly.</summary>
    private static double? CutOffHz(Plate plate) =>
        plate.Levels.NoiseN > LoudN
            ? null
            : CutOffHz(Standing(plate), plate.RateHz, LeastPart, 0)
                ?? CutOffHz(LongestEmpty(plate), plate.RateHz, LeastEmptyPart, FewestEmpty);

    private static double? CutOffHz(ReadOnlySpan<double> quiet, double rateHz, double leastPart, int fewest)
    {
        int longest = (int)(rateHz / (2 * SlowestHz));
        if (quiet.Length < Math.Max(Math.Max(ShortestS * rateHz, 6 * longest), fewest))
        {
            return null;
        }

        double neighbours = Apart(quiet, 1);
        double most = neighbours;
        for (int lag = 2; lag <= longest; lag *= 2)
        {
            most = Math.Max(most, Apart(quiet, lag));
        }

        if (!(neighbours < leastPart * most))
        {
            return null;
        }

        int half = 1;
        while (Apart(quiet, half) < most / 2)
        {
            half *= 2;
        }

        double hz = rateHz / (2 * half);
        return hz <= HarmlessHz ? hz : null;
    }

    /// <summary>Somebody who stands still; nothing where nobody does.</summary>
    private static ReadOnlySpan<double> Standing(Plate plate)
    {
        int most = (int)(LookedAtS * plate.RateHz);
        foreach ((int first, int last) in plate.Stays)
        {
            foreach (QuietStanding still in plate.Still(first, last))
            {
                return plate.ForceN.Slice(still.Samples.From, Math.Min(still.Samples.Length, most));
            }
        }

        return [];
    }

    /// <summary>The middle of the longest time in which nobody is on the plate: one that rings does so at its beginning.</summary>
    private static ReadOnlySpan<double> LongestEmpty(Plate plate)
    {
        var longest = new Stretch(0, 0);
        int left = 0;
        foreach (Contact contact in plate.Contacts)
        {
            longest = Longer(longest, new Stretch(left, contact.Samples.From));
            left = contact.Samples.To;
        }

        longest = Longer(longest, new Stretch(left, plate.ForceN.Length));
        int quarter = longest.Length / 4;
        int most = (int)(LookedAtS * plate.RateHz);
        return plate.ForceN.Slice(longest.From + quarter, Math.Min(longest.Length - (2 * quarter), most));
    }

    private static Stretch Longer(Stretch one, Stretch other) => other.Length > one.Length ? other : one;

    /// <summary>Variance of a sample against the line through two neighbours some samples off, N², as white noise alone would have it.</summary>
    private static double Apart(ReadOnlySpan<double> forceN, int lag)
    {
        int width = Vector<double>.Count;
        int count = forceN.Length - (2 * lag);
        Vector<double> sums = Vector<double>.Zero;
        Vector<double> squareSums = Vector<double>.Zero;
        int i = 0;
        for (; i + width <= count; i += width)
        {
            var middle = new Vector<double>(forceN[(i + lag)..]);
            Vector<double> off =
                new Vector<double>(forceN[i..]) - middle - middle + new Vector<double>(forceN[(i + (2 * lag))..]);
            sums += off;
            squareSums += off * off;
        }

        double sum = Vector.Sum(sums);
        double squares = Vector.Sum(squareSums);
        for (; i < count; i++)
        {
            double off = forceN[i] - (2 * forceN[i + lag]) + forceN[i + (2 * lag)];
            sum += off;
            squares += off * off;
        }

        double mean = sum / count;
        return ((squares / count) - (mean * mean)) / 6;
    }
}
