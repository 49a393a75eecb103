using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.Deciding;

/// <summary>How many more trials?</summary>
public static class TrialsNeeded
{
    /// <summary>More than this in one go is another test, not more trials.</summary>
    public const int Most = 12;

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "more-trials",
            "How many more trials",
            $"Certainty = Φ(|mean − threshold| / √(trial SD² / n + shared SD²)); the fewest further trials for which it reaches what is wished, if the mean stays where it is.",
            ["swinton-2018", "hopkins-2000", "house-rule"],
            $"The mean will not stay where it is: half of the time the answer comes sooner, half later. Trials of one day share that day. Stop when fatigue shows."
        );

    /// <summary>The number; refused for input that can't be meant.</summary>
    public static Outcome<MoreTrials> Of(MoreTrialsInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Refusal? bad = Input.First(
            Input.Outside($"The mean", input.Value, -1e6, 1e6, input.Unit),
            Input.Outside($"The threshold", input.Threshold, -1e6, 1e6, input.Unit),
            Input.Outside($"Trials so far", input.Trials, 1, 1000, "trials"),
            input.TrialSd is 0
                ? Refusal.Of(
                    $"The trial-to-trial SD is given as 0, but no two trials are alike: take it from this athlete's own trials."
                )
                : null,
            Input.Outside($"The trial-to-trial SD", input.TrialSd, 1e-9, 1e6, input.Unit),
            Input.Outside($"The shared SD", input.SharedSd, 0, 1e6, input.Unit),
            Input.Outside($"The confidence", input.Wished, 0.5, 0.999, "")
        );
        if (bad is not null)
        {
            return bad;
        }

        double now = Certainty(input, 0);
        int? more = null;
        for (int n = 0; n <= Most && more is null; n++)
        {
            more = Certainty(input, n) >= input.Wished ? n : null;
        }

        double then = Certainty(input, more ?? Most);
        double best = Likelihood.Above(Math.Abs(input.Value - input.Threshold), input.SharedSd, 0);
        Sentence side = input.Value >= input.Threshold ? Sentence.Of($"above") : Sentence.Of($"below");
        const string method = "normal, mean stays";
        return new MoreTrials(
            Basis,
            [
                new("certainty_now", now, Unit.One, 0, method),
                new("more_trials", more ?? Most, Unit.One, 0, method),
                new("certainty_then", then, Unit.One, 0, method),
            ],
            more switch
            {
                0 =>
                    $"Settled: {side} {input.Threshold:0.###} {input.Unit} with a certainty of {Probability.Said(now)}; no more trials are needed.",
                { } n =>
                    $"{Trials(n)} would settle it at {input.Wished:0.00} if the mean stays at {input.Value:0.###} {input.Unit} (now {now:0.00} {side}).",
                null when best < input.Wished =>
                    $"No number of trials of this day settles it: the device or the day alone leave {best:0.00}. Test on another day or with another device.",
                _ =>
                    $"Not settled by {Most} more trials ({then:0.00}): it lies too near {input.Threshold:0.###} {input.Unit}. Decide on the careful side, or test another way.",
            },
            more
        )
        {
            NextTest = more is > 0 and var wanted
                ? Sentence.Of($"{Trials(wanted)} of the same test, same device.")
                : null,
        };
    }

    private static Sentence Trials(int more) =>
        more == 1 ? Sentence.Of($"1 more trial") : Sentence.Of($"{more} more trials");

    private static double Certainty(MoreTrialsInput input, int more) =>
        Likelihood.Above(
            Math.Abs(input.Value - input.Threshold),
            Math.Sqrt((input.TrialSd * input.TrialSd / (input.Trials + more)) + (input.SharedSd * input.SharedSd)),
            0
        );
}
