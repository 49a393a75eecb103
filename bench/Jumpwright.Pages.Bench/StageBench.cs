using System.Diagnostics;
using System.Globalization;
using System.IO.Pipelines;
using Jumpwright.App.Api;
using Jumpwright.App.Contracts;
using Jumpwright.App.Desk;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Paper;
using Jumpwright.Prescribing.Change;
using Jumpwright.Prescribing.Reports;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Pages.Bench;

/// <summary>Processor time of what stands behind a page, stage by stage, in this process and one athlete after the other.</summary>
internal static class StageBench
{
    public static void Run(string folder, int athletes, TextWriter to)
    {
        OpenedSquad? opened = null;
        Time("open", 1, to, _ => opened = OpenedSquad.AtOnce(folder, null, CancellationToken.None).Require());
        SquadMaterial material = opened!.Material;
        Catalogue catalogue = material.Catalogue;
        HashSet<string> ids = [.. catalogue.Exercises.Select(e => e.Id)];
        Dossier[] some = [.. material.Dossiers.Take(athletes)];
        History[] histories = [.. material.Dossiers.Select(d => d.Bare)];
        Profile[] profiles = new Profile[some.Length];
        Time("read trials", some.Length, to, i => histories[i] = some[i].History);
        Time("profile", some.Length, to, i => profiles[i] = Profiling.Of(histories[i], LargeSquad.Day));
        Time("ladder", some.Length, to, i => Ladders.For(profiles[i], histories[i], catalogue, LargeSquad.Day));
        Time("rules", some.Length, to, i => SafetyRules.For(histories[i], LargeSquad.Day, ids));
        SquadTrends? trends = null;
        Time(
            "noise of all read",
            1,
            to,
            _ => trends = Changes.InSquad(histories, LargeSquad.Day, ChangeOptions.From(material.Squad.Policy))
        );
        Time("trends", some.Length, to, i => trends!.Of(some[i].Athlete.Id));
        Dictionary<string, Profile> all = histories
            .Zip(profiles)
            .ToDictionary(p => p.First.Athlete.Id, p => p.Second, StringComparer.Ordinal);
        Report[] reports = new Report[some.Length];
        Time(
            "trends and report",
            some.Length,
            to,
            i =>
                reports[i] = Reporting.InWords(
                    Reporting.OfAthlete(
                        material.Squad,
                        histories[i],
                        all,
                        catalogue,
                        trends!.Of(histories[i].Athlete.Id),
                        LargeSquad.Day
                    ),
                    LargeSquad.Day
                )
        );
        Time(
            "report's pictures",
            some.Length,
            to,
            i =>
            {
                foreach (ReportPlot plot in reports[i].Sections.SelectMany(s => s.Plots).DistinctBy(p => p.Name))
                {
                    ReportPdf.Svg(plot);
                }
            }
        );
        var pictures = new PictureBook(material);
        Time("last jump read", some.Length, to, i => pictures.Of(some[i].Athlete.Id, LargeSquad.Day));
        Time(
            "last jump drawn",
            some.Length,
            to,
            i => _ = pictures.Of(some[i].Athlete.Id, LargeSquad.Day).LastJump?.Svg
        );
        Time(
            "API, trials",
            some.Length,
            to,
            i => Written(to => new TrialWriter().Write(histories[i].Trials, to, CancellationToken.None))
        );
        Time(
            "API, FHIR",
            some.Length,
            to,
            i => Written(to => new FhirWriter().Write(histories[i].Trials, to, CancellationToken.None))
        );
        opened.Dispose();
    }

    private static void Written(Func<PipeWriter, Task> write)
    {
        PipeWriter to = PipeWriter.Create(Stream.Null);
        write(to).Wait();
        to.Complete();
    }

    private static void Time(string stage, int times, TextWriter to, Action<int> work)
    {
        TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
        for (int i = 0; i < times; i++)
        {
            work(i);
        }

        TimeSpan took = Process.GetCurrentProcess().TotalProcessorTime - before;
        to.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"| {stage} | {took.TotalMilliseconds / times:0.0} |")
        );
    }
}
