using System.CommandLine;
using System.Text;
using Jumpwright.App.Desk;
using Jumpwright.Storage.Folders.Calendars;
using NodaTime;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright calendar SQUAD</c>: the planned sessions as iCalendar, for the calendars people already look at.</summary>
internal sealed class CalendarCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                (
                    "jumpwright calendar club --from 2027-01-04 --weeks 4",
                    "plans, and writes the sessions into ./sessions.ics"
                ),
                (
                    "jumpwright calendar club --from 2027-01-04 --athlete a01 --out a01.ics",
                    "only the sessions in which a01 has something to do"
                ),
            ],
            [
                (ExitCodes.Done, "the calendar is written"),
                (ExitCodes.Usage, "not understood, no SQUAD there, or no such athlete"),
                (ExitCodes.SomeRefused, "the squad can't be planned; the sentence says why and what to do"),
                (ExitCodes.NoPlan, "there is no plan, so there is no calendar"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        Argument<string> squad = SquadArgument.Squad();
        Option<LocalDate> from = SquadArgument.From();
        Option<int> weeks = SquadArgument.Weeks(required: false);
        var athlete = new Option<string?>("--athlete")
        {
            Description = "Only this athlete's sessions.",
            HelpName = "ID",
        };
        var into = new Option<string>("--out")
        {
            Description = "The file.",
            HelpName = "FILE",
            DefaultValueFactory = _ => "sessions.ics",
        };
        var command = new Command(
            "calendar",
            "Plans as 'plan' does and writes the sessions as iCalendar. An event says when and how long; what anybody does, and "
                + "why, stays on cards and sheets, since calendars often lie with others."
        )
        {
            squad,
            from,
            weeks,
            athlete,
            into,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                using OpenedSquad opened = await SquadArgument.Open(terminal, parsed.GetRequiredValue(squad), cancel);
                string? only = parsed.GetValue(athlete);
                if (only is not null && opened.Material.Histories.All(h => h.Athlete.Id != only))
                {
                    throw new UsageException($"There is no athlete '{only}' in this squad.");
                }

                if (await PlanCommand.Found(terminal, opened.Material, parsed, from, weeks, cancel) is not { } week)
                {
                    return ExitCodes.NoPlan;
                }

                string file = parsed.GetRequiredValue(into);
                string text = SessionsCalendar.Write(week.Plan, week.Request, opened.Material.Squad.Name, only);
                await File.WriteAllTextAsync(file, text, new UTF8Encoding(false), cancel);
                int sessions = SessionsCalendar.SessionsOf(week.Plan, only).Length;
                terminal.Out.WriteLine($"{sessions} {(sessions == 1 ? "session" : "sessions")} in {file}");
                return ExitCodes.Done;
            }
        );
        return command;
    }
}
