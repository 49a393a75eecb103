using System.Collections.Immutable;
using Jumpwright.Calculators.Curves;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes.Tested;

/// <summary>
/// Loaded jumps of the latest weeks on both feet, one device and one method of height, with the loads as written. The jumps of
/// one task only: a countermovement jump without a bar has other arms and is no point of this curve.
/// </summary>
/// <param name="Heights">Load, kg, and height, m, of each.</param>
/// <param name="Speeds">Load and take-off velocity, m/s: measured, or √(2 g h) where only the flight was timed.</param>
/// <param name="Powers">Load and peak power of the push, W; empty without a force plate.</param>
/// <param name="BodyMassKg">Body mass, kg.</param>
/// <param name="Method">How the heights were got.</param>
/// <param name="Device">What measured them.</param>
/// <param name="Latest">Day of the last one.</param>
public sealed record LoadedJumps(
    ImmutableArray<LoadedJump> Heights,
    ImmutableArray<LoadedJump> Speeds,
    ImmutableArray<LoadedJump> Powers,
    double BodyMassKg,
    string Method,
    Device Device,
    LocalDate Latest
)
{
    /// <summary>The heaviest load jumped with, kg.</summary>
    public double HeaviestKg => Heights.Max(h => h.LoadKg);

    /// <summary>What was jumped; null when no loaded jump with a known load and body mass is among the trials.</summary>
    public static LoadedJumps? Of(History history, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        var jumps = history
            .Trials.Where(t =>
                TestWindow.Holds(t.Date, day)
                && t.Trial.Task == JumpTask.LoadedJump
                && (t.Labels.Limb ?? Limb.Both) == Limb.Both
                && t.Labels.ExternalLoadKg is >= 0 and <= 300
            )
            .Select(t => (Trial: t, Height: HeightOf(t.Trial)))
            .Where(t => t.Height is { Value: > 0.02 and < 1.0 })
            .GroupBy(t => (t.Trial.Device, t.Height!.Name, t.Height.Method))
            .OrderByDescending(g => g.Max(t => t.Trial.Date))
            .ThenByDescending(g => g.Count())
            .FirstOrDefault();
        if (jumps is null)
        {
            return null;
        }

        MeasuredTrial last = jumps.OrderBy(t => t.Trial.Date).Last().Trial;
        return (last.Labels.BodyMassKg ?? history.Athlete.BodyMassKg) is not { } mass
            ? null
            : new LoadedJumps(
                [.. jumps.Select(t => new LoadedJump(Load(t.Trial), t.Height!.Value))],
                [
                    .. jumps.Select(t => new LoadedJump(
                        Load(t.Trial),
                        t.Trial.Trial.FindTrusted(MeasureNames.TakeOffVelocity)?.Value
                            ?? Math.Sqrt(2 * Gravity.MetresPerSecondSquared * t.Height!.Value)
                    )),
                ],
                [
                    .. jumps
                        .Select(t => (t.Trial, Power: t.Trial.Trial.FindTrusted(MeasureNames.PeakPropulsivePower)))
                        .Where(t => t.Power is { Value: > 0 and < 12000 })
                        .Select(t => new LoadedJump(Load(t.Trial), t.Power!.Value)),
                ],
                mass,
                jumps.Key.Method,
                jumps.Key.Device,
                last.Date
            );
    }

    /// <summary>
    /// The range of take-off velocities that is aimed at, m/s: shares of what the lightest load gives. A person sets the shares
    /// (limits <c>load-speed-least</c> and <c>load-speed-most</c>); no named bands.
    /// </summary>
    public (double FromMS, double ToMS) Aim(double leastShare, double mostShare)
    {
        double lightest = Speeds.Min(s => s.LoadKg);
        double fastest = Speeds.Where(s => s.LoadKg <= lightest + 0.01).Average(s => s.Value);
        return (leastShare * fastest, mostShare * fastest);
    }

    /// <summary>Loads for that range of take-off velocities.</summary>
    /// <param name="fromMS">Slower end, m/s.</param>
    /// <param name="toMS">Faster end, m/s.</param>
    /// <param name="limitKg">The heaviest load allowed, kg; null without a limit.</param>
    /// <param name="mostTestKg">The heaviest that a further test may be done with, kg; null: as the limit.</param>
    /// <param name="leastTestKg">The lightest that it may be done with, kg; null: any.</param>
    public Outcome<LoadCurve> SpeedCurve(
        double fromMS,
        double toMS,
        double? limitKg,
        double? mostTestKg = null,
        double? leastTestKg = null
    ) =>
        LoadCurves.Of(
            new LoadCurveInput(LoadMeasure.Velocity, BodyMassKg, Speeds, fromMS, toMS, limitKg)
            {
                MostTestKg = mostTestKg,
                LeastTestKg = leastTestKg,
            }
        );

    /// <summary>The same range as heights.</summary>
    public Outcome<LoadCurve> HeightCurve(double fromMS, double toMS, double? limitKg) =>
        LoadCurves.Of(
            new LoadCurveInput(
                LoadMeasure.Height,
                BodyMassKg,
                Heights,
                Flight.HeightFromVelocityM(fromMS),
                Flight.HeightFromVelocityM(toMS),
                limitKg
            )
        );

    /// <summary>Loads at which power is near its best; refused where no plate measured it.</summary>
    public Outcome<LoadCurve> PowerCurve(double? limitKg) =>
        Powers.IsEmpty
            ? Refusal.Of($"Power needs a force plate; these loaded jumps have none: height and velocity stand for it.")
            : LoadCurves.Of(new LoadCurveInput(LoadMeasure.Power, BodyMassKg, Powers, LimitKg: limitKg));

    private static double Load(MeasuredTrial trial) => trial.Labels.ExternalLoadKg!.Value;

    private static Measure? HeightOf(Trial trial) =>
        trial.FindTrusted(MeasureNames.JumpHeight) ?? trial.FindTrusted(MeasureNames.JumpHeightFlightTime);
}
