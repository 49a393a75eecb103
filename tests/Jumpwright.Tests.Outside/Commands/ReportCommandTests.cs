using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Jumpwright.Tests.Outside.Paper;

namespace Jumpwright.Tests.Outside.Commands;

public class ReportCommandTests
{
    [Fact]
    public async Task Report_OfASquad_WritesPdfsAndPlots_TheSameBytesTwice()
    {
        using WorkFolder folder = Squad();
        CommandRun run = await CommandRun.Of("report", folder.Path, "--out", folder.At("out"));
        Assert.True(run.Exit == 0, run.Errors);
        Assert.True(File.Exists(folder.At("out/squad.pdf")));
        Assert.True(File.Exists(folder.At("out/a01-drop-height.svg")));
        Assert.True(File.Exists(folder.At("out/a01-drop-height.png")));
        CardText text = CardText.Read(File.ReadAllBytes(folder.At("out/a01.pdf")));
        Assert.True(text.Says("Train from"));
        Assert.True(text.Says("clears nobody"));

        CommandRun again = await CommandRun.Of("report", folder.Path, "--athlete", "a01", "--out", folder.At("again"));
        Assert.True(again.Exit == 0, again.Errors);
        Assert.False(File.Exists(folder.At("again/squad.pdf")));
        Assert.Equal(File.ReadAllBytes(folder.At("out/a01.pdf")), File.ReadAllBytes(folder.At("again/a01.pdf")));
    }

    [Fact]
    public async Task Report_UnknownAthleteOrDay_IsUsage()
    {
        using WorkFolder folder = Squad();
        Assert.Equal(
            2,
            (await CommandRun.Of("report", folder.Path, "--athlete", "nobody", "--out", folder.At("x"))).Exit
        );
        Assert.Equal(2, (await CommandRun.Of("report", folder.Path, "--as-of", "soon", "--out", folder.At("x"))).Exit);
    }

    /// <summary>
    /// From files to what a program reads: noise of the squad's own trials, at most three watched measures an athlete, the alarm
    /// where somebody really rose, curves with source and dispute, and tests with their stop rules as data.
    /// </summary>
    [Fact]
    public async Task ReportJson_OfASquadFolder_HoldsNoiseChangeCurvesAndTests()
    {
        using WorkFolder folder = Season();
        CommandRun run = await CommandRun.Of("report", folder.Path, "--json");
        Assert.True(run.Exit == 0, run.Errors);
        JsonNode[] athletes =
        [
            .. run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonNode.Parse(line)!),
        ];
        Assert.Equal(6, athletes.Length);
        foreach (JsonNode athlete in athletes)
        {
            JsonNode[] trends = [.. athlete["trends"]!.AsArray().Select(t => t!)];
            Assert.InRange(trends.Count(t => (bool)t["watched"]!), 1, 3);

            // One line holds one measure, method and device, and its squad's noise.
            Assert.Equal(
                trends.Length,
                trends
                    .Select(t =>
                        (
                            (string)t["measure"]!,
                            (string)t["task"]!,
                            (string)t["method"]!,
                            (string)t["device"]!,
                            (double?)t["condition"]
                        )
                    )
                    .Distinct()
                    .Count()
            );
            JsonNode height = trends.Single(t =>
                (string)t["measure"]! == "jump_height_flight_time_m" && (string)t["task"]! == "countermovement-jump"
            );
            Assert.InRange((double)height["icc_1_1"]!, 0.5, 1);
            Assert.True((double)height["typical_error"]! > 0);
            Assert.Equal(
                1.96 * Math.Sqrt(2) * (double)height["typical_error"]!,
                (double)height["detectable_change_95"]!,
                1e-9
            );
        }

        JsonNode risen = athletes.Single(a => (string)a["athlete"]! == "a03");
        Assert.NotEmpty(Watched(risen).SelectMany(t => t["alarms"]!.AsArray()));
        Assert.Contains(Watched(risen), t => (double)t["chance_rose"]! > 0.9);
        Assert.Equal(1, athletes.Count(a => Watched(a).Any(t => t["alarms"]!.AsArray().Count > 0)));

        JsonNode first = athletes[0];
        string[] curves = [.. first["curves"]!.AsArray().Select(c => (string)c!["id"]!)];
        Assert.Contains("load-curve", curves);
        Assert.Contains("load-velocity", curves);
        Assert.Contains("run-up", curves);
        Assert.All(
            first["curves"]!.AsArray(),
            c =>
            {
                Assert.NotEmpty(c!["sources"]!.AsArray());
                Assert.NotEmpty((string)c["dispute"]!);
                Assert.NotEmpty((string)c["formula"]!);
                Assert.All(c["values"]!.AsObject(), v => Assert.True((double)v.Value!["standard_uncertainty"]! >= 0));
            }
        );
        Assert.All(
            first["next_tests"]!.AsArray().Where(t => (bool)t!["offered"]!),
            t => Assert.NotEmpty(t!["stop"]!["words"]!.AsArray())
        );
        Assert.Contains(first["next_tests"]!.AsArray(), t => (string)t!["question"]! == "run-up speed");

        CommandRun pages = await CommandRun.Of("report", folder.Path, "--athlete", "a01", "--out", folder.At("out"));
        Assert.True(pages.Exit == 0, pages.Errors);
        foreach (
            string plot in (string[])["load-velocity-at-take-off", "load-height", "pull-velocity", "run-up-two-feet"]
        )
        {
            Assert.True(File.Exists(folder.At($"out/a01-{plot}.svg")), plot);
        }

