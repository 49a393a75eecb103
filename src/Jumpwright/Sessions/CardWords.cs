using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Plans.Asking;
using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>The words of a card: numbers in cm and kg or in inches and pounds, and minutes, one short reason, one cue.</summary>
internal static class CardWords
{
    internal static readonly ImmutableArray<Sentence> LandingLines =
    [
        $"Step off the box, don't jump off it.",
        $"Step down from a landing box.",
        $"Land quiet, knees over feet.",
        $"If unsure, one box lower.",
    ];

    internal static readonly Sentence StopAtOnce =
        $"Stop everything and get help for: a pop you felt, a knee that locks, numbness, chest pain, feeling faint, or a knock to the head.";

    internal static readonly Sentence Caution =
        $"Training advice, not medical advice. Local rules and licensed practice come first. Nobody is declared fit by this card.";

    private static Sentence Said(Quality quality) =>
        quality switch
        {
            Quality.Landing => $"landing",
            Quality.AnkleStiffness => $"ankle spring",
            Quality.Push => $"the push",
            Quality.StretchShortening => $"dip and jump in one",
            Quality.ReactiveStrength => $"quick rebounds",
            Quality.SingleLeg => $"each leg by itself",
            Quality.RunUp => $"the run-up",
            _ => $"this",
        };

    /// <summary>What there is too little of, or too much, where the quality holds somebody back.</summary>
    private static Sentence Lack(Quality quality) =>
        quality switch
        {
            Quality.Landing => $"landings that are not clean yet",
            Quality.AnkleStiffness => $"too little spring in the ankles",
            Quality.Push => $"too little push from a standstill",
            Quality.StretchShortening => $"too little gain from the dip",
            Quality.ReactiveStrength => $"too little rebound, or too long on the ground",
            Quality.SingleLeg => $"one leg does less than the other",
            Quality.RunUp => $"too little gain from the run-up",
            _ => $"not known",
        };

