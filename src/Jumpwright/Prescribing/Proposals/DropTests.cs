using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators.Curves;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>Which drop jump to test next, if any is allowed now.</summary>
public static class DropTests
{
    /// <summary>
    /// The test to offer; a refusal says what stands against any, or that none is needed. Where the highest drop so far met its stop
    /// rule, nothing higher is offered.
    /// </summary>
    public static Outcome<TestProposal> For(History history, TestGate gate, Catalogue catalogue, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        ArgumentNullException.ThrowIfNull(gate);
        ArgumentNullException.ThrowIfNull(catalogue);
        ImmutableArray<DropJumpTrial> trials = DropJumps.Of(history, day);
        double? highest = trials.IsEmpty ? null : trials.Max(t => t.DropM);
        (StopVerdict stopped, double stoppedM) = Stopped(history, gate, catalogue, trials, day);
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
        var allowed = new List<(TestAsk Ask, Exercise Exercise)>();
        for (int i = 2; i <= 20; i++)
        {
            double height = Math.Round(0.05 * i, 2);
            if (stopped.Stops && height > stoppedM + 1e-9)
            {
                last ??= NoHigher(stoppedM, stopped);
                break;
            }

            foreach (Exercise kind in kinds.Where(k => k.DropRangeM!.Value.Contains(height)))
            {
                var ask = new TestAsk(kind.Id, CurveNumbers.TrialsOfATest) { DropM = height, HighestDropM = highest };
                if (gate.Check(ask).TryGet(out Exercise? open, out Refusal? refusal))
                {
                    allowed.Add((ask, open));
                    break;
                }

                last ??= refusal;
            }
        }

        if (allowed.Count == 0)
        {
            return last ?? Refusal.Of($"The catalogue has no drop jump on both feet.");
        }

        if (trials.Length < 3)
        {
            return Proposal(
                history,
                gate,
                allowed[0],
                trials,
                null,
                $"there is no curve yet, so begin at the lowest box"
            );
        }

        if (
            !DropCurves
                .Of(new DropCurveInput(trials, allowed[^1].Ask.DropM!.Value, gate.Limits["drop-contact-ceiling"]))
                .TryGet(out DropCurve? curve, out Refusal? none)
        )
        {
            return none;
        }

        if (curve.NextDropM is not { } wished)
        {
            return Refusal.Of($"No further drop jump is needed: {curve.Sentence}") with
            {
                Brief = TestOffer.KnownWellEnough,
            };
        }

        (TestAsk Ask, Exercise Exercise) chosen = allowed.FirstOrDefault(a =>
            Math.Abs(a.Ask.DropM!.Value - wished) < 1e-6
        );
        return chosen.Exercise is null
            ? stopped.Stops && wished > stoppedM
                ? NoHigher(stoppedM, stopped)
                : Refusal.Of($"A test from {new Length(wished):0 cm} would tell most, but it is not open now.") with
                {
                    Brief = $"the height that would tell most is not open",
                }
            : Proposal(
                history,
                gate,
                chosen,
                trials,
                curve.DoubtLeft,
                $"it would leave {100 * curve.DoubtLeft:0} % of what the choice of a height may still lose"
            );
    }

    private static Refusal NoHigher(double highestM, StopVerdict stopped) =>
        Refusal.Of($"Nothing higher than {new Length(highestM):0 cm} is offered: there {stopped.Because}.") with
        {
            Brief = $"the last test from {new Length(highestM):0 cm} was stopped",
        };

    /// <summary>
    /// Whether the trials from the highest drop met the stop rule they were under, and that drop, m. Contact and height typed on the
    /// floor or in a log count like recorded ones, and logged landing faults count.
    /// </summary>
    private static (StopVerdict Verdict, double DropM) Stopped(
        History history,
        TestGate gate,
        Catalogue catalogue,
        ImmutableArray<DropJumpTrial> trials,
        LocalDate day
    )
    {
        CompletedItem[] logged =
        [
            .. history
                .Completed.Where(c => c.Date <= day && c.Date > day.PlusDays(-TestWindow.Days))
                .Where(c => c.DropHeightM is not null && catalogue.Find(c.ExerciseId)?.IsDepthJump == true),
        ];
        CompletedItem[] typed = [.. logged.Where(c => c.ContactTimeS is not null || c.HeightM is not null)];
        // Each by itself: quick contacts that somebody typed never talk a slow measured one away, nor the other way round.
        (StopVerdict Verdict, double DropM)[] stops =
        [
            .. new[]
            {
                Judged(
                    [.. trials.Select(t => (t.DropM, new TrialSeen(t.Index * t.ContactS, t.ContactS)))],
                    logged,
                    gate,
                    trials
                ),
                Judged(
                    [.. typed.Select(c => (c.DropHeightM!.Value, new TrialSeen(c.HeightM, c.ContactTimeS)))],
                    logged,
                    gate,
                    trials
                ),
            }.Where(j => j.Verdict.Stops),
        ];
        return stops.Length == 0 ? (StopVerdict.GoesOn, 0) : stops.MinBy(j => j.DropM);
    }

    /// <summary>Whether those trials met the rule at their highest drop; landing faults logged there on the latest day count.</summary>
    private static (StopVerdict Verdict, double DropM) Judged(
        (double DropM, TrialSeen Seen)[] all,
        CompletedItem[] logged,
        TestGate gate,
        ImmutableArray<DropJumpTrial> trials
    )
    {
        if (all.Length == 0)
        {
            return (StopVerdict.GoesOn, 0);
        }

        double highest = all.Max(t => t.DropM);
        int faults =
            logged
                .Where(c => Math.Abs(c.DropHeightM!.Value - highest) < 0.01)
                .GroupBy(c => c.Date)
                .OrderByDescending(g => g.Key)
                .FirstOrDefault()
                ?.Sum(c => c.LandingFaults ?? 0)
            ?? 0;
        TrialSeen[] seen =
        [
            .. all.Where(t => Math.Abs(t.DropM - highest) < 0.01).Select(t => t.Seen),
            new TrialSeen(null, null, faults),
        ];
        return (StopFor(gate, trials.Where(t => t.DropM < highest - 0.01)).After(seen), highest);
    }

    /// <summary>The rule of a drop-jump test that follows those trials.</summary>
    internal static TestStop StopFor(TestGate gate, IEnumerable<DropJumpTrial> easier)
    {
        double[] rebounds = [.. easier.GroupBy(t => t.DropM).Select(g => g.Average(t => t.Index * t.ContactS))];
        return new TestStop(
            gate.Limits["drop-contact-ceiling"],
            gate.Limits["stop-height-loss"],
            rebounds.Length == 0 ? null : rebounds.Max(),
            1,
            gate.PainStopsAbove
        );
    }

    private static TestProposal Proposal(
        History history,
        TestGate gate,
        (TestAsk Ask, Exercise Exercise) chosen,
        ImmutableArray<DropJumpTrial> trials,
        double? left,
        Sentence because
    ) =>
        new(
            history.Athlete.Id,
            chosen.Exercise.Id,
            chosen.Ask,
            TestGate.ContactsOf(chosen.Exercise, chosen.Ask.Trials),
            chosen.Exercise.IsHighIntensityAt(chosen.Ask.DropM),
            left,
            $"{chosen.Exercise.Said} from {new Length(chosen.Ask.DropM!.Value):0 cm}, {chosen.Ask.Trials} trials: {because}.",
            StopFor(gate, trials.Where(t => t.DropM < chosen.Ask.DropM - 0.01))
        );
}
