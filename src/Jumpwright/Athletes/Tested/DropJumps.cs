using System.Collections.Immutable;
using Jumpwright.Calculators.Curves;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes.Tested;

/// <summary>Drop jumps of an athlete's history as the drop curve takes them.</summary>
public static class DropJumps
{
    /// <summary>Single trusted drop jumps of the latest weeks on both feet, one device and method, from boxes as written.</summary>
    public static ImmutableArray<DropJumpTrial> Of(History history, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        var jumps = history
            .Trials.Where(t =>
                TestWindow.Holds(t.Date, day)
                && t.Trial.Task == JumpTask.DropJump
                && (t.Labels.Limb ?? Limb.Both) == Limb.Both
                && t.Labels.DropHeightM is > 0.04 and < 1.2
            )
            .Select(t =>
                (
                    Trial: t,
                    Index: t.Trial.FindTrusted(MeasureNames.ReactiveStrengthIndex),
                    Contact: t.Trial.FindTrusted(MeasureNames.ContactTime)
                )
            )
            .Where(t => t.Index is { Value: > 0.05 and < 6 } && t.Contact is { Value: > 0.08 and < 1 })
            .GroupBy(t => (t.Trial.Device, t.Index!.Method))
            .OrderByDescending(g => g.Max(t => t.Trial.Date))
            .ThenByDescending(g => g.Count())
            .FirstOrDefault();
        return jumps is null
            ? []
            :
            [
                .. jumps.Select(t => new DropJumpTrial(
                    t.Trial.Labels.DropHeightM!.Value,
                    t.Index!.Value,
                    t.Contact!.Value
                )),
            ];
    }
}
