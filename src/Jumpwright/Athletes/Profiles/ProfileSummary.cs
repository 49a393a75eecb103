using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>The profile in a sentence or two: how high, what limits, how sure, and which test would settle it.</summary>
internal static class ProfileSummary
{
    private static readonly ImmutableDictionary<Quality, string> Words = ImmutableDictionary.CreateRange<
        Quality,
        string
    >([
        new(Quality.Landing, "landing"),
        new(Quality.AnkleStiffness, "ankle stiffness"),
        new(Quality.Push, "the push from stillness"),
        new(Quality.StretchShortening, "use of the dip"),
        new(Quality.ReactiveStrength, "reactive strength"),
        new(Quality.SingleLeg, "left and right alike"),
        new(Quality.RunUp, "use of the run-up"),
    ]);

    internal static string Of(Known known, ImmutableArray<Finding> findings)
    {
        string height = Height(known);
        Finding[] limiting = [.. findings.Where(f => f.Verdict == FindingVerdict.Limits)];
        Finding? condition = limiting.FirstOrDefault(f => f.Quality is Quality.Landing or Quality.SingleLeg);
        Finding[] performance = [.. limiting.Where(f => f.Quality is not (Quality.Landing or Quality.SingleLeg))];
        if (findings.All(f => f.Verdict == FindingVerdict.NotTested))
        {
            return $"{height}What limits them is not known: nothing fresh was tested. First: {Uncapital(findings[0].NextTest)}.";
        }

        string first = condition is null
            ? ""
            : $"{Capital(Words[condition.Quality])} comes first, as a condition ({Sure(condition)}). ";
        string then = performance switch
        {
            [] when condition is not null => "",
            [] => Open(findings),
            [Finding one] => $"{Capital(Words[one.Quality])} limits them ({Sure(one)}).",
            [Finding a, Finding b, ..] when a.Probability - b.Probability < 0.15 =>
                $"{Capital(Words[a.Quality])} and {Words[b.Quality]} both limit them; which matters more isn't settled ({Sure(a)}, {Sure(b)}).",
            [Finding a, ..] => $"{Capital(Words[a.Quality])} limits them most ({Sure(a)}).",
        };
        return (height + first + then).TrimEnd();
    }

    private static string Open(ImmutableArray<Finding> findings)
    {
        Finding? unclear = findings.FirstOrDefault(f => f.Verdict == FindingVerdict.Unclear);
        if (unclear is not null)
        {
            return $"Nothing tested is shown to limit them; {Words[unclear.Quality]} isn't settled. {unclear.NextTest}.";
        }

        string[] untested =
        [
            .. findings.Where(f => f.Verdict == FindingVerdict.NotTested).Select(f => Words[f.Quality]),
        ];
        return untested.Length == 0
            ? "Nothing tested is shown to limit them."
            : $"Nothing tested is shown to limit them; not tested: {string.Join(", ", untested)}.";
    }

    private static string Height(Known known)
    {
        Evidence? height =
            known.Find(MeasureNames.JumpHeight, JumpTask.CountermovementJump)
            ?? known.Find(MeasureNames.JumpHeightFlightTime, JumpTask.CountermovementJump);
        if (height is not null)
        {
            return $"Jumps {Spoken.Of(height.Measure)} ({height.Measure.Method}, {Spoken.Device(height.Device)}, {Day.Of(height.Date)}{(known.IsFresh(height.Date) ? "" : ", out of date")}). ";
        }

        Evidence? touch = known.Screen("best-touch", Side.Both, "m", ReachUncertaintyM);
        Evidence? reach = known.Screen("standing-reach", Side.Both, "m", ReachUncertaintyM);
        return touch is null || reach is null
            ? ""
            : $"Jumps {Spoken.Cm(touch.Measure.Value - reach.Measure.Value, Math.Sqrt(2) * ReachUncertaintyM)} by reach ({Day.Of(touch.Date)}; arm and trunk are in it). ";
    }

    /// <summary>What a reach to a wall or vane may be off by, m; common practice.</summary>
    private const double ReachUncertaintyM = 0.015;

    private static string Sure(Finding finding) =>
        $"{Spoken.Chance(finding.Probability ?? 0)}, {Probability.Said(finding.Probability ?? 0)}";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Uncapital(string? text) =>
        string.IsNullOrEmpty(text) ? "any test at hand" : char.ToLowerInvariant(text[0]) + text[1..];
}
