using System.CommandLine;
using Jumpwright.App.Contracts;
using Jumpwright.App.Desk;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright plan SQUAD</c>: the squad's weeks, proven, or the requirements that collide (contracts §3).</summary>
internal sealed class PlanCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                ("jumpwright plan club --from 2027-01-04 --weeks 1", "plans one week and prints it with its reasons"),
                (
                    "jumpwright plan club --from 2027-01-04 --weeks 1 --json > plan.json",
                    "the same as one JSON object for other programs"
                ),
            ],
            [
                (ExitCodes.Done, "a plan that keeps every hard limit"),
                (ExitCodes.Usage, "not understood, or there is no SQUAD there"),
                (ExitCodes.SomeRefused, "the squad can't be planned; the sentence says why and what to do"),
                (
                    ExitCodes.NoPlan,
                    "no plan: proven impossible (status infeasible), or none found in time (none-found)"
                ),
            ]
        );

    public Command Build(Terminal terminal)
    {
        Argument<string> squad = SquadArgument.Squad();
        Option<NodaTime.LocalDate> from = SquadArgument.From();
        Option<int> weeks = SquadArgument.Weeks(required: true);
        var json = new Option<bool>("--json") { Description = "One JSON object on standard output." };
        var seconds = new Option<double?>("--seconds")
        {
            Description =
                "As much work as two free cores do in so long, 1 to 3600; a busy machine takes longer. Work is counted, so "
                + "that the same squad gives the same plan on every run, unless one question to the solver takes all of it.",
            HelpName = "S",
        };
        seconds.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && result.GetValueOrDefault<double?>() is not (>= 1 and <= 3600))
            {
                result.AddError("--seconds takes a number from 1 to 3600.");
            }
        });
        var command = new Command(
            "plan",
            "Plans a squad's jump training inside every hard limit, and says how near the plan is to the best possible, "
                + "why each item stands there, and what forbids what was wished and left out."
        )
        {
            squad,
            from,
            weeks,
            json,
            seconds,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                using OpenedSquad opened = await SquadArgument.Open(terminal, parsed.GetRequiredValue(squad), cancel);
                SolveBudget? budget = parsed.GetValue(seconds) is { } s
                    ? new SolveBudget { DeterministicTime = s, WallSeconds = s }
                    : null;
                PlannedWeek week = await Planned(
                    terminal,
                    opened.Material,
                    parsed.GetValue(from),
                    parsed.GetValue(weeks),
                    budget,
                    cancel
                );
                if (parsed.GetValue(json))
                {
                    terminal.Out.WriteLine(PlanJson.Write(week.Plan));
                }
                else
                {
                    PlanText.Write(week, opened.Material, terminal.Out);
                }

                return ExitOf(week.Plan);
            }
        );
        return command;
    }

    /// <summary>Plans, telling how far it is.</summary>
    /// <exception cref="RefusedException">Nothing could be asked of the planner.</exception>
    public static async Task<PlannedWeek> Planned(
        Terminal terminal,
        SquadMaterial material,
        NodaTime.LocalDate from,
        int weeks,
        SolveBudget? budget,
        CancellationToken cancel
    )
    {
        Outcome<PlannedWeek> planned = await WorkProgress.InWords(
            terminal,
            "Planning",
            progress => Bookkeeping.Plan(material, material.Catalogue, from, weeks, budget, progress, cancel)
        );
        return planned.TryGet(out PlannedWeek? week, out Refusal? refusal) ? week : throw new RefusedException(refusal);
    }

    /// <summary>The planned weeks of a command that needs a plan; null where there is none, which is then told on the error stream.</summary>
    /// <exception cref="RefusedException">Nothing could be asked of the planner.</exception>
    public static async Task<PlannedWeek?> Found(
        Terminal terminal,
        SquadMaterial material,
        ParseResult parsed,
        Option<NodaTime.LocalDate> from,
        Option<int> weeks,
        CancellationToken cancel
    )
    {
        PlannedWeek week = await Planned(
            terminal,
            material,
            parsed.GetValue(from),
            parsed.GetValue(weeks),
            null,
            cancel
        );
        if (ExitOf(week.Plan) == ExitCodes.Done)
        {
            return week;
        }

        PlanText.Write(week, material, terminal.Error);
        return null;
    }

    /// <summary>0 with a plan, 4 without.</summary>
    public static int ExitOf(Plan plan) =>
        plan.Status is PlanStatus.Optimal or PlanStatus.Feasible ? ExitCodes.Done : ExitCodes.NoPlan;
}
