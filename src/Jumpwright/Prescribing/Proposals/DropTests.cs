using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Calculators.Curves;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>Which drop jump to test next, if any is allowed now.</summary>
public static class DropTests
{
    private static readonly ImmutableArray<string> Stop =
    [
        "contact is longer than the ceiling",
        "the rebound falls by more than 10 %",
        "a landing fault is seen",
        "pain above 2 of 10, or anywhere new",
    ];

    /// <summary>Single drop jumps of the latest days, one device and method, from boxes as written.</summary>
    public static ImmutableArray<DropJumpTrial> TrialsOf(History history, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        var jumps = history
            .Trials.Where(t =>
                t.Date <= day
                && t.Date > day.PlusDays(-42)
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

    /// <summary>
    /// The test to offer; a refusal says what stands against any, or that none is needed.
    /// </summary>
    public static Outcome<TestProposal> For(
        History history,
        TestGate gate,
        Catalogue catalogue,
        LocalDate day,
        double contactCeilingS = 0.25
    )
    {
        ArgumentNullException.ThrowIfNull(gate);
        ArgumentNullException.ThrowIfNull(catalogue);
        ImmutableArray<DropJumpTrial> trials = TrialsOf(history, day);
        double? highest = trials.IsEmpty ? null : trials.Max(t => t.DropM);
        Exercise[] kinds =
        [
            .. catalogue.Exercises.Where(e =>
                e
                    is {
                        IsDepthJump: true,
                        Limb: "both",
                        Landing: "floor",
                        SingleLegLanding: false,
                        DropRangeM: not null
                    }
            ),
        ];
        Refusal? last = null;
        var allowed = new List<(double HeightM, Exercise Exercise)>();
        for (int i = 2; i <= 20; i++)
        {
            double height = Math.Round(0.05 * i, 2);
            foreach (Exercise kind in kinds.Where(k => k.DropRangeM!.Value.Contains(height)))
            {
                if (
                    gate.Check(kind.Id, height, highest, CurveNumbers.TrialsOfATest)
                        .TryGet(out Exercise? open, out Refusal? refusal)
                )
                {
                    allowed.Add((height, open));
                    break;
                }

                last ??= refusal;
            }
        }

        if (allowed.Count == 0)
        {
            return last ?? new Refusal("The catalogue has no drop jump on both feet.");
        }

        if (trials.Length < 3)
        {
            (double lowest, Exercise first) = allowed[0];
            return Proposal(
                history,
                first,
                lowest,
                null,
                "no curve can be drawn from what was measured: begin at the lowest box"
            );
        }

        if (
            !DropCurves
                .Of(new DropCurveInput(trials, allowed[^1].HeightM, contactCeilingS))
                .TryGet(out DropCurve? curve, out Refusal? none)
        )
        {
            return none;
        }

        if (curve.NextDropM is not { } wished)
        {
            return new Refusal($"No further drop jump is needed: {curve.Sentence}");
        }

        (double heightM, Exercise exercise) = allowed.FirstOrDefault(a => Math.Abs(a.HeightM - wished) < 1e-6);
        return exercise is null
            ? new Refusal($"A test from {100 * wished:0} cm would tell most, but it is not open now.")
            : Proposal(
                history,
                exercise,
                heightM,
                curve.DoubtLeft,
                $"it would leave {100 * curve.DoubtLeft:0} % of what the choice of a height may still lose"
            );
    }

    private static TestProposal Proposal(
        History history,
        Exercise exercise,
        double heightM,
        double? left,
        string because
    ) =>
        new(
            history.Athlete.Id,
            exercise.Id,
            heightM,
            CurveNumbers.TrialsOfATest,
            CurveNumbers.TrialsOfATest * exercise.ContactsPerRep,
            left,
            $"{exercise.Name} from {100 * heightM:0} cm, {CurveNumbers.TrialsOfATest} trials: {because}.",
            Stop
        );
}
