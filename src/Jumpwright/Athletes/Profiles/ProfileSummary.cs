using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Athletes.Profiles;

/// <summary>The profile in a sentence or two: how high, what limits, how sure, and which test would settle it.</summary>
internal static class ProfileSummary
{
    internal static (Sentence Known, NamedTest? Test) Of(Known known, ImmutableArray<Finding> findings)
    {
        Sentence? height = Height(known);
        Finding[] limiting = [.. findings.Where(f => f.Verdict == FindingVerdict.Limits)];
        Finding? condition = limiting.FirstOrDefault(f => f.Quality is Quality.Landing or Quality.SingleLeg);
        Finding[] performance = [.. limiting.Where(f => f.Quality is not (Quality.Landing or Quality.SingleLeg))];
        if (findings.All(f => f.Verdict == FindingVerdict.NotTested))
        {
            Sentence test = findings[0].NextTest ?? Sentence.Of($"any test at hand");
            return (
                Joined(height, $"What limits them is not known: nothing fresh was tested."),
                NamedTest.First(findings[0].Quality, test)
            );
        }

        Finding? unclear = findings.FirstOrDefault(f => f.Verdict == FindingVerdict.Unclear);
        Sentence? first = condition is null
            ? null
            : Sentence.Of(
                $"{QualityNames.Of(condition.Quality):capital} comes first, as a condition ({Sure(condition)})."
            );
        Sentence? then = performance switch
        {
            [] when condition is not null => null,
            [] => Open(findings, unclear),
            [Finding one] => $"{QualityNames.Of(one.Quality):capital} limits them ({Sure(one)}).",
            [Finding a, Finding b, ..] when a.Probability - b.Probability < 0.15 =>
                $"{QualityNames.Of(a.Quality):capital} and {QualityNames.Of(b.Quality)} both limit them; which matters more isn't settled ({Sure(a)}; {Sure(b)}).",
            [Finding a, ..] => $"{QualityNames.Of(a.Quality):capital} limits them most ({Sure(a)}).",
        };
        bool settles = performance is [] && condition is null;
        return (
            Joined(
                height,
                first,
                then,
                performance is [] && condition is null && unclear is null ? null : Untested(findings)
            ),
            settles && unclear?.NextTest is { } next
                ? NamedTest.Settling(unclear.Quality, next)
                : ToTest(findings, settles && unclear is null)
        );
    }

    /// <summary>The test of what is said to be untested: of what guards health first, of any quality where nothing is shown to limit.</summary>
    private static NamedTest? ToTest(ImmutableArray<Finding> findings, bool ofAny) =>
        findings
            .Where(f => f is { Verdict: FindingVerdict.NotTested, NextTest: not null })
            .OrderBy(f => f.Quality is Quality.Landing or Quality.SingleLeg ? 0 : 1)
            .FirstOrDefault(f => ofAny || f.Quality is Quality.Landing or Quality.SingleLeg)
            is { NextTest: { } test } untested
            ? NamedTest.OfUntested(untested.Quality, test)
            : null;

    private static Sentence Joined(params ReadOnlySpan<Sentence?> parts)
    {
        List<Sentence> said = [];
        foreach (Sentence? part in parts)
        {
            if (part is not null)
            {
                said.Add(part);
            }
        }

        return Sentence.Join(" ", said);
    }

    private static Sentence Open(ImmutableArray<Finding> findings, Finding? unclear)
    {
        if (unclear is not null)
        {
            return $"Nothing tested is shown to limit them; {QualityNames.Of(unclear.Quality)} isn't settled.";
        }

        Sentence[] untested =
        [
            .. findings.Where(f => f.Verdict == FindingVerdict.NotTested).Select(f => QualityNames.Of(f.Quality)),
        ];
        return untested.Length == 0
            ? Sentence.Of($"Nothing tested is shown to limit them.")
            : Sentence.Of($"Nothing tested is shown to limit them; not tested: {Sentence.Join(", ", untested)}.");
    }

    /// <summary>What guards health and nobody tested is said whatever else is known: unknown closes.</summary>
    private static Sentence? Untested(ImmutableArray<Finding> findings)
    {
        Sentence[] untested =
        [
            .. findings
                .Where(f => f.Quality is Quality.Landing or Quality.SingleLeg)
                .Where(f => f.Verdict == FindingVerdict.NotTested)
                .Select(f => QualityNames.Of(f.Quality)),
        ];
        return untested.Length == 0 ? null : Sentence.Of($"Not tested: {Sentence.Join(", ", untested)}.");
    }

    private static Sentence? Height(Known known)
    {
        if (StandingJump.Of(known.Current) is { } height)
        {
            Sentence how = $"{new SaidMethod(height.Measure.Method)}, {Spoken.Device(height.Device)}, {height.Date}";
            return known.IsFresh(height.Date)
                ? Sentence.Of($"Jumps {Spoken.Of(height.Measure)} ({how}).")
                : Sentence.Of($"Jumps {Spoken.Of(height.Measure)} ({how}, out of date).");
        }

        Evidence? touch = known.Screen("best-touch", Side.Both, "m", ReachUncertaintyM);
        Evidence? reach = known.Screen("standing-reach", Side.Both, "m", ReachUncertaintyM);
        return touch is null || reach is null
            ? null
            : Sentence.Of(
                $"Jumps {Spoken.Cm(touch.Measure.Value - reach.Measure.Value, Math.Sqrt(2) * ReachUncertaintyM)} by reach ({touch.Date}; arm and trunk are in it)."
            );
    }

    /// <summary>What a reach to a wall or vane may be off by, m; common practice.</summary>
    private const double ReachUncertaintyM = 0.015;

    private static Sentence Sure(Finding finding) =>
        $"{Spoken.Chance(finding.Probability ?? 0)}, {Probability.Said(finding.Probability ?? 0)}";
}
