using System.Collections.Immutable;
using Jumpwright.Calculators.Landings;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes.Tested;

/// <summary>Measured drop landings on both feet as the landing model takes them: the real fall, never the box.</summary>
public static class Landings
{
    /// <summary>Single trusted landings of the latest weeks, one device.</summary>
    public static ImmutableArray<MeasuredLanding> Of(History history, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        return
        [
            .. history
                .Trials.Where(t =>
                    TestWindow.Holds(t.Date, day)
                    && t.Trial.Task == JumpTask.DropLanding
                    && (t.Labels.Limb ?? Limb.Both) == Limb.Both
                )
                .Select(t =>
                    (
                        t.Device,
                        t.Date,
                        Fall: t.Trial.FindTrusted(MeasureNames.DropHeight),
                        Peak: t.Trial.FindTrusted(MeasureNames.PeakLandingForce),
                        Rate: t.Trial.FindTrusted(MeasureNames.PeakLoadingRate)
                    )
                )
                .Where(t => t.Fall is { Value: > 0.03 and < 1.2 } && t.Peak is { Value: > 0 })
                .GroupBy(t => t.Device)
                .OrderByDescending(g => g.Max(t => t.Date))
                .FirstOrDefault()
                ?.Select(t => new MeasuredLanding(t.Fall!.Value, t.Peak!.Value, t.Rate?.Value))
                ?? [],
        ];
    }
}
