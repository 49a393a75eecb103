using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators.Curves;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Dosing;

/// <summary>
/// From how high. For depth jumps: the height that the athlete's own drop curve chooses, or from one box the lowest whose index can't be told from the best with a short contact, never
/// more than a step above the highest that was measured; for landings the lowest of the range.
/// </summary>
internal static class DropHeights
{
    internal static Outcome<DropChoice> For(
        Exercise exercise,
        History history,
        ImmutableArray<Ruling> rulings,
        LocalDate day
    )
    {
        HeightRange range = exercise.DropRangeM!.Value;
        LimitBook limits = LimitBook.For(history, day);
        (double cap, Sentence why) = Cap(exercise, range, rulings);
        ImmutableArray<DropTest> tests = exercise.IsDepthJump ? Tests(history, day) : [];
        if (exercise.IsDepthJump && exercise.IsHighIntensityAt(range.MinM))
        {
            double highest = tests.IsEmpty ? 0 : tests.Max(t => t.NominalM);
            double step = highest + limits["drop-step"];
            if (step < cap)
            {
                (cap, why) = (
                    step,
                    tests.IsEmpty
                        ? Sentence.Of($"no drop jump was measured yet")
                        : Sentence.Of($"a step above the highest measured, {new Length(highest):0 cm}")
                );
            }
        }

        if (range.MinM > cap + 1e-9)
        {
            return tests.IsEmpty && range.MinM <= (Cap(exercise, range, rulings).Cap + 1e-9)
                ? Refusals.NoDropMeasured(exercise, range.MinM, limits["drop-step"])
                : Refusals.NoDrop(exercise, range.MinM, cap, why);
        }

        DropTest[] quick =
        [
            .. tests.Where(t =>
                t.ContactS < limits["drop-contact-ceiling"] && range.Contains(t.NominalM) && t.NominalM <= cap + 1e-9
            ),
        ];
        double? ratio = RealShare(history, day);
        if (quick.Length == 0)
        {
            return new DropChoice(
                range.MinM,
                ratio * range.MinM,
                tests.IsEmpty
                    ? Sentence.Of($"From {new HeightToSet(range.MinM)}, the lowest of its range.")
                    : Sentence.Of(
                        $"From {new HeightToSet(range.MinM)}, the lowest of its range: no box from {new HeightToSet(range.MinM)} to {new HeightToSet(Math.Min(range.MaxM, cap))} was measured with a contact below {1000 * limits["drop-contact-ceiling"]:0} ms."
                    )
            );
        }

        if (FromTheCurve(exercise, history, day, cap, limits["drop-contact-ceiling"]) is { } curve)
        {
            return new DropChoice(curve.ChosenM, ratio * curve.ChosenM, Sentence.Plain(curve.Sentence));
        }

        DropTest best = quick.MaxBy(t => t.Index);
        DropTest chosen = quick
            .OrderBy(t => t.NominalM)
            .First(t => best.Index - t.Index <= Math.Sqrt(Square(best.IndexUncertainty) + Square(t.IndexUncertainty)));
        return new DropChoice(
            chosen.NominalM,
            ratio * chosen.NominalM,
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

    private static (double Cap, Sentence Why) Cap(Exercise exercise, HeightRange range, ImmutableArray<Ruling> rulings)
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
