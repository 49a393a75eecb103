using System.Collections.Immutable;
using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.Tests.Outside.Paper;

/// <summary>Cards written by hand, so that paper is tested apart from planning.</summary>
internal static class HandMadeCards
{
    public static readonly CardItem SnapDown = new(
        "snap-down",
        "Snap-down",
        $"Landing: you learn to catch yourself quickly and quietly.",
        "Stand tall on your toes, arms up, free space around you.",
        "Drop fast, stop still.",
        $"3 × 5",
        null,
        $"10 s between reps, 1 min between sets",
        $"two landings go wrong, pain goes above 2, or pain comes in a new place",
        "Stop the set at the second loud or uneven landing.",
        $"at pain 3 to 5: leave this one out",
        3,
        15
    );

    public static readonly CardItem PogoHops = new(
        "pogo-hops",
        "Pogo hops",
        $"Ankle stiffness: contact was 0.212 ± 0.006 s, short contacts come first.",
        "Flat hard floor, hands on hips, feet under hips.",
        "The floor is hot.",
        $"3 × 10",
        null,
        $"1 min 30 s between sets",
        $"contact feels long or slow (10 % longer), two landings go wrong, pain goes above 2, or pain comes in a new place",
        "Stop the set when heels touch or the rhythm slows.",
        $"at pain 3 to 5: Snap-down, 1 × 5",
        3,
        30
    );

    public static readonly CardItem DepthJump = new(
        "depth-jump",
        "Depth jump",
        $"Reactive strength: index 1.62 ± 0.05 m/s, floor jumps are owned.",
        "Box of 30 cm on a rubber mat, wall 2 m away.",
        "Off the floor at once.",
        $"3 × 5",
        $"step off 30 cm",
        $"8 s between reps, 2 min 30 s between sets",
        $"the jump is 10 % lower than your best, two landings go wrong, pain goes above 2, or pain comes in a new place",
        "Stop when height falls by 10 %, contact grows by 10 % or a landing has a fault; if unsure, one box lower.",
        $"at pain 3 to 5: Box jump, 1 × 5, box 30 cm, rest 2 min",
        3,
        30
    );

    public static readonly CardItem HexBarJump = new(
        "hex-bar-jump",
        "Light hex-bar jump",
        $"Push: squat jump and countermovement jump are close.",
        "Hex bar on blocks, bumper plates, free space for the landing.",
        "Push the floor away.",
        $"4 × 3",
        $"hex bar 25 kg in all (about 20 % of your body mass)",
        $"3 min after the heavy pull, then jump; 2 min between sets",
        $"the jump is 10 % lower than your best, pain goes above 2, or pain comes in a new place",
        "Stop when the jump is visibly lower than the first, or a landing has a fault.",
        $"at pain 3 to 5: Jump from a seat to a box, 2 × 3, box 40 cm",
        4,
        12
    );

    public static readonly SessionCard Ordinary = Of("Ada Lindqvist", PogoHops, DepthJump, HexBarJump);

    public static SessionCard Of(string name, params CardItem[] items) =>
        new(
            "a01",
            name,
            new LocalDate(2027, 1, 5),
            "2027-01-05-pm",
            new LocalTime(17, 0),
            $"Today is for stiffer ankles and a quicker push.",
            null,
            Questions,
            [.. items],
            items.Sum(i => i.Contacts),
            [
                $"Step off the box, don't jump off it.",
                $"Step down from a landing box.",
                $"Land quiet, knees over feet.",
                $"If unsure, one box lower.",
            ],
            $"Stop everything and get help for: a pop you felt, a knee that locks, numbness, chest pain, feeling faint, or a knock to the head.",
            $"Training advice, not medical advice. Local rules and licensed practice come first. Nobody is declared fit by this card.",
            $"Made by Jumpwright 0.1.0: plan from {new LocalDate(2027, 1, 4)}, session on {new LocalDate(2027, 1, 5)} at {new LocalTime(17, 0):HH:mm}"
        );

    public static readonly SessionCard Nothing = Of("Bo Quist") with
    {
        NothingPlanned =
            $"After an operation jumps are planned only from a written permission, and there is none for this day. Ask the surgeon or physiotherapist who looks after you, and show it to your coach.",
        Headline = $"No jumps today.",
        Questions = [],
        TotalContacts = 0,
    };

    public static readonly SessionCard Worst = Of(
        "Maximiliane-Wilhelmine von Hohenlohe-Schillingsfürst-Waldenburg de la Cruz y Fernández",
        [
            .. Enumerable
                .Range(1, 7)
                .Select(i =>
                    HexBarJump with
                    {
                        Name =
                            $"{i} Continuous rear-foot-elevated single-leg jump with a supercalifragilisticexpialidociousantidisestablishmentarianismword",
                        Sets = i,
                        Dose = $"{i} × 3 each leg",
                    }
                ),
        ]
    );

    private static ImmutableArray<CardQuestion> Questions =>
        [
            new(
                $"Pain today? Where, and how much from 0 to 10?",
                [$"Where", $"0 to 10"],
                [
                    new($"0 to 2", $"go on."),
                    new($"3 to 5", $"do the 'instead' items and half the sets. Tell the coach."),
                    new($"More than 5", $"stop. No jumps today. Tell the coach."),
                    new($"Any pain in the shin bone or a foot bone", $"stop, whatever the number. Tell the coach."),
                ]
            ),
            new(
                $"Worse than yesterday morning?",
                [],
                [new($"No", $"go on."), new($"Yes", $"no jumps today. Tell the coach.")]
            ),
            new(
                $"Swelling, or does something give way?",
                [],
                [new($"No", $"go on."), new($"Yes", $"no jumps. See a clinician first (doctor or physiotherapist).")]
            ),
        ];
}
