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
            "Bound = 1.10 × the heaviest load or the fastest run-up measured for this athlete.",
            ["house-rule"],
            Sentence.Plain("No trial stands behind 110 %: it keeps a prescription near what was seen.")
        );

    /// <summary>The bound; refused when nothing was measured, and when what was asked lies above.</summary>
    public static Outcome<Bound> Of(BoundInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        (string what, string unit, double most, string measure) =
            input.Of == BoundOf.ExternalLoad
                ? ("load", "kg", 400.0, "a jump with a light bar")
                : ("run-up speed", "m/s", 11.0, "approach jumps with gates or a camera");
        if (input.Measured.IsDefaultOrEmpty)
        {
            return new Refusal(
                $"No {what} was measured for this athlete, so nothing bounds it: measure {measure} first."
            );
        }

        Refusal? bad = input.Asked is { } a ? Input.Outside($"The {what}", a, 0, most, unit) : null;
        foreach (double measured in input.Measured)
        {
            bad ??= Input.Outside($"A measured {what}", measured, 0, most, unit);
        }

        if (bad is not null)
        {
            return bad;
        }

        double highest = input.Measured.Max();
        double bound = highest * Share.Value / 100;
        if (input.Asked is { } asked && asked > bound + 1e-9)
        {
            return new Refusal(
                $"{asked:0.##} {unit} is above {Share.Value:0} % of the highest {what} measured for this athlete ({highest:0.##} {unit}): at most {bound:0.##} {unit}."
            );
        }

        return new Bound(
            Basis,
            [new("bound", bound, new Unit(unit), 0, "110 % of the highest measured")],
            Sentence.Plain($"At most {bound:0.##} {unit}: {Share.Value:0} % of the highest {what} measured ({highest:0.##} {unit}).")
        );
    }
}
