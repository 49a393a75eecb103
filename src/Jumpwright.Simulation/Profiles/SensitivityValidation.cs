using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Calculators.Bands;
using Jumpwright.Calculators.Curves;
using Jumpwright.Prescribing.Change;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Quantities;
using Jumpwright.Simulation.Chance;
using Jumpwright.Statistics;
using NodaTime;

namespace Jumpwright.Simulation.Profiles;

/// <summary>Each number that nobody has tested, half as large and half as large again: what becomes of the answers?</summary>
public static class SensitivityValidation
{
    private const int SetUps = 4000;
    private static readonly (string Word, double Factor)[] Halves = [("× 0.5", 0.5), ("× 1.5", 1.5)];

    /// <summary>Every number varied.</summary>
    /// <param name="athletes">Simulated athletes a row.</param>
    public static SensitivityReport Run(int athletes) =>
        new(athletes, [.. DropRows(athletes)], [.. LevelRows(athletes)], [.. FrictionRows()], [.. EffectRows()]);

    private static IEnumerable<(string, string, double, double)> DropRows(int athletes)
    {
        CurvePrior house = CurveNumbers.Drop;
        (string, Func<double, CurvePrior>)[] numbers =
        [
            ("place of the peak to start from", f => house with { PeakAt = f * house.PeakAt }),
            ("how far off that may be", f => house with { PeakSd = f * house.PeakSd }),
            ("bend", f => house with { BendMedian = f * house.BendMedian }),
            ("trial-to-trial scatter to start from", f => house with { NoisePct = f * house.NoisePct }),
            (
                "what that scatter counts for",
                f => house with { NoiseDegreesOfFreedom = f * house.NoiseDegreesOfFreedom }
            ),
        ];
        yield return Row("as they are", "", house);
        foreach ((string name, Func<double, CurvePrior> vary) in numbers)
        {
            foreach ((string word, double factor) in Halves)
            {
                yield return Row(name, word, vary(factor));
            }
        }

        (string, string, double, double) Row(string name, string how, CurvePrior prior)
        {
            DropCurveReport report = DropCurveValidation.Run(athletes, prior: prior);
            return (name, how, 100 * report.WithinThreePct, report.MeanLossPct);
        }
    }

    private static IEnumerable<(string, string, double, double, double)> LevelRows(int athletes)
    {
        (string, Func<double, LevelPrior>)[] numbers =
        [
            ("scatter from day to day", f => Prior(5.8, f * Noise.DayToDay.Value, Noise.WeekToWeek.Value)),
            ("walk from week to week", f => Prior(5.8, Noise.DayToDay.Value, f * Noise.WeekToWeek.Value)),
            ("trial-to-trial scatter to start from", f => Prior(f * 5.8, Noise.DayToDay.Value, Noise.WeekToWeek.Value)),
        ];
        yield return Row("as they are", "", Noise.UsualPrior, LevelAlarms.OrdinaryWanderPct);
        foreach ((string name, Func<double, LevelPrior> vary) in numbers)
        {
            foreach ((string word, double factor) in Halves)
            {
                yield return Row(name, word, vary(factor), LevelAlarms.OrdinaryWanderPct);
            }
        }

        // The wander stands on a grid of 0, 0.15, 0.3 % a week: the neighbours stand for half less and half more.
        yield return Row("ordinary wander", "none", Noise.UsualPrior, 0);
        yield return Row("ordinary wander", "× 2", Noise.UsualPrior, 2 * LevelAlarms.OrdinaryWanderPct);

        (string, string, double, double, double) Row(string name, string how, LevelPrior prior, double wanderPct)
        {
            LevelReport report = LevelValidation.Run(athletes, start: prior, wanderPct: wanderPct);
            return (name, how, 100 * report.CoverageNow, report.FalseRate / report.StatedRate, report.DelayMean);
        }
    }

    private static LevelPrior Prior(double trialPct, double dayPct, double weekPct) =>
        LevelPrior.Of(trialPct, 8, dayPct, 0.6, weekPct, 0.8);

    /// <summary>Set-ups at random on floors whose true friction is 0.2 to 0.6; 0.2 is a dusty one.</summary>
    private static IEnumerable<(double, double, double)> FrictionRows()
    {
        foreach (double factor in (double[])[0.5, 1, 1.5])
        {
            double counted = factor * BandMargins.Friction.Value;
            int holds = 0;
            int slides = 0;
            for (int i = 0; i < SetUps; i++)
            {
                SeededRandom random = SeededRandom.For(31, (ulong)i + 1);
                double rest = random.Uniform(0.5, 0.8);
                double stiffness = random.Uniform(60, 260);
                double mass = random.Uniform(15, 80);
                double distance = random.Uniform(0.15, 0.6);
                double friction = random.Uniform(0.2, 0.6);
                double height = random.Uniform(0.2, 0.5);
                var side = new BandSide(
                    rest,
                    [.. new[] { 0.3, 0.7, 1.1, 1.6 }.Select(x => new BandReading(rest + x, stiffness * x))],
                    null,
                    AnchorKind.FlatSided,
                    mass,
                    distance,
                    WearChecked: true
                );
                if (
                    !BandJumps
                        .Of(new BandJumpInput(side, side, 1.0, 0.3, height, 0.02, 70) { Friction = counted })
                        .TryGet(out BandJump? jump, out _) || !jump.Holds
                )
                {
                    continue;
                }

                holds++;

                // The truth at the greatest height that was asked about: pull of one band against its own anchor.
                double apex = 1.0 + BandMargins.TakeOffRise.Value + height + 0.04 - side.AnchorHeightM;
                double length = Math.Sqrt((distance * distance) + (apex * apex));
                double pull = stiffness * Math.Max(0, length - rest);
                double left = (mass * Gravity.MetresPerSecondSquared) - (pull * apex / length);
                slides += pull * distance / length > friction * left ? 1 : 0;
            }

            yield return (counted, 100.0 * holds / SetUps, holds == 0 ? 0 : 100.0 * slides / holds);
        }
    }

    /// <summary>A jumper of 36 cm in a squad that differs by 5 cm: which training typically brings most?</summary>
    private static IEnumerable<(string, string, string, bool)> EffectRows()
    {
        var nobody = new Profile("a", new LocalDate(2027, 1, 4), [], $"", []);
        var jump = new Measure("jump_height_m", 0.36, Unit.Metre, 0.006, "impulse-momentum");
        ImmutableArray<PublishedEffect> effects = PublishedEffects.On(ChosenOutcome.StandingJump);
        yield return Row("as published", "", effects);
        foreach (PublishedEffect effect in effects)
        {
            foreach ((string word, double factor) in Halves)
            {
                yield return Row(
                    effect.Id,
                    word,
                    [.. effects.Select(e => e.Id == effect.Id ? e with { Value = factor * e.Value } : e)]
                );
            }
        }

        (string, string, string, bool) Row(string name, string how, ImmutableArray<PublishedEffect> varied)
        {
            GainRanking ranking = GainRankings.Of(nobody, ChosenOutcome.StandingJump, jump, 0.05, varied).Require();
            Gain first = ranking.Ranked[0];
            return (name, how, $"{first.Quality} ({first.Centimetres:0.0} cm)", ranking.Settled);
        }
    }
}
