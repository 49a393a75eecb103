using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>
/// The three questions on top of every card and what each answer does. The bounds of the first are a setting; sources draw the free
/// zone to 2 or 3 of 10 and stop above 5 (Silbernagel et al. 2007). Bone pain has no acceptable number (common practice).
/// </summary>
public static class CardQuestions
{
    /// <summary>Pain of 10 up to which work goes on as planned.</summary>
    public static readonly Coefficient GoOn = new(
        "card-pain-go-on",
        2,
        Unit.One,
        null,
        Bibliography.Get("silbernagel-2007")
    );

    /// <summary>Pain of 10 above which everything stops.</summary>
    public static readonly Coefficient StopAbove = new(
        "card-pain-stop-above",
        5,
        Unit.One,
        null,
        Bibliography.Get("silbernagel-2007")
    );

    public static ImmutableArray<CardQuestion> All { get; } =
    [
        new(
            $"Pain today? Where, and how much from 0 to 10?",
            [$"Where", $"0 to 10"],
            [
                new($"0 to {GoOn.Value:0}", $"go on."),
                new(
                    $"{GoOn.Value + 1:0} to {StopAbove.Value:0}",
                    $"do only the 'instead' of each exercise; stop that too if it gets worse. Tell the coach."
                ),
                new($"More than {StopAbove.Value:0}", $"stop. No jumps today. Tell the coach."),
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
