using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Gains;

/// <summary>
/// Effects that our literature notes hold with a number on that outcome; nothing else gets centimetres. Intervals are the source's
/// (a 95 % interval is 3.92 standard uncertainties); where it gives none, the note says how the doubt was got.
/// </summary>
public static class PublishedEffects
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<PublishedEffect> All { get; } =
    [
        new(
            "plyometrics-standing",
            Quality.StretchShortening,
            ChosenOutcome.StandingJump,
            true,
            8.7,
            (10.4 - 7.0) / 3.92,
            Bibliography.Get("markovic-2007"),
            "jump training of all kinds, 26 studies: countermovement jump +8.7 % (95 % 7.0 to 10.4)"
        ),
        new(
            "depth-jumps-standing",
            Quality.ReactiveStrength,
            ChosenOutcome.StandingJump,
            false,
            0.85,
            0.41,
            Bibliography.Get("sheppard-2016"),
            "depth jumps, 12 weeks, 16 national volleyball men in two groups: effect 0.85 of an SD (no interval published; ± 0.41 computed for a group of 8)"
        )
        {
            ExerciseId = "depth-jump",
        },
        new(
            "loaded-jumps-standing",
            Quality.Push,
            ChosenOutcome.StandingJump,
            true,
            4.4,
            1.3,
            Bibliography.Get("lindberg-2021"),
            "strength and power training, 10 weeks, 40 athletes in three groups: countermovement jump +4.3, +3.1 and +5.7 % (mean; ± their SD, no interval seen)"
        ),
        new(
            "depth-jumps-approach",
            Quality.ReactiveStrength,
            ChosenOutcome.ApproachJumpTwoFeet,
            false,
            0.73,
            0.40,
            Bibliography.Get("sheppard-2016"),
            "depth jumps, 12 weeks, the same men: spike jump, effect 0.73 of an SD (± 0.40 computed for a group of 8)"
        )
        {
            ExerciseId = "depth-jump",
        },
        new(
            "countermovement-training-approach",
            Quality.StretchShortening,
            ChosenOutcome.ApproachJumpTwoFeet,
            false,
            0.17,
            0.36,
            Bibliography.Get("sheppard-2016"),
            "countermovement-jump training, 12 weeks, the same men: spike jump, effect 0.17 of an SD (± 0.36 computed for a group of 8)"
        ),
        new(
            "plyometrics-rebound",
            Quality.StretchShortening,
            ChosenOutcome.Rebound,
            true,
            4.7,
            (8.6 - 0.8) / 3.92,
            Bibliography.Get("markovic-2007"),
            "jump training of all kinds: drop jump +4.7 % (95 % 0.8 to 8.6)"
        ),
        new(
            "depth-jumps-rebound",
            Quality.ReactiveStrength,
            ChosenOutcome.Rebound,
            false,
            1.24,
            0.47,
            Bibliography.Get("sheppard-2016"),
            "depth jumps, 12 weeks, the same men: drop jump from 35 cm, effect 1.24 of an SD (± 0.47 computed for a group of 8)"
        )
        {
            ExerciseId = "depth-jump",
        },
    ];

    /// <summary>Effects on that outcome by quality.</summary>
    public static ImmutableArray<PublishedEffect> On(ChosenOutcome outcome) =>
        [.. All.Where(e => e.Outcome == outcome)];
}
