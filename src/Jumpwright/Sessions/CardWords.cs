using System.Collections.Immutable;
using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>The words of a card: numbers in cm and kg or in inches and pounds, and minutes, one short reason, one cue.</summary>
internal static class CardWords
{
    internal static readonly ImmutableArray<string> LandingLines =
    [
        "Step off the box, don't jump off it.",
        "Step down from a landing box.",
        "Land quiet, knees over feet.",
        "If unsure, one box lower.",
    ];

    internal const string StopAtOnce =
        "Stop everything and get help for: a pop you felt, a knee that locks, numbness, chest pain, feeling faint, or a knock to the head.";

    internal const string Caution =
        "Training advice, not medical advice. Local rules and licensed practice come first. Nobody is declared fit by this card.";

    private static readonly ImmutableDictionary<Quality, string> Qualities = ImmutableDictionary.CreateRange<
        Quality,
        string
    >([
        new(Quality.Landing, "landing"),
        new(Quality.AnkleStiffness, "stiff ankles"),
        new(Quality.Push, "the push"),
        new(Quality.StretchShortening, "dip and jump in one"),
        new(Quality.ReactiveStrength, "quick rebounds"),
        new(Quality.SingleLeg, "each leg by itself"),
        new(Quality.RunUp, "the run-up"),
    ]);

    internal static string Headline(ImmutableArray<PlannedItem> items, Catalogue catalogue)
    {
        string[] qualities =
        [
            .. items
                .Select(i => (Quality: catalogue.Find(i.Dose.ExerciseId)?.Trains.FirstOrDefault(), Limits: Limits(i)))
                .Where(i => i.Quality is not null)
                .GroupBy(i => i.Quality!.Value)
                // What holds the athlete back is what the session is for, before what it holds most of.
                .OrderByDescending(g => g.Any(i => i.Limits))
                .ThenByDescending(g => g.Count())
                .ThenBy(g => g.Key)
                .Take(2)
                .Select(g => Qualities[g.Key]),
        ];
        return qualities.Length == 0 ? "Today's session." : $"Today is for {string.Join(" and ", qualities)}.";
    }

    /// <summary>The plan's first reason, as far as it says what is trained; empty where it gives none.</summary>
    private static string Reason(PlannedItem item) => item.Because.IsEmpty ? "" : item.Because[0].Split(':')[0];

    /// <summary>Whether that reason is that what is trained holds the athlete back.</summary>
    private static bool Limits(PlannedItem item) => Reason(item).EndsWith(" limits", StringComparison.Ordinal);

    /// <summary>The plan's first reason said to the athlete, then what the exercise is for.</summary>
    internal static string Why(PlannedItem item, Exercise exercise)
    {
        string quality = exercise.Trains is [var first, ..] ? Qualities[first] : "this";
        string reason = Reason(item);
        string said =
            reason.EndsWith(" may limit", StringComparison.Ordinal) ? $"May be holding you back: {quality}. "
            : Limits(item) ? $"Holds you back most: {quality}. "
            : reason.EndsWith(" is kept up", StringComparison.Ordinal) ? $"Keeps up what you have: {quality}. "
            : "";
        return said + InShort(exercise.Purpose);
    }

    /// <summary>The first clause, as a sentence: what a hand-held card has room for. The catalogue keeps the whole.</summary>
    private static string InShort(string purpose)
    {
        int end = purpose.Length;
        foreach (string mark in (string[])[": ", "; ", ". "])
        {
            int at = purpose.IndexOf(mark, StringComparison.Ordinal);
            end = at > 0 ? Math.Min(end, at) : end;
        }

        return purpose[..end].TrimEnd('.') + ".";
    }

    /// <summary>The first sentences of the set-up, as many as a hand can take in.</summary>
    internal static string SetUp(Exercise exercise)
    {
        string[] sentences = exercise.SetUp.Split(". ", StringSplitOptions.RemoveEmptyEntries);
        string two = string.Join(". ", sentences.Take(2));
        return two.EndsWith('.') ? two : two + ".";
    }

    internal static string Amount(Dose dose, int sets) =>
        $"{sets} × {dose.Reps}"
        + dose.Limb switch
        {
            "each" => " each leg",
            "alternating" => ", legs in turn",
            "left" => ", left leg",
            "right" => ", right leg",
            _ => "",
        }
        + (dose.EasySets(sets) > 0 ? ", first set easy" : "");

    internal static string? HeightOrLoad(Dose dose, UnitSystem units)
    {
        List<string> parts = [];
        if (dose.DropHeightM is { } drop)
        {
            parts.Add($"step off {Height(drop, units)}");
        }

        if (dose.BoxHeightM is { } box)
        {
            parts.Add($"land on a box of {Height(box, units)}");
        }

        if (dose.ExternalLoadKg is { } load)
        {
            parts.Add($"{Load(load, units)} in all ({dose.LoadBasis})");
        }

        if (dose.RunUpSteps is { } steps)
        {
            parts.Add($"run-up of {steps} steps");
        }

        return parts.Count == 0 ? null : string.Join("; ", parts);
    }

    internal static string Rest(PlannedItem item, string? partner)
    {
        StringBuilder text = new();
        if (item.Dose.RestBetweenRepsS > 0)
        {
            text.Append(Time(item.Dose.RestBetweenRepsS)).Append(" between reps, ");
        }

        text.Append(Time(item.Dose.RestBetweenSetsS)).Append(" between sets");
        if (item.PairRole == "heavy" && item.RestInPairS is { } rest && partner is not null)
        {
            text.Append("; after each set rest ").Append(Time(rest)).Append(", then ").Append(Uncapital(partner));
        }

        return text.ToString();
    }

    /// <summary>The stop rule as the rest of a sentence that begins "Stop when".</summary>
    internal static string StopWhen(StopRule rule)
    {
        string sentence = rule.Sentence();
        return sentence["Stop when ".Length..].TrimEnd('.') + ".";
    }

    /// <summary>What is done instead at middling pain: an easier exercise, half as much, from the lowest box.</summary>
    internal static string Instead(Dose dose, int sets, Catalogue catalogue)
    {
        string when = $"at pain {CardQuestions.GoOn.Value + 1:0} to {CardQuestions.StopAbove.Value:0}: ";
        if (dose.ReplacesIfSore is not { } id || catalogue.Find(id) is not { } easier)
        {
            return when + "leave this one out";
        }

        string half =
            sets < 2 ? "half the reps"
            : sets / 2 == 1 ? "1 set"
            : $"{sets / 2} sets";
        bool raised = easier.BoxRangeM is not null || easier.DropRangeM is not null;
        return $"{when}{easier.Name}, {half}{(raised ? ", lowest box" : "")}";
    }

    private static string Height(double metres, UnitSystem units) =>
        units == UnitSystem.InchPound
            ? $"{Customary.HeightToSetIn(metres):0.#} in"
            : $"{Math.Round(100 * metres):0} cm";

    private static string Load(double kilograms, UnitSystem units) =>
        units == UnitSystem.InchPound ? $"{Customary.LoadToTakeLb(kilograms):0} lb" : $"{kilograms:0.#} kg";

    private static string Uncapital(string text) => char.ToLowerInvariant(text[0]) + text[1..];

    private static string Time(int seconds) =>
        seconds < 60 ? $"{seconds} s"
        : seconds % 60 == 0 ? $"{seconds / 60} min"
        : $"{seconds / 60} min {seconds % 60} s";
}
