using System.Collections.Immutable;
using Jumpwright.Calculators;
using Jumpwright.Quantities;

namespace Jumpwright.App.Kit;

/// <summary>What a calculator's page shows.</summary>
/// <param name="Verdict">Whether the set-up holds, in words, first on the page; null where a calculator only gives numbers.</param>
/// <param name="Checks">Each condition; empty where a calculator has none.</param>
/// <param name="Result">The numbers.</param>
/// <param name="Picture">The set-up drawn to scale, as SVG.</param>
/// <param name="Caption">The same in a sentence.</param>
public sealed record KitAnswer(
    string? Verdict,
    ImmutableArray<Check> Checks,
    Calculation Result,
    string Picture,
    string Caption
)
{
    /// <summary>What the verdict rests on, in the core's own sentences; null where it says all itself.</summary>
    public Sentence? Because { get; init; }
}
