using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Makes a finding from a probability: limits, sound, or honestly unclear.</summary>
internal static class Verdicts
{
    internal static Finding From(
        Quality quality,
        double limits,
        bool guardsHealth,
        string what,
        string nextTest,
        Coefficient threshold,
        params ImmutableArray<Evidence> evidence
    )
    {
        double soundBelow = 1 - (guardsHealth ? ProfileLimits.SureOfHealth : ProfileLimits.Sure).Value;
        FindingVerdict verdict =
            limits >= ProfileLimits.Sure.Value ? FindingVerdict.Limits
            : limits <= soundBelow ? FindingVerdict.Sound
            : FindingVerdict.Unclear;
        string said = verdict switch
        {
            FindingVerdict.Limits => $"{what} That this holds them back is {Spoken.Chance(limits)} ({limits:0.00}).",
            FindingVerdict.Sound => $"{what} That this holds them back is {Spoken.Chance(limits)} ({limits:0.00}).",
            _ => $"{what} Not settled: {limits:0.00} that it holds them back.",
        };
        return new Finding(
            quality,
            verdict,
            limits,
            said,
            verdict == FindingVerdict.Unclear ? "More trials of " + nextTest : null,
            evidence,
            threshold.Source
        );
    }

    internal static Finding NotTested(Quality quality, string nextTest, Coefficient threshold) =>
        new(quality, FindingVerdict.NotTested, null, "Not tested.", Capital(nextTest), [], threshold.Source);

    internal static Finding Stale(Quality quality, Known known, string nextTest, Coefficient threshold, Evidence old) =>
        new(
            quality,
            FindingVerdict.NotTested,
            null,
            $"Last tested {Spoken.Day(old.Date)} ({Spoken.Of(old.Measure)}): older than {known.FreshDays} days, so it counts as not tested.",
            Capital(nextTest),
            [old],
            threshold.Source
        );

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
