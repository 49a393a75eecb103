using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.Curves;

/// <summary>Drop height against reactive strength and contact: the height to train at, or the height to test next.</summary>
public static class DropCurves
{
    private const double Grid = 0.05;
    private const double Lowest = 0.10;

    /// <summary>An expected loss below this share is nothing to test for.</summary>
    private const double NothingToGain = 0.002;

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "drop-curve",
            "Drop height to train at",
            $"Index = R exp(−k (H − p)²); belief over p, k, R and the noise from the athlete's single trials and a published start. Chosen: the lowest height tested or between "
                + $"whose index loses at most 3 % of the best allowed with probability 0.99, contact under the ceiling; if none reaches it, the one that is expected to lose least. "
                + $"Next test: the height, at most 0.10 m above the highest tested and inside the limits, after which the choice is expected to lose least.",
            [
                "addie-drop-heights",
                "prieske-youth-handball",
                "keiner-2024",
                "stratford-2021",
                "schmidtbleicher-1992",
                "house-rule",
            ],
            $"No published law chooses a drop height. Index hides height and contact, which trade against each other: look at both. One height is not enough for one athlete (Keiner 2024). 0.25 s is a label, not a cliff. Box height is not drop height."
        );

    /// <summary>The choice; refused below three trials or one height, and where every tested height is above the limit.</summary>
    public static Outcome<DropCurve> Of(DropCurveInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        ImmutableArray<DropJumpTrial> trials = input.Trials.IsDefault ? [] : input.Trials;
        Refusal? bad = Input.First(
            Input.Outside($"The limit", input.LimitM, 0, 1.2, "m"),
            Input.Outside($"The contact ceiling", input.ContactCeilingS, 0.1, 0.6, "s")
        );
        foreach (DropJumpTrial trial in trials)
        {
            bad ??= Input.First(
                Input.Outside($"A drop", trial.DropM, 0.05, 1.2, "m"),
                Input.Outside($"An index", trial.Index, 0.05, 6, "m/s"),
                Input.Outside($"A contact", trial.ContactS, 0.08, 1.0, "s")
            );
        }

        if (bad is not null)
        {
            return bad;
        }

        if (trials.Length < 3)
        {
            return Refusal.Of(
                $"{trials.Length} drop jumps: three trials from one height are the least to begin with, from two heights to choose between."
            );
        }

        double[] heights = [.. trials.Select(t => t.DropM).Distinct().Order()];
        double lowest = heights[0];
        double highest = heights[^1];
        if (lowest > input.LimitM + 1e-9)
        {
            return Refusal.Of(
                $"Every measured drop ({new Length(lowest):0 cm} and up) is above what the limits allow ({new Length(input.LimitM):0 cm}): measure drop jumps inside the limits first."
            );
        }

        PeakedCurve curve = PeakedCurve.Of([.. trials.Select(t => new CurvePoint(t.DropM, t.Index))], input.Prior);
        ContactLine contact = ContactLine.Of(trials);
        double roof = Math.Min(input.LimitM, highest);

        // What can be compared: from the lowest tested to the roof; nothing is claimed of heights nobody jumped from.
        double[] places = [.. Places(lowest, roof).Concat(heights.Where(h => h <= roof + 1e-9)).Distinct().Order()];
        double[] quick = [.. places.Where(h => contact.ProbabilityBelow(h, input.ContactCeilingS) >= 0.5)];
        bool slow = quick.Length == 0;
        double[] open = slow ? [places[0]] : quick;
        double best = open[^1];
        double share = CurveNumbers.Loss.Value;
        double chosen = open.FirstOrDefault(
            h => curve.ProbabilityLossWithin(h, share, lowest, best) >= CurveNumbers.Sure.Value,
            open.MinBy(h => curve.ExpectedLoss(h, lowest, best))
        );
        double chance = curve.ProbabilityLossWithin(chosen, share, lowest, best);
        (double place, double placeSd) = curve.BestPlace(
            lowest,
            Math.Min(input.LimitM, highest + CurveNumbers.Step.Value)
        );
        (double index, double indexSd) = curve.At(chosen);
        (double seconds, double secondsSd) = contact.At(chosen);

        double ceiling = Math.Min(input.LimitM, highest + CurveNumbers.Step.Value);
        (double Drop, double Left)? next =
            slow || !input.SeekNext ? null : Next(curve, lowest, highest, ceiling, input.LimitM);
        bool settled =
            chance >= CurveNumbers.Sure.Value
            && heights.Length >= 3
            && (next is null || next.Value.Left > 0.8 || roof >= input.LimitM - 1e-9);
        Sentence? test =
            settled || next is null
                ? null
                : Sentence.Of(
                    $"Test {new Length(next.Value.Drop):0 cm} next, {CurveNumbers.TrialsOfATest} trials: it would leave {100 * next.Value.Left:0} % of what the choice may still lose."
                );
        Sentence answer = slow
            ? Sentence.Of(
                $"Contact is over the ceiling of {1000 * input.ContactCeilingS:0} ms at every height that limits allow: train lower than {new Length(lowest):0 cm}, or shorten the contact first."
            )
            : Sentence.Of(
                $"Train from {new Length(chosen):0 cm}: index {index:0.00} ± {indexSd:0.00} m/s with {1000 * seconds:0} ± {1000 * secondsSd:0} ms of contact; it loses at most 3 % of the best with a chance of {Probability.Said(chance)}. The best height is likely {new Length(place):0 (cm)} ± {new Length(placeSd):0 cm}."
            );
        const string method = "one-peak curve, Bayesian grid";
        return new DropCurve(
            Basis,
            [
                new("chosen_drop_m", chosen, Unit.Metre, 0, method),
                new("best_drop_m", place, Unit.Metre, placeSd, method),
                new("index_at_chosen", index, Unit.MetrePerSecond, indexSd, method),
                new("contact_at_chosen_s", seconds, Unit.Second, secondsSd, "line through the trials"),
                new("chance_within_3_pct", chance, Unit.One, 0, method),
            ],
            slow || test is null ? answer : Sentence.Of($"{answer} {test}"),
            chosen,
            chance,
            settled ? null : next?.Drop,
            settled ? null : next?.Left,
            [
                .. Enumerable
                    .Range(0, 31)
                    .Select(i => lowest - 0.05 + ((ceiling - lowest + 0.1) * i / 30))
                    .Select(x => Sample(curve, x)),
            ]
        )
        {
            Warnings =
            [
                .. heights.Length switch
                {
                    1 => [$"Only 1 height tested: the choice leans on what is known of others."],
                    2 => [$"Only 2 heights tested: the choice leans on what is known of others."],
                    _ => (Sentence[])[],
                },
                .. slow ? (Sentence[])[$"No height had a contact under the ceiling."] : [],
            ],
            Answer = answer,
            NextTest = test,
            AllTooSlow = slow,
        };
    }

    /// <summary>
    /// The height after whose test the choice is expected to lose least (a test higher up also opens what lies below it), with the
    /// share of today's expected loss that it would leave; null when there is nothing left to gain.
    /// </summary>
    private static (double Drop, double Left)? Next(
        PeakedCurve curve,
        double lowest,
        double highest,
        double ceiling,
        double limit
    )
    {
        double today = Places(lowest, Math.Min(highest, limit))
            .Append(lowest)
            .Min(h => curve.ExpectedLoss(h, lowest, limit));
        if (today < NothingToGain)
        {
            return null;
        }

        (double Drop, double Left)? best = null;
        foreach (double place in Places(Lowest, ceiling))
        {
            double[] places = [.. Places(lowest, Math.Min(Math.Max(highest, place), limit)).Append(lowest)];
            double left = Math.Clamp(
                curve.LossAfter(place, CurveNumbers.TrialsOfATest, places, lowest, limit) / today,
                0,
                1
            );
            if (best is null || left < best.Value.Left - 1e-6)
            {
                best = (place, left);
            }
        }

        return best;
    }

    internal static IEnumerable<double> Places(double from, double to)
    {
        for (int i = (int)Math.Ceiling((from / Grid) - 1e-9); i * Grid <= to + 1e-9; i++)
        {
            yield return Math.Round(i * Grid, 2);
        }
    }

    private static CurveSample Sample(PeakedCurve curve, double x)
    {
        (double mean, double sd) = curve.At(x);
        return new(x, mean, Math.Max(0, mean - (1.96 * sd)), mean + (1.96 * sd));
    }
}
