using System.CommandLine;
using Jumpwright.App.Desk;
using Jumpwright.App.Settings;
using Jumpwright.Paper;
using NodaTime;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright cards SQUAD</c>: plans, and prints a card for every athlete and session, and the coach's sheets.</summary>
internal sealed class CardsCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                (
                    "jumpwright cards club --from 2027-01-04",
                    "writes one PDF an athlete and session, and the coach's sheets, into ./cards"
                ),
            ],
            [
                (ExitCodes.Done, "the cards are written"),
                (ExitCodes.Usage, "not understood, or there is no SQUAD there"),
                (ExitCodes.SomeRefused, "the squad can't be planned; the sentence says why and what to do"),
                (ExitCodes.NoPlan, "there is no plan, so there are no cards"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        Argument<string> squad = SquadArgument.Squad();
        Option<LocalDate> from = SquadArgument.From();
        Option<int> weeks = SquadArgument.Weeks(required: false);
        var into = new Option<string>("--out")
        {
            Description = "Folder for the PDFs.",
            HelpName = "DIR",
            DefaultValueFactory = _ => "cards",
        };
        var paper = new Option<CardPaper>("--paper")
        {
            Description = "Paper of the cards: a5, a4 or letter.",
            HelpName = "PAPER",
            DefaultValueFactory = _ => CardPaper.A5,
        };
        var command = new Command(
            "cards",
            "Plans as 'plan' does and writes what is printed: a card an athlete and session, and a coach's sheet a session. "
                + "Cards are A5 (and keep inside half a Letter sheet) unless --paper says otherwise. A card is valid on its day only. "
                + "They speak the language and units set in the squad's pages; English and metric where none are."
        )
        {
            squad,
            from,
            weeks,
            into,
            paper,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                using OpenedSquad opened = await SquadArgument.Open(terminal, parsed.GetRequiredValue(squad), cancel);
                if (await PlanCommand.Found(terminal, opened.Material, parsed, from, weeks, cancel) is not { } week)
                {
                    return ExitCodes.NoPlan;
                }

                string folder = parsed.GetRequiredValue(into);
                int written = await WorkProgress.Of(
                    terminal,
                    "Drawing cards",
                    week.Cards.Length + week.Sheets.Length,
                    step =>
                        Task.Run(
                            () =>
                                CardFiles.Write(
                                    week,
                                    opened.Material,
                                    SettingsFile.For(opened).Now,
                                    folder,
                                    parsed.GetValue(paper),
                                    step,
                                    cancel
                                ),
                            cancel
                        )
                );
                terminal.Out.WriteLine($"{written} PDFs in {folder}");
                return ExitCodes.Done;
            }
        );
        return command;
    }
}
