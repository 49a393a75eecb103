using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Bounding;

/// <summary>Load and run-up speed: at most 110 % of the highest measured for the athlete.</summary>
public static class Bounds
{
    /// <summary>Of the highest measured.</summary>
    public static Coefficient Share { get; } =
        new("bound-of-highest-measured", 110, Unit.Percent, null, Bibliography.Get("house-rule"));

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "bound",
            "How far above what was measured",
            $"Bound = 1.10 × the heaviest load or the fastest run-up measured for this athlete.",
            ["house-rule"],
            $"No trial stands behind 110 %: it keeps a prescription near what was seen."
        );

    /// <summary>The bound; refused when nothing was measured, and when what was asked lies above.</summary>
    public static Outcome<Bound> Of(BoundInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        bool load = input.Of == BoundOf.ExternalLoad;
        (string unit, double most) = load ? ("kg", 400.0) : ("m/s", 11.0);
        if (input.Measured.IsDefaultOrEmpty)
        {
            return load
                ? Refusal.Of(
                    $"No load was measured for this athlete, so nothing bounds it: measure a jump with a light bar first."
                )
                : Refusal.Of(
                    $"No run-up speed was measured for this athlete, so nothing bounds it: measure approach jumps with gates or a camera first."
                );
        }

        Refusal? bad = input.Asked is { } a
            ? Input.Outside(load ? Sentence.Of($"The load") : Sentence.Of($"The run-up speed"), a, 0, most, unit)
            : null;
        foreach (double measured in input.Measured)
        {
            bad ??= Input.Outside(
                load ? Sentence.Of($"A measured load") : Sentence.Of($"A measured run-up speed"),
                measured,
                0,
                most,
                unit
            );
        }

        if (bad is not null)
        {
            return bad;
        }

        double highest = input.Measured.Max();
        double bound = highest * Share.Value / 100;
        if (input.Asked is { } asked && asked > bound + 1e-9)
        {
            return Refusal.Of(
                $"{Amount(asked)} is above {Share.Value:0} % of the highest measured for this athlete ({Amount(highest)}): at most {Amount(bound)}."
            );
        }

        return new Bound(
            Basis,
            [new("bound", bound, new Unit(unit), 0, "110 % of the highest measured")],
            $"At most {Amount(bound)}: {Share.Value:0} % of the highest measured ({Amount(highest)})."
        );

        Sentence Amount(double value) =>
            load ? Sentence.Of($"{new Mass(value):0.## kg}") : Sentence.Of($"{value:0.##} m/s");
    }
}