    internal static Sentence Headline(ImmutableArray<PlannedItem> items, Catalogue catalogue)
    {
        Sentence[] qualities =
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
                .Select(g => Said(g.Key)),
        ];
        return qualities switch
        {
            [] => $"Today's session.",
            [var only] => $"Today is for {only}.",
            [var first, var second, ..] => $"Today is for {first} and {second}.",
        };
    }

    /// <summary>Whether the plan's first reason is that what is trained holds the athlete back.</summary>
    private static bool Limits(PlannedItem item) => WantedFor(item) is { Known: FindingVerdict.Limits };

    /// <summary>The quality for which the plan wishes it first of all; null where another reason stands first.</summary>
    private static WantedFor? WantedFor(PlannedItem item) =>
        item.Because is [{ Reason: WantedFor wanted }, ..] ? wanted : null;

    /// <summary>The plan's first reason said to the athlete, then what the exercise is for.</summary>
    internal static Sentence Why(PlannedItem item, Exercise exercise)
    {
        ExercisePurpose purpose = new(exercise);
        return WantedFor(item) switch
        {
            { Known: FindingVerdict.Limits } most => $"Holds you back: {Lack(most.Quality)}. {purpose}",
            { Known: FindingVerdict.Unclear } perhaps => $"May hold you back: {Lack(perhaps.Quality)}. {purpose}",
            { Known: FindingVerdict.Sound } kept => $"Keeps up what you have: {Said(kept.Quality)}. {purpose}",
            _ => $"{purpose}",
        };
    }

    /// <summary>The first sentences of the set-up, as many as a hand can take in.</summary>
    internal static string SetUp(string whole)
    {
        string[] sentences = whole.Split(". ", StringSplitOptions.RemoveEmptyEntries);
        string two = string.Join(". ", sentences.Take(2));
        return two.EndsWith('.') ? two : two + ".";
    }

    internal static Sentence Amount(Dose dose, int sets)
    {
        Sentence amount = OfSets(dose, sets);
        return dose.EasySets(sets) > 0 ? Sentence.Of($"{amount}, first set easy") : amount;
    }

    /// <summary>Sets × reps, and the leg.</summary>
    private static Sentence OfSets(Dose dose, int sets) =>
        dose.Limb switch
        {
            "each" => $"{sets} × {dose.Reps} each leg",
            "alternating" => $"{sets} × {dose.Reps}, legs in turn",
            "left" => $"{sets} × {dose.Reps}, left leg",
            "right" => $"{sets} × {dose.Reps}, right leg",
            _ => $"{sets} × {dose.Reps}",
        };

    /// <summary>What is set up for it, and how high or heavy.</summary>
    /// <param name="dose">The dose.</param>
    /// <param name="brief">Without why the load is what it is.</param>
    internal static Sentence? HeightOrLoad(Dose dose, bool brief = false)
    {
        List<Sentence> parts = [];
        if (dose.DropHeightM is { } drop)
        {
            parts.Add($"step off {new HeightToSet(drop)}");
        }

        if (dose.BoxHeightM is { } box)
        {
            parts.Add($"land on a box of {new HeightToSet(box)}");
        }

        if (dose.ExternalLoadKg is { } load)
        {
            Sentence taken = $"{new LoadToTake(load)} in all";
            parts.Add(brief ? taken : Sentence.Of($"{taken} ({dose.LoadBasis})"));
        }

        if (dose.RunUpSteps is { } steps)
        {
            parts.Add($"run-up of {steps} steps");
        }

        return parts.Count == 0 ? null : Sentence.Join("; ", parts);
    }

    internal static Sentence Rest(PlannedItem item, Exercise? partner)
    {
        string sets = Time(item.Dose.RestBetweenSetsS);
        Sentence rest =
            item.Dose.RestBetweenRepsS > 0
                ? Sentence.Of($"{Time(item.Dose.RestBetweenRepsS)} between reps, {sets} between sets")
                : Sentence.Of($"{sets} between sets");
        return item.PairRole == "heavy" && item.RestInPairS is { } inPair && partner is not null
            ? Sentence.Of($"{rest}; after each set rest {Time(inPair)}, then {partner.Said:small}")
            : rest;
    }

    /// <summary>The stop rule as the rest of a sentence that begins "Stop when".</summary>
    internal static Sentence StopWhen(StopRule rule) => $"{rule.When()}.";

    /// <summary>What ends the exercise beside its dose's rule; empty where the catalogue says that the rule says the same in numbers.</summary>
    internal static string OwnStop(Exercise exercise) => exercise.HasOwnStop ? exercise.StopRule : "";

    /// <summary>What is done instead at middling pain: an easier exercise with its own dose, of half as many sets, as briefly as a card has room for.</summary>
    internal static Sentence Instead(Dose dose, int sets, Catalogue catalogue)
    {
        if (dose.Stop.PainDuringAbove < 1)
        {
            return $"at any pain: stop, nothing stands instead";
        }

        double from = Math.Min(CardQuestions.GoOn.Value, Math.Floor(dose.Stop.PainDuringAbove)) + 1;
        double to = CardQuestions.StopAbove.Value;
        if (dose.InsteadOf(sets) is not { } easier || catalogue.Find(easier.Dose.ExerciseId) is not { } exercise)
        {
            return $"at pain {from:0} to {to:0}: leave this one out";
        }

        Dose its = easier.Dose;
        Sentence how = Sentence.Join(
            ", ",
            new Sentence?[]
            {
                OfSets(its, easier.Sets),
                its.DropHeightM is { } drop ? Sentence.Of($"step off {new HeightToSet(drop)}") : null,
                its.BoxHeightM is { } box ? Sentence.Of($"box {new HeightToSet(box)}") : null,
                its.ExternalLoadKg is { } load ? Sentence.Of($"{new LoadToTake(load)} in all") : null,
                its.RestBetweenRepsS > 0 ? Sentence.Of($"{Time(its.RestBetweenRepsS)} between reps") : null,
                Sentence.Of($"rest {Time(its.RestBetweenSetsS)}"),
            }.OfType<Sentence>()
        );
        return $"at pain {from:0} to {to:0}: {exercise.Said}, {how}";
    }

    private static string Time(int seconds) =>
        seconds < 60 ? $"{seconds} s"
        : seconds % 60 == 0 ? $"{seconds / 60} min"
        : $"{seconds / 60} min {seconds % 60} s";
}
