using Jumpwright.Quantities;

namespace Jumpwright.Calculators;

/// <summary>Refuses input outside of what can be meant, with a sentence that says what was given and what is expected.</summary>
internal static class Input
{
    /// <summary>Null when the value is inside; else the refusal.</summary>
    internal static Refusal? Outside(Sentence what, double value, double from, double to, string unit) =>
        double.IsFinite(value) && value >= from && value <= to
            ? null
            : (double.IsNaN(value), unit.Length == 0) switch
            {
                (true, true) => Refusal.Of(
                    $"{what} is not given, or is no number: between {from:0.###} and {to:0.###} is expected."
                ),
                (true, false) => Refusal.Of(
                    $"{what} is not given, or is no number: between {from:0.###} and {to:0.###} {Said(unit)} is expected."
                ),
                (false, true) => Refusal.Of(
                    $"{what} is given as {value:0.###}: between {from:0.###} and {to:0.###} is expected. Check what was typed."
                ),
                _ => Refusal.Of(
                    $"{what} is given as {value:0.###} {Said(unit)}: between {from:0.###} and {to:0.###} {Said(unit)} is expected. Measure it again, or check the unit."
                ),
            };

    /// <summary>A hip higher or lower than any is on a body so tall is a slip of the tape; one not measured is none.</summary>
    internal static Refusal? HipHeight(double? hipHeightM, double statureM) =>
        hipHeightM is { } hip ? Outside($"Hip height", hip, 0.45 * statureM, 0.60 * statureM, "m") : null;

    /// <summary>The first that refuses, or null.</summary>
    internal static Refusal? First(params ReadOnlySpan<Refusal?> refusals)
    {
        foreach (Refusal? refusal in refusals)
        {
            if (refusal is not null)
            {
                return refusal;
            }
        }

        return null;
    }

    /// <summary>As it was typed in, so in SI whoever reads it.</summary>
    private static Sentence Said(string unit) =>
        unit switch
        {
            "body weights" => $"body weights",
            "trials" => $"trials",
            "units" => $"units",
            _ => Sentence.Of($"{unit}"),
        };
}
