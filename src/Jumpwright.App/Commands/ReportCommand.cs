using System.Collections.Immutable;
using System.CommandLine;
using Jumpwright.App.Contracts;
using Jumpwright.App.Desk;
using Jumpwright.App.Settings;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Paper;
using Jumpwright.Prescribing.Reports;
using Jumpwright.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright report SQUAD</c>: what changed, what limits whom, and which test next, in plain words with plots.</summary>
internal sealed class ReportCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                (
                    "jumpwright report club --out reports",
                    "writes the squad's report and one an athlete, with their plots"
                ),
                ("jumpwright report club --athlete a01 --out reports", "writes one athlete's"),
                ("jumpwright report club --json", "the same as data, one line an athlete"),
            ],
            [
                (ExitCodes.Done, "the reports are written"),
                (ExitCodes.Usage, "not understood, or there is no SQUAD or athlete of that name"),
                (ExitCodes.SomeRefused, "the squad can't be read; the sentence says why and what to do"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        Argument<string> squad = SquadArgument.Squad();
        var athlete = new Option<string?>("--athlete") { Description = "One athlete only.", HelpName = "ID" };
        var day = new Option<string?>("--as-of")
        {
            Description = "Only what happened up to that day counts; the last day on record if not given.",
            HelpName = "DATE",
        };
        var into = new Option<string>("--out")
        {
            Description = "Folder for the reports.",
            HelpName = "DIR",
            DefaultValueFactory = _ => "reports",
        };
        var json = new Option<bool>("--json")
        {
            Description = "Prints one JSON object an athlete instead of writing files.",
        };
        var command = new Command(
            "report",
            "Writes reports in plain words: trends with their bands, what changed and how sure, the drop height to train from, loads and run-ups, "
                + "what limits whom, and which test next. PDFs, and each plot as SVG and PNG. "
                + "They speak the language and units set in the squad's pages; English and metric where none are."
        )
        {
            squad,
            athlete,
            day,
            into,
            json,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                LocalDate? asked = null;
                if (parsed.GetValue(day) is { } text)
                {
                    asked = LocalDatePattern.Iso.Parse(text) is { Success: true } read
                        ? read.Value
                        : throw new UsageException($"--as-of takes a day such as 2027-01-04, not '{text}'.");
                }

                using OpenedSquad opened = await SquadArgument.Open(terminal, parsed.GetRequiredValue(squad), cancel);
                SquadMaterial material = opened.Material;
                if (parsed.GetValue(athlete) is { } wanted && material.Histories.All(h => h.Athlete.Id != wanted))
                {
                    throw new UsageException(
                        $"There is no athlete '{wanted}' in the squad: {string.Join(", ", material.Histories.Select(h => h.Athlete.Id))}."
                    );
                }

                LocalDate asOf = asked ?? LastDay(material.Histories);
                if (parsed.GetValue(json))
                {
                    foreach (
                        Prescription one in Reporting
                            .Prescriptions(material.Squad, material.Histories, material.Catalogue, asOf)
                            .Where(p => parsed.GetValue(athlete) is not { } id || p.History.Athlete.Id == id)
                    )
                    {
                        terminal.Out.WriteLine(ContractJson.Line(PrescriptionJson.Of(one, asOf)));
                    }

                    return ExitCodes.Done;
                }

                HouseSettings settings = SettingsFile.For(opened).Now;
                ImmutableArray<Report> reports = Reporting.Of(
                    material.Squad,
                    material.Histories,
                    material.Catalogue,
                    asOf,
                    settings.Units
                );
                string folder = parsed.GetRequiredValue(into);
                Report[] chosen = [.. reports.Where(r => parsed.GetValue(athlete) is not { } one || r.Id == one)];
                int written = await WorkProgress.Of(
                    terminal,
                    "Drawing reports",
                    chosen.Length,
                    step => Task.Run(() => Write(chosen, settings, folder, step, cancel), cancel)
                );
                terminal.Out.WriteLine($"{written} files in {folder}");
                return ExitCodes.Done;
            }
        );
        return command;
    }

    private static int Write(
        Report[] reports,
        HouseSettings settings,
        string folder,
        Action step,
        CancellationToken cancel
    )
    {
        Speech.Use(Speech.Standard.As(settings));
        SentenceWriter writer = SpokenSentences.Writer;
        Directory.CreateDirectory(folder);
        int written = 0;
        foreach (Report report in reports)
        {
            cancel.ThrowIfCancellationRequested();
            File.WriteAllBytes(Path.Combine(folder, report.Id + ".pdf"), ReportPdf.Render(report, writer));
            written++;
            foreach (ReportPlot plot in report.Sections.SelectMany(s => s.Plots))
            {
                Picture picture = ReportPdf.Draw(plot, writer);
                string name = Path.Combine(folder, $"{report.Id}-{plot.Name}");
                File.WriteAllText(name + ".svg", picture.Svg);
                File.WriteAllBytes(name + ".png", picture.Png);
                written += 2;
            }

            step();
        }

        return written;
    }

    private static LocalDate LastDay(IEnumerable<History> histories) =>
        histories
            .SelectMany(h =>
                h.Trials.Select(t => t.Date)
                    .Concat(h.Screens.Select(s => s.Date))
                    .Concat(h.Symptoms.Select(s => s.Date))
                    .Concat(h.Completed.Select(c => c.Date))
            )
            .DefaultIfEmpty(new LocalDate(2000, 1, 1))
            .Max();
}