        static IEnumerable<JsonNode> Watched(JsonNode athlete) =>
            athlete["trends"]!.AsArray().Select(t => t!).Where(t => (bool)t["watched"]!);
    }

    /// <summary>Six athletes, ten weeks of jumps on a mat; the third rises by 7 cm in the last three. The first lifts and runs up too.</summary>
    private static WorkFolder Season()
    {
        var folder = new WorkFolder();
        var trials = new StringBuilder("file,athlete,date,task,body_mass_kg,external_load_kg,drop_height_m,limb\n");
        var athletes = new StringBuilder(
            "id,name,birth_date,sex,body_mass_kg,stature_m,sport,level,operation_date,operation_site,operation_side,note\n"
        );
        var random = new Random(3);
        int number = 0;
        void Jump(string athlete, DateOnly day, string task, double heightM, string load)
        {
            string name = $"r{number++:000}.csv";
            double flight = Math.Sqrt(8 * heightM / 9.81);
            folder.With("recordings/" + name, FormattableString.Invariant($"contact_s,flight_s\n,{flight:0.0000}\n"));
            trials.Append(
                CultureInfo.InvariantCulture,
                $"recordings/{name},{athlete},{day:yyyy-MM-dd},{task},70,{load},,both\n"
            );
        }

        for (int a = 1; a <= 6; a++)
        {
            athletes.Append(
                CultureInfo.InvariantCulture,
                $"a{a:00},Athlete {a},2000-01-01,female,70,1.75,volleyball,intermediate,,,,\n"
            );
            for (int week = 0; week < 10; week++)
            {
                for (int t = 0; t < 3; t++)
                {
                    double rise = a == 3 && week >= 7 ? 0.07 : 0;
                    Jump(
                        $"a{a:00}",
                        new DateOnly(2026, 10, 5).AddDays(7 * week),
                        "countermovement-jump",
                        0.28 + (0.03 * a) + rise + (0.008 * (random.NextDouble() - 0.5)),
                        ""
                    );
                }
            }
        }

        var last = new DateOnly(2026, 12, 7);
        foreach ((double load, double height) in ((double, double)[])[(0, 0.30), (15, 0.24), (30, 0.19)])
        {
            for (int t = 0; t < 3; t++)
            {
                Jump(
                    "a01",
                    last,
                    "loaded-jump",
                    height + (0.006 * t),
                    load.ToString("0", CultureInfo.InvariantCulture)
                );
            }
        }

        var screens = new StringBuilder("athlete,date,test,side,value,unit,trial,assessor,note\n");
        void Screen(string test, string side, double value, string unit, int trial) =>
            screens.Append(
                CultureInfo.InvariantCulture,
                $"a01,2026-12-07,{test},{side},{value},{unit},{trial},coach,\n"
            );
        Screen("standing-reach", "", 2.20, "m", 1);
        Screen("best-touch", "", 2.55, "m", 1);
        for (int i = 0; i < 6; i++)
        {
            Screen("run-up-speed", "both", 2 + (0.4 * i), "m/s", i + 1);
            Screen("run-up-touch", "both", 2.60 + (0.03 * i) - (0.004 * i * i), "m", i + 1);
        }

        foreach (
            (double load, double speed, int trial) in ((double, double, int)[])
                [(60, 0.95, 1), (80, 0.78, 2), (100, 0.61, 3)]
        )
        {
            Screen("hex-bar-load", "", load, "kg", trial);
            Screen("hex-bar-velocity", "", speed, "m/s", trial);
        }

        return folder
            .With("trials.csv", trials.ToString())
            .With("screens.csv", screens.ToString())
            .With("athletes.csv", athletes.ToString())
            .With(
                "squad.yaml",
                "name: Six of Us\ntime_zone: Europe/Paris\nkit:\n  - {id: run-up-lane, count: 1}\n  - {id: hex-bar, count: 1}\nwindows:\n  - {day: monday, start: \"17:00\", minutes: 45}\n"
            );
    }

    private static WorkFolder Squad()
    {
        var folder = new WorkFolder();
        var trials = new StringBuilder("file,athlete,date,task,body_mass_kg,external_load_kg,drop_height_m,limb\n");
        int number = 0;
        foreach ((double box, double flight) in new[] { (0.2, 0.47), (0.3, 0.49), (0.4, 0.50) })
        {
            for (int t = 0; t < 3; t++)
            {
                string name = $"d{number++:00}.csv";
                folder.With(
                    "recordings/" + name,
                    $"contact_s,flight_s\n,0.300\n0.2{t}0,{flight + (0.004 * t):0.000}\n"
                );
                trials.Append($"recordings/{name},a01,2026-12-{10 + number / 4:00},drop-jump,66,,{box:0.0},both\n");
            }
        }

        return folder
            .With("trials.csv", trials.ToString())
            .With(
                "squad.yaml",
                "name: Two of Us\ntime_zone: Europe/Paris\nkit: []\nwindows:\n  - {day: monday, start: \"17:00\", minutes: 45}\n"
            )
            .With(
                "athletes.csv",
                "id,name,birth_date,sex,body_mass_kg,stature_m,sport,level,operation_date,operation_site,operation_side,note\n"
                    + "a01,Ada Example,2000-01-01,female,66,1.75,volleyball,beginner,,,,\n"
            );
    }
}
