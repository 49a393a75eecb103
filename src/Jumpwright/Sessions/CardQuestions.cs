using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Plans;
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

    /// <summary>The questions for those items: what an answer allows is no more than the items' own stop rules do.</summary>
    /// <param name="items">What is planned.</param>
    /// <param name="catalogue">Where an easier exercise must stand to be named instead.</param>
    internal static ImmutableArray<CardQuestion> For(ImmutableArray<PlannedItem> items, Catalogue catalogue) =>
        [
            new($"Pain today? Where, and how much from 0 to 10?", [$"Where", $"0 to 10"], Pain(items, catalogue)),
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

    /// <summary>Pain of 10 above which everything stops for somebody with those items.</summary>
    public static double StopAboveFor(ImmutableArray<PlannedItem> items) => GoOnFor(items) < 1 ? 0 : StopAbove.Value;

    /// <summary>Pain of 10 up to which work goes on: the setting's, or less where an item stops at less.</summary>
    private static double GoOnFor(ImmutableArray<PlannedItem> items) =>
        items.Select(i => Math.Floor(i.Dose.Stop.PainDuringAbove)).Append(GoOn.Value).Min();

    private static ImmutableArray<CardAnswer> Pain(ImmutableArray<PlannedItem> items, Catalogue catalogue)
    {
        double goOn = GoOnFor(items);
        if (goOn < 1)
        {
            return
            [
                new($"None", $"go on."),
                new($"Any, whatever the number", $"stop. No jumps today. Tell the coach."),
            ];
        }

        bool leavesSomething = items.Any(i => i.Dose.ReplacesIfSore is { } id && catalogue.Find(id) is not null);
        return
        [
            new($"Any pain in the shin bone or a foot bone", $"stop, whatever the number. Tell the coach."),
            new($"Elsewhere 0 to {goOn:0}", $"go on."),
            new(
                $"{goOn + 1:0} to {StopAbove.Value:0}",
                leavesSomething
                    ? Sentence.Of(
                        $"do only the 'instead' of each exercise; stop that too if it gets worse. Tell the coach."
                    )
                    : Sentence.Of($"leave every exercise out: today there is nothing to do instead. Tell the coach.")
            ),
            new($"More than {StopAbove.Value:0}", $"stop. No jumps today. Tell the coach."),
        ];
    }
}
