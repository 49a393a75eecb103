using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators.Curves;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Dosing;

/// <summary>
/// From how high. For depth jumps: the height that the athlete's own drop curve chooses, or from one box the lowest whose index can't be told from the best with a short contact, never
/// more than a step above the highest that was measured; for landings the lowest of the range, and of a low one what leads to the next. Whatever is wished, a box rises by one step
/// only after clean sessions from the one before (<see cref="TrainedDrops"/>), and an exercise that is new begins at its lowest.
/// </summary>
internal static class DropHeights
{
    internal static Outcome<DropChoice> For(Exercise exercise, History history, OpenWork today, LocalDate day)
    {
        HeightRange range = exercise.DropRangeM!.Value;
        LimitBook limits = LimitBook.For(history, day);
        double step = limits["drop-step"];
        (double cap, Sentence why) = Cap(range, today.Rulings);
        double ruled = cap;
        ImmutableArray<DropTest> tests = exercise.IsDepthJump ? Tests(history, day) : [];
        if (exercise.IsDepthJump && exercise.IsHighIntensityAt(range.MinM))
        {
            double highest = tests.IsEmpty ? 0 : tests.Max(t => t.NominalM);
            if (highest + step < cap)
            {
                (cap, why) = (
                    highest + step,
                    tests.IsEmpty
                        ? Sentence.Of($"no drop jump was measured yet")
                        : Sentence.Of($"a step above the highest measured, {new Length(highest):0 cm}")
                );
            }
        }

        if (tests.IsEmpty && range.MinM > cap + 1e-9 && range.MinM <= ruled + 1e-9)
        {
            return Refusals.NoDropMeasured(exercise, range.MinM, step);
        }

        TrainedDrops trained = today.Ladder.Drops;
        double? any = trained.AnyM(exercise, today.Catalogue);
        double most = Math.Round(Math.Min(cap, (any ?? 0) + step), 4);
        if (range.MinM > most + 1e-9)
        {
            return Refusals.NoDrop(
                exercise,
                range.MinM,
                most,
                range.MinM > cap + 1e-9 ? why
                    : any is { } from ? StepAbove(from, trained)
                    : Sentence.Of($"the log holds no {trained.Sessions} clean sessions from a lower box yet")
            );
        }

        DropChoice wished = exercise.IsDepthJump
            ? Rebound(exercise, history, day, tests, cap, limits["drop-contact-ceiling"])
            : Landing(exercise, cap);
        double? own = trained.OwnM(exercise) is { } done && range.Contains(done) ? done : null;
        DropChoice risen = Risen(wished, range, own, most, step, trained);
        return risen with { ExpectedM = RealShare(history, day) * risen.NominalM };
    }

    /// <summary>The height wished, or how far the athlete's own sessions of this exercise lead towards it now.</summary>
    private static DropChoice Risen(
        DropChoice wished,
        HeightRange range,
        double? own,
        double cap,
        double step,
        TrainedDrops trained
    )
    {
        if (own is not { } done)
        {
            return wished.NominalM <= range.MinM + 1e-9
                ? wished
                : new DropChoice(
                    range.MinM,
                    null,
                    $"From {new HeightToSet(range.MinM)}, the lowest of its range: {trained.Sessions} clean sessions of it from there come before a higher box."
                );
        }

        double next = Math.Round(done + step, 4);
        double most = next <= Math.Min(range.MaxM, cap) + 1e-9 ? next : Math.Min(done, cap);
        return wished.NominalM > most + 1e-9
                ? new DropChoice(
                    most,
                    null,
                    most > done + 1e-9
                        ? Sentence.Of($"From {new HeightToSet(most)}: {StepAbove(done, trained)}.")
                        : Sentence.Of($"From {new HeightToSet(most)}, as in the clean sessions of the log.")
                )
            : wished.NominalM > done + 1e-9
                ? wished with
                {
                    Because = $"{wished.Because} It is {StepAbove(done, trained)}.",
                }
            : wished;
    }

    private static Sentence StepAbove(double fromM, TrainedDrops trained) =>
        $"a step above {new HeightToSet(fromM)}, from which the log holds {trained.Sessions} clean sessions";

    /// <summary>A low drop rises until the next landing is a step away; the higher ones stay at their lowest.</summary>
    private static DropChoice Landing(Exercise exercise, double cap)
    {
        HeightRange range = exercise.DropRangeM!.Value;
        return exercise.IsHighIntensityAt(range.MinM)
            ? Lowest(range)
            : new DropChoice(
                Math.Min(range.MaxM, cap),
                null,
                $"From {new HeightToSet(Math.Min(range.MaxM, cap))}, so that a higher landing comes within a step."
            );
    }

    private static DropChoice Lowest(HeightRange range) =>
        new(range.MinM, null, $"From {new HeightToSet(range.MinM)}, the lowest of its range.");

