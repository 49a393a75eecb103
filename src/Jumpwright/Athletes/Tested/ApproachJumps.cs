using System.Collections.Immutable;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes.Tested;

/// <summary>
/// Approach jumps of the latest weeks with their run-up speed, and the standing jump measured the same way. The speed is written
/// in screens.csv (gates or frames); <c>side</c> says the take-off: both feet, or the one. The height comes from a recording of
/// that day (<see cref="RunUpPairs"/> says which speed is whose) or from the highest touch less the standing reach.
/// </summary>
/// <param name="Trials">Single approach jumps.</param>
/// <param name="Standing">Standing jump by the same method and device, mean.</param>
/// <param name="Method">How the heights were got.</param>
/// <param name="OneFoot">Which foot the jumps off one foot took off from.</param>
/// <param name="Latest">Day of the last one.</param>
public sealed record ApproachJumps(
    ImmutableArray<ApproachTrial> Trials,
    Measure Standing,
    string Method,
    Side OneFoot,
    LocalDate Latest
)
{
    /// <summary>Test that holds the run-up speed over the last metres.</summary>
    public const string SpeedTest = "run-up-speed";

    /// <summary>Test that holds the highest touch of that jump.</summary>
    public const string TouchTest = "run-up-touch";

    private const string ReachMethod = "reach, by hand";

    /// <summary>How speeds found their recordings, where a person should know; empty where each speed names its own.</summary>
    public ImmutableArray<Sentence> Remarks { get; init; } = [];

    /// <summary>The fastest run-up measured off those feet, m/s; null when none was.</summary>
    public double? Fastest(TakeOffFoot foot) =>
        Trials.Where(t => t.TakeOff == foot).Select(t => (double?)t.SpeedMS).Max();

    /// <summary>The curves; refused below three jumps off the same feet.</summary>
    /// <param name="seekNext">False leaves the next test unsought, which is the dear part.</param>
    public Outcome<RunUp> Curve(bool seekNext = true) =>
        RunUpCurves.Of(new RunUpInput(Trials, Standing.Value, Standing.StandardUncertainty) { SeekNext = seekNext });

    /// <summary>What was measured, or a sentence that says what is missing.</summary>
    public static Outcome<ApproachJumps> Of(History history, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        ScreenResult[] speeds =
        [
            .. history.Screens.Where(s =>
                s.Test == SpeedTest
                && s.Unit is "m/s" or ""
                && s.TrialNumber is not null
                && s.Side != Side.Unknown
                && TestWindow.Holds(s.Date, day)
            ),
        ];
        if (speeds.Length == 0)
        {
            return Refusal.Of(
                $"No run-up speed was measured: time the last metres with gates or a camera, and write run-up-speed with the feet and the trial number."
            ) with
            {
                Brief = $"run-up (approach jumps, last metres timed)",
            };
        }

        var remarks = new List<Sentence>();
        return FromRecordings(history, day, speeds, remarks)
            ?? FromTouches(history, day, speeds)
            ?? (Outcome<ApproachJumps>)
                Refusal.Of(
                    remarks.Count > 0
                        ? Sentence.Join(" ", remarks)
                        : Sentence.Of(
                            $"Run-up speeds were written, but no height goes with them: record the jumps, or write run-up-touch and standing-reach, and a standing jump measured the same way."
                        )
                );
    }

    private static ApproachJumps? FromRecordings(
        History history,
        LocalDate day,
        ScreenResult[] speeds,
        List<Sentence> remarks
    )
    {
        var jumps = history
            .Trials.Where(t => t.Trial.Task == JumpTask.ApproachJump && TestWindow.Holds(t.Date, day))
            .GroupBy(t => (t.Date, Side: SideOf(t.Labels.Limb)))
            .OrderBy(g => g.Key)
            .SelectMany(g =>
                RunUpPairs.Of([.. g], [.. speeds.Where(s => s.Date == g.Key.Date && s.Side == g.Key.Side)], remarks)
            )
            .Select(p => (p.Trial, Height: HeightOf(p.Trial.Trial)!, p.Speed))
            .Where(p => p.Height is { Value: > 0.02 and < 1.3 })
            .GroupBy(p => (p.Trial.Device, p.Height.Name, p.Height.Method))
            .OrderByDescending(g => g.Count())
            .FirstOrDefault();
        if (jumps is null)
        {
            return null;
        }

        Measure? standing = StandingJump(history, day, jumps.Key.Device, jumps.Key.Name, jumps.Key.Method);
        if (standing is null)
        {
            remarks.Clear();
            remarks.Add(
                $"Approach jumps were recorded and timed, but no standing jump was measured the same way: record three countermovement jumps on the same kit."
            );
            return null;
        }

        Side foot = MostOf(jumps.Select(j => j.Speed.Side));
        return new ApproachJumps(
            [
                .. jumps
                    .Where(j => j.Speed.Side == Side.Both || j.Speed.Side == foot)
                    .Select(j =>
                        Make(
                            history,
                            j.Speed,
                            j.Height.Value,
                            j.Trial.Trial.FindTrusted(MeasureNames.ContactTime)?.Value
                        )
                    ),
            ],
            standing,
            jumps.Key.Method,
            foot,
            jumps.Max(j => j.Trial.Date)
        )
        {
            Remarks = [.. remarks],
        };
    }

    private static ApproachJumps? FromTouches(History history, LocalDate day, ScreenResult[] speeds)
    {
        double? reach = LatestMean(history, "standing-reach", day);
        double? standing = LatestMean(history, "best-touch", day);
        if (reach is not { } r || standing is not { } s || s <= r)
        {
            return null;
        }

        var jumps = speeds
            .Select(v => (Speed: v, Touch: Beside(history, v, TouchTest)))
            .Where(p => p.Touch > r + 0.02)
            .ToArray();
        if (jumps.Length == 0)
        {
            return null;
        }

        Side foot = MostOf(jumps.Select(j => j.Speed.Side));
        double doubt = FieldTest.Find(TouchTest)!.StandardUncertainty;
        return new ApproachJumps(
            [
                .. jumps
                    .Where(j => j.Speed.Side == Side.Both || j.Speed.Side == foot)
                    .Select(j => Make(history, j.Speed, j.Touch!.Value - r, null)),
            ],
            new Measure("standing_jump_m", s - r, Unit.Metre, Math.Sqrt(2) * doubt, ReachMethod),
            ReachMethod,
            foot,
            jumps.Max(j => j.Speed.Date)
        );
    }

    private static Measure? HeightOf(Trial trial) =>
        trial.FindTrusted(MeasureNames.JumpHeight) ?? trial.FindTrusted(MeasureNames.JumpHeightFlightTime);

    private static ApproachTrial Make(History history, ScreenResult speed, double heightM, double? contactS) =>
        new(
            speed.Side == Side.Both ? TakeOffFoot.TwoFeet : TakeOffFoot.OneFoot,
            speed.Value,
            heightM,
            contactS ?? Beside(history, speed, "run-up-contact"),
            Beside(history, speed, "last-step"),
            Beside(history, speed, "step-before-last")
        );

    private static double? Beside(History history, ScreenResult speed, string test) =>
        history
            .Screens.FirstOrDefault(s =>
                s.Test == test && s.Date == speed.Date && s.Side == speed.Side && s.TrialNumber == speed.TrialNumber
            )
            ?.Value;

    private static double? LatestMean(History history, string test, LocalDate day) =>
        history
            .Screens.Where(s => s.Test == test && s.Unit is "m" or "" && s.Date <= day)
            .GroupBy(s => s.Date)
            .OrderByDescending(g => g.Key)
            .FirstOrDefault()
            ?.Average(s => s.Value);

    private static Measure? StandingJump(History history, LocalDate day, Device device, string name, string method) =>
        Profiles
            .CurrentMeasures.Of(history, day)
            .FirstOrDefault(e =>
                e.Task == JumpTask.CountermovementJump
                && e.Limb is null or Limb.Both
                && e.Device == device
                && e.Measure.Name == name
                && e.Measure.Method == method
            )
            ?.Measure;

    private static Side SideOf(Limb? limb) =>
        limb switch
        {
            Limb.Left => Side.Left,
            Limb.Right => Side.Right,
            _ => Side.Both,
        };

    /// <summary>One leg only stands for "off one foot": the one with more jumps.</summary>
    private static Side MostOf(IEnumerable<Side> sides) =>
        sides
            .Where(s => s is Side.Left or Side.Right)
            .GroupBy(s => s)
            .OrderByDescending(g => g.Count())
            .ThenBy(g => g.Key)
            .Select(g => g.Key)
            .FirstOrDefault(Side.Unknown);
}
