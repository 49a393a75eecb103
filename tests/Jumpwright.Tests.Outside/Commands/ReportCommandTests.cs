using System.Text;
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