    /// <summary>Where reactive strength is best with a quick contact, below the cap.</summary>
    private static DropChoice Rebound(
        Exercise exercise,
        History history,
        LocalDate day,
        ImmutableArray<DropTest> tests,
        double cap,
        double ceilingS
    )
    {
        HeightRange range = exercise.DropRangeM!.Value;
        DropTest[] quick =
        [
            .. tests.Where(t => t.ContactS < ceilingS && range.Contains(t.NominalM) && t.NominalM <= cap + 1e-9),
        ];
        if (quick.Length == 0)
        {
            double top = Math.Min(range.MaxM, cap);
            DropTest[] higher = [.. tests.Where(t => t.NominalM > range.MaxM && t.ContactS < ceilingS).Take(1)];
            return higher.Length > 0
                    ? new DropChoice(
                        top,
                        null,
                        $"From {new HeightToSet(top)}: the contact was quick from {new HeightToSet(higher[0].NominalM)} already ({1000 * higher[0].ContactS:0} ms)."
                    )
                : tests.IsEmpty ? Lowest(range)
                : new DropChoice(
                    range.MinM,
                    null,
                    $"From {new HeightToSet(range.MinM)}, the lowest of its range: no box from {new HeightToSet(range.MinM)} to {new HeightToSet(top)} was measured with a contact below {1000 * ceilingS:0} ms."
                );
        }

        if (FromTheCurve(exercise, history, day, cap, ceilingS) is { } curve)
        {
            return new DropChoice(curve.ChosenM, null, Sentence.Plain(curve.Sentence));
        }

        DropTest best = quick.MaxBy(t => t.Index);
        DropTest chosen = quick
            .OrderBy(t => t.NominalM)
            .First(t => best.Index - t.Index <= Math.Sqrt(Square(best.IndexUncertainty) + Square(t.IndexUncertainty)));
        return new DropChoice(
            chosen.NominalM,
            null,
            $"From {new HeightToSet(chosen.NominalM)}: index {chosen.Index:0.00} ± {chosen.IndexUncertainty:0.00} m/s with {1000 * chosen.ContactS:0} ms of contact; the lowest box that can't be told from the best."
        );
    }

    /// <summary>
    /// The same curve as in the athlete's report, inside this exercise's range; null where it has no single height to offer or
    /// where that is no height of this exercise.
    /// </summary>
    private static DropCurve? FromTheCurve(
        Exercise exercise,
        History history,
        LocalDate day,
        double cap,
        double contactCeilingS
    )
    {
        ImmutableArray<DropJumpTrial> trials = DropJumps.Of(history, day);
        return
            trials.Select(t => t.DropM).Distinct().Count() >= 2
            && DropCurves
                .Of(new DropCurveInput(trials, cap, contactCeilingS) { SeekNext = false })
                .TryGet(out DropCurve? curve, out _)
            && exercise.DropRangeM!.Value.Contains(curve.ChosenM)
            && curve.ChosenM <= cap + 1e-9
            && curve.Value("contact_at_chosen_s").Value < contactCeilingS
            ? curve
            : null;
    }

    private static (double Cap, Sentence Why) Cap(HeightRange range, ImmutableArray<Ruling> rulings)
    {
        (double cap, Sentence why) = (range.MaxM, $"the top of its range");
        foreach (Ruling ruling in rulings)
        {
            if (ruling.Effect is DropAtMost most && most.HeightM < cap)
            {
                (cap, why) = (most.HeightM, $"{ruling.Because:open}");
            }
        }

        return (cap, why);
    }

    /// <summary>Trusted drop jumps of the latest day on which any were done, by box, one device only.</summary>
    private static ImmutableArray<DropTest> Tests(History history, LocalDate day)
    {
        MeasuredTrial[] jumps =
        [
            .. history.Trials.Where(t =>
                t.Date <= day
                && t.Trial.Task == JumpTask.DropJump
                && t.Labels.DropHeightM is > 0
                && t.Trial.FindTrusted(MeasureNames.ReactiveStrengthIndex) is not null
                && t.Trial.FindTrusted(MeasureNames.ContactTime) is not null
            ),
        ];
        if (jumps.Length == 0)
        {
            return [];
        }

        MeasuredTrial latest = jumps.OrderByDescending(t => t.Date).ThenBy(t => t.Device).First();
        return
        [
            .. jumps
                .Where(t => t.Date == latest.Date && t.Device == latest.Device)
                .GroupBy(t => t.Labels.DropHeightM!.Value)
                .OrderBy(g => g.Key)
                .Select(g =>
                {
                    Measure[] index = [.. g.Select(t => t.Trial.FindTrusted(MeasureNames.ReactiveStrengthIndex)!)];
                    Measure[] contact = [.. g.Select(t => t.Trial.FindTrusted(MeasureNames.ContactTime)!)];
                    return new DropTest(g.Key, Mean(index), Doubt(index), Mean(contact), Doubt(contact));
                }),
        ];
    }

    /// <summary>Real drop over the box's height, from the athlete's own drop jumps; null where none was measured.</summary>
    private static double? RealShare(History history, LocalDate day)
    {
        double[] shares =
        [
            .. history
                .Trials.Where(t => t.Date <= day && t.Labels.DropHeightM is > 0)
                .Select(t =>
                    t.Trial.FindTrusted(MeasureNames.DropHeight) is { } real
                        ? real.In(Unit.Metre) / t.Labels.DropHeightM
                        : null
                )
                .OfType<double>(),
        ];
        return shares.Length == 0 ? null : shares.Average();
    }

    private static double Mean(Measure[] measures) => measures.Average(m => m.Value);

    /// <summary>Doubt of a mean: the device's, and the scatter of these trials where there are several.</summary>
    private static double Doubt(Measure[] measures)
    {
        double mean = Mean(measures);
        double device = measures.Average(m => Square(m.StandardUncertainty));
        double scatter =
            measures.Length > 1
                ? measures.Sum(m => Square(m.Value - mean)) / (measures.Length - 1)
                : Square(0.1 * mean);
        return Math.Sqrt(device + (scatter / measures.Length));
    }

    private static double Square(double x) => x * x;
}
