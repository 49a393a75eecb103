using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Responses;

/// <summary>
/// The two-component model of training: one part that lasts, one that tires. It teaches why a hard week is followed by a worse
/// day and later by a better one; it plans nothing and decides nothing here.
/// </summary>
public static class TrainingResponses
{
    private const string Method = "two-component model, for teaching";

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "training-response",
            "Why the good day comes later (for teaching)",
            $"p(t) = p0 + k1 Σ w e^(−(t − i) / τ1) − k2 Σ w e^(−(t − i) / τ2). After one load the best day is τ1 τ2 / (τ1 − τ2) · ln(k2 τ1 / (k1 τ2)).",
            ["banister-1975", "house-rule"],
            $"Its four numbers can't be told apart from one athlete's data (ill-conditioned), so that quite different sets fit alike. A picture for teaching: no session, dose or taper of this program comes from it."
        );

    /// <summary>The modelled response; refused where the numbers can't be meant.</summary>
    public static Outcome<TrainingResponse> Of(ResponseInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        ImmutableArray<double> loads = input.DailyLoad.IsDefault ? [] : input.DailyLoad;
        Refusal? bad = Input.First(
            Input.Outside($"The day", input.Day, 0, 730, "d"),
            Input.Outside($"The slow time constant", input.SlowDays, 5, 120, "d"),
            Input.Outside($"The fast time constant", input.FastDays, 1, 60, "d"),
            Input.Outside($"The weight of what lasts", input.Gain, 0.001, 100, ""),
            Input.Outside($"The weight of what tires", input.Tiring, 0.001, 100, "")
        );
        foreach (double load in loads)
        {
            bad ??= Input.Outside($"A day's load", load, 0, 5000, "units");
        }

        if (bad is not null)
        {
            return bad;
        }

        if (loads.IsEmpty)
        {
            return Refusal.Of($"No load was given: write each day's load from the first day on, rest days as 0.");
        }

        if (input.FastDays >= input.SlowDays)
        {
            return Refusal.Of(
                $"What tires must fade faster than what lasts: {input.FastDays:0.#} d is not below {input.SlowDays:0.#} d."
            );
        }

        double lasting = 0;
        double tiring = 0;
        for (int i = 0; i < loads.Length && i <= input.Day; i++)
        {
            lasting += loads[i] * Math.Exp(-(input.Day - i) / input.SlowDays);
            tiring += loads[i] * Math.Exp(-(input.Day - i) / input.FastDays);
        }

        double response = input.Start + (input.Gain * lasting) - (input.Tiring * tiring);
        double peak =
            input.SlowDays
            * input.FastDays
            / (input.SlowDays - input.FastDays)
            * Math.Log(input.Tiring * input.SlowDays / (input.Gain * input.FastDays));
        return new TrainingResponse(
            Basis,
            [
                new("modelled_response", response, Unit.One, Math.Abs(response), Method),
                new("peak_after_one_load_d", peak, new Unit("d"), Math.Abs(peak) / 2, Method),
            ],
            $"With these numbers the model stands at {response:0.0} on day {input.Day}; after one load it is best after {peak:0.0} days. That is a picture, not this athlete."
        )
        {
            Warnings = [$"No ± of these numbers is known for one athlete; the one given says only that it is wide."],
            NextTest = $"Watch the athlete's own level instead: the trend shows what really followed a hard week.",
        };
    }
}
