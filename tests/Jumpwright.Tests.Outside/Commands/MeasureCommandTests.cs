using System.Text.Json.Nodes;
using Jumpwright.Quantities;
using Jumpwright.Tests.Outside.House;

namespace Jumpwright.Tests.Outside.Commands;

public class MeasureCommandTests
{
    private const string Manifest = "file,athlete,date,task,body_mass_kg,external_load_kg,drop_height_m,limb\n";

    private static readonly string Jump1 = Repository.At(
        "tests",
        "Jumpwright.Tests",
        "Data",
        "one-plate-jump",
        "jump1.csv"
    );

    [Fact]
    public async Task Folder_ManifestFirstThenByName_BadAndMissingOnesStopNothing_AndItEndsWith3()
    {
        using WorkFolder folder = Mixed();
        CommandRun run = await CommandRun.Of("measure", folder.Path, "--json");

        Assert.Equal(3, run.Exit);
        Assert.Equal(
            ["z-bad.csv", "not-there.csv", "jump.csv", "a-hops.csv"],
            run.Lines.Select(l => (string)l["file"]!)
        );
        Assert.Equal(["refused", "refused", "measured", "measured"], run.Lines.Select(l => (string)l["verdict"]!));
    }

    [Fact]
    public async Task Measured_EveryFieldOfTheContract()
    {
        using WorkFolder folder = Mixed();
        JsonObject line = (await CommandRun.Of("measure", folder.Path, "--json")).Lines[2];

        Assert.Equal(
            [
                "schema",
                "file",
                "trial",
                "sha256",
                "version",
                "task",
                "verdict",
                "reason",
                "warnings",
                "doubtful",
                "events",
                "measures",
            ],
            line.Select(p => p.Key)
        );
        Assert.Equal(1, (int)line["schema"]!);
        Assert.Equal(1, (int)line["trial"]!);
        Assert.Equal(
            Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(Jump1))),
            (string)line["sha256"]!
        );
        Assert.Equal(ProductVersion.Current, (string)line["version"]!);
        Assert.Equal("countermovement-jump", (string)line["task"]!);
        Assert.Null(line["reason"]);
        // One more swing of the force after the landing, and edges of which the last newtons were not kept (Trials/RealJumpTests).
        Assert.Equal(
            ["jump_height_m", "time_to_stabilisation_s"],
            line["doubtful"]!.AsArray().Select(name => name!.GetValue<string>())
        );
        string[] names = ["onset_s", "bottom_s", "take_off_s", "touch_down_s"];
        double[] events = [.. names.Select(n => (double)line["events"]![n]!)];
        Assert.Equal(events.Order(), events);
        JsonObject height = line["measures"]!["jump_height_m"]!.AsObject();
        Assert.Equal(["value", "unit", "standard_uncertainty", "method"], height.Select(p => p.Key));
        Assert.Equal("m", (string)height["unit"]!);
        Assert.Equal("impulse-momentum", (string)height["method"]!);
        Assert.True((double)height["standard_uncertainty"]! > 0);
    }

    [Fact]
    public async Task Refused_OneLine_WithASentence_AndNoMeasures()
    {
        using WorkFolder folder = Mixed();
        IReadOnlyList<JsonObject> lines = (await CommandRun.Of("measure", folder.Path, "--json")).Lines;

        Assert.All(
            lines.Take(2),
            line =>
            {
                Assert.EndsWith(".", (string)line["reason"]!, StringComparison.Ordinal);
                Assert.Empty(line["measures"]!.AsObject());
            }
        );
        Assert.Contains("not-there.csv", (string)lines[1]["reason"]!, StringComparison.Ordinal);
        Assert.Null(lines[1]["sha256"]);
    }

    [Fact]
    public async Task RepeatedHops_ListTheirContacts_WithTheFlightTimeIndexOfEach()
    {
        using WorkFolder folder = Mixed();
        JsonArray contacts = (await CommandRun.Of("measure", folder.Path, "--json")).Lines[3]["contacts"]!.AsArray();

        Assert.Equal(6, contacts.Count);
        Assert.Equal(["contact_s", "flight_s", "reactive_strength_index"], contacts[1]!.AsObject().Select(p => p.Key));
        // g t² / 8 over contact: 9.80665 · 0.400² / 8 / 0.180 = 1.0896 m/s.
        Assert.Equal(1.0896, (double)contacts[1]!["reactive_strength_index"]!, 3);
    }

    [Fact]
    public async Task Jobs_OneOrFour_TheSameOutput()
    {
        using WorkFolder folder = Mixed();
        string one = (await CommandRun.Of("measure", folder.Path, "--json", "--jobs", "1")).Output;
        string four = (await CommandRun.Of("measure", folder.Path, "--json", "--jobs", "4")).Output;
        Assert.Equal(one, four);
    }

    [Fact]
    public async Task RealJump_AgreesWithWhatIsKnownOfIt_AndEndsWith0()
    {
        CommandRun run = await CommandRun.Of("measure", Jump1, "--json");
        JsonNode measures = Assert.Single(run.Lines)["measures"]!;

        Assert.Equal(0, run.Exit);
        // Known of the recording (its README): flight 0.5511 s, height by flight 0.3724 m, by impulse 0.356 m.
        Assert.InRange((double)measures["flight_time_s"]!["value"]!, 0.5461, 0.5561);
        Assert.InRange((double)measures["jump_height_flight_time_m"]!["value"]!, 0.3644, 0.3804);
        Assert.InRange((double)measures["jump_height_m"]!["value"]!, 0.348, 0.364);
    }

    [Theory]
    [InlineData("measure")]
    [InlineData("measure", "there-is-no-such-path")]
    [InlineData("measure", ".", "--jobs", "none")]
    [InlineData("measure", ".", "--unknown")]
    public async Task WronglyCalled_EndsWith2_AndSaysHowToLearn_NothingOnOutput(params string[] args)
    {
        CommandRun run = await CommandRun.Of(args);
        Assert.Equal(2, run.Exit);
        Assert.Equal("", run.Output);
        Assert.NotEqual("", run.Errors);
    }

    private static WorkFolder Mixed() =>
        new WorkFolder()
            .With(
                "trials.csv",
                Manifest
                    + "z-bad.csv,a01,2026-12-01,countermovement-jump,,,,both\n"
                    + "not-there.csv,a01,2026-12-01,countermovement-jump,,,,both\n"
                    + "jump.csv,a01,2026-12-01,countermovement-jump,,,,both\n"
            )
            .With("z-bad.csv", "time_s,force_N\n0.000,700\n0.001,700\n0.002,oops\n")
            .With("jump.csv", File.ReadAllText(Jump1))
            .With(
                "a-hops.csv",
                "# task: repeated-hops\n# athlete: a01\n# date: 2026-12-01\ncontact_s,flight_s\n"
                    + "0.200,0.380\n0.180,0.400\n0.180,0.410\n0.175,0.400\n0.182,0.395\n0.190,0.390\n"
            )
            .With("athletes.csv", "id,name\na01,Somebody\n");
}
