using System.Collections.Immutable;
using Jumpwright.Calculators.Curves;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes.Tested;

/// <summary>Squat jumps with and without load, and the push-off distance by tape, as the force–velocity profile takes them.</summary>
public static class SquatJumpLoads
{
    /// <summary>Test that holds the push-off distance (screens.csv).</summary>
    public const string PushOffTest = "push-off-distance";

    /// <summary>A squat jump that dips more than this begins with a countermovement (contracts §2).</summary>
    private const double MostDipPct = 10;

    /// <summary>The profile; refused with what is missing.</summary>
    public static Outcome<ForceVelocityProfile> ProfileOf(History history, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        var jumps = history
            .Trials.Where(t =>
                TestWindow.Holds(t.Date, day)
                && t.Trial.Task == JumpTask.SquatJump
                && (t.Labels.Limb ?? Limb.Both) == Limb.Both
                && t.Labels.ExternalLoadKg is null or (>= 0 and <= 300)
                && t.Trial.FindTrusted(MeasureNames.UnwantedDip) is null or { Value: <= MostDipPct }
            )
            .Select(t =>
                (
                    Trial: t,
                    Height: t.Trial.FindTrusted(MeasureNames.JumpHeight)
                        ?? t.Trial.FindTrusted(MeasureNames.JumpHeightFlightTime)
                )
            )
            .Where(t => t.Height is { Value: > 0.02 and < 1 })
            .GroupBy(t => (t.Trial.Device, t.Height!.Name, t.Height.Method))
            .OrderByDescending(g => g.Select(t => t.Trial.Labels.ExternalLoadKg ?? 0).Distinct().Count())
            .ThenByDescending(g => g.Max(t => t.Trial.Date))
            .FirstOrDefault();
        if (jumps is null || jumps.All(t => t.Trial.Labels.ExternalLoadKg is null or 0))
        {
            return Refusal.Of($"No loaded squat jump was measured: a profile needs three loads.") with
            {
                Brief = $"force and velocity (squat jumps with three loads)",
            };
        }

        double[] pushOffs =
        [
            .. history
                .Screens.Where(s => s.Test == PushOffTest && s.Unit is "m" or "" && s.Date <= day)
                .GroupBy(s => s.Date)
                .OrderByDescending(g => g.Key)
                .FirstOrDefault()
                ?.Select(s => s.Value)
                ?? [],
        ];
        if (pushOffs.Length == 0)
        {
            return Refusal.Of(
                $"The push-off distance was not measured: leg length to the toes, foot pointed, less the start height, by tape (push-off-distance)."
            );
        }

        MeasuredTrial last = jumps.OrderBy(t => t.Trial.Date).Last().Trial;
        return (last.Labels.BodyMassKg ?? history.Athlete.BodyMassKg) is not { } mass
            ? Refusal.Of($"Body mass is not known: weigh the athlete.")
            : ForceVelocityProfiles.Of(
                new ForceVelocityInput(
                    mass,
                    pushOffs.Average(),
                    [.. jumps.Select(t => new LoadedJump(t.Trial.Labels.ExternalLoadKg ?? 0, t.Height!.Value))],
                    FieldTest.Find(PushOffTest)!.StandardUncertainty / Math.Sqrt(pushOffs.Length)
                )
            );
    }
}
