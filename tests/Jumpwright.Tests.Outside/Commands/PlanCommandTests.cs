using System.Text.Json.Nodes;

namespace Jumpwright.Tests.Outside.Commands;

public class PlanCommandTests
{
    private const string Yaml =
        "name: Two of Us\ntime_zone: Europe/Paris\nkit:\n  - {id: plyo-box, count: 1}\nwindows:\n"
        + "  - {day: monday, start: \"17:00\", minutes: 45}\n  - {day: thursday, start: \"17:00\", minutes: 45}\n";

    private const string Athletes =
        "id,name,birth_date,sex,body_mass_kg,stature_m,sport,level,operation_date,operation_site,operation_side,note\n"
        + "a01,Ada Example,2000-01-01,female,66,1.75,volleyball,beginner,,,,\n"
        + "a02,Bo Example,2001-01-01,male,80,1.85,volleyball,beginner,2026-11-01,knee,left,\n";

    [Fact]
    public async Task Json_EveryFieldOfTheContract_WhatDoesNotApplyIsNull()
    {
        using WorkFolder folder = Squad();
        CommandRun run = await Plan(folder.Path, "--json");
        Assert.True(run.Exit == 0, run.Errors);
        JsonObject plan = JsonNode.Parse(run.Output)!.AsObject();

        Assert.Equal(
            [
                "schema",
                "version",
                "status",
                "objective",
                "best_bound",
                "objective_empty",
                "gap",
                "seconds",
                "sessions",
                "unmet",
                "collisions",
                "overrides",
                "limits",
                // Ours, beyond the contract: what else has to be said of the plan.
                "remarks",
            ],
            plan.Select(p => p.Key)
        );
        Assert.Contains((string)plan["status"]!, new[] { "optimal", "feasible" });
        Assert.True((double)plan["objective"]! <= (double)plan["best_bound"]! + 1e-6);
        JsonObject session = plan["sessions"]![0]!.AsObject();
        Assert.Equal(["id", "date", "start", "minutes", "athletes", "rotation"], session.Select(p => p.Key));
        Assert.Equal("2027-01-04", (string)session["date"]!);
        Assert.Equal("17:00", (string)session["start"]!);
        JsonObject item = session["athletes"]![0]!["items"]![0]!.AsObject();
        Assert.Equal(
            [
                "exercise",
                "sets",
                "reps",
                "contacts_per_rep",
                "contacts",
                "limb",
                "start",
                "arms",
                "intent",
                "drop_height_m",
                "expected_drop_height_m",
                "box_height_m",
                "external_load_kg",
                "load_basis",
                "band_tension_standing_N",
                "band_tension_apex_N",
                "run_up_steps",
                "run_up_speed_m_s",
                "rest_between_reps_s",
                "rest_between_sets_s",
                "pair",
                "pair_role",
                "rest_in_pair_s",
                "high_intensity",
                "because",
                "stop_when",
                "replaces_if_sore",
                "stop",
                "easy_sets",
            ],
            item.Select(p => p.Key)
        );
        Assert.Equal(
            ["height_loss_pct", "contact_gain_pct", "landing_faults", "pain_during_above", "pain_site_new"],
            item["stop"]!.AsObject().Select(p => p.Key)
        );
        int legs = (string)item["limb"]! == "each" ? 2 : 1;
        Assert.Equal(
            (int)item["sets"]! * (int)item["reps"]! * (int)item["contacts_per_rep"]! * legs,
            (int)item["contacts"]!
        );
    }

    [Fact]
    public async Task OperatedWithoutAWrittenRestriction_NothingIsPlanned_AndThatIsSaid()
    {
        using WorkFolder folder = Squad();
        JsonObject plan = JsonNode.Parse((await Plan(folder.Path, "--json")).Output)!.AsObject();

        Assert.DoesNotContain(
            "a02",
            plan["sessions"]!
                .AsArray()
                .SelectMany(s => s!["athletes"]!.AsArray())
                .Where(a => a!["items"]!.AsArray().Count > 0)
                .Select(a => (string)a!["athlete"]!)
        );
        Assert.Contains("a02", plan["unmet"]!.AsArray().Select(u => (string)u!["athlete"]!));
    }

    [Fact]
    public async Task FolderAndStore_TheSamePlan()
    {
        using WorkFolder folder = Squad();
        string store = folder.At("two.db");
        CommandRun import = await CommandRun.Of("import", folder.Path, "--store", store);
        Assert.True(import.Exit == 0, import.Errors);

        Assert.Equal(
            WithoutSeconds((await Plan(folder.Path, "--json")).Output),
            WithoutSeconds((await Plan(store, "--json")).Output)
        );
    }

    [Theory]
    [InlineData(2, "--from", "yesterday", "--weeks", "1")]
    [InlineData(2, "--from", "2027-01-04", "--weeks", "0")]
    [InlineData(2, "--weeks", "1")]
    public async Task WronglyCalled_EndsWith2(int exit, params string[] options)
    {
        using WorkFolder folder = Squad();
        CommandRun run = await CommandRun.Of(["plan", folder.Path, .. options]);
        Assert.Equal(exit, run.Exit);
        Assert.Equal("", run.Output);
    }

    [Fact]
    public async Task FolderThatIsNoSquad_EndsWith3_WithASentence()
    {
        using var empty = new WorkFolder();
        CommandRun run = await Plan(empty.Path);
        Assert.Equal(3, run.Exit);
        Assert.Equal("", run.Output);
        Assert.EndsWith(".\n", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cards_OneAnAthleteAndSession_AndASheetASession()
    {
        using WorkFolder folder = Squad();
        string cards = folder.At("cards");
        CommandRun run = await CommandRun.Of("cards", folder.Path, "--from", "2027-01-04", "--out", cards);
        Assert.True(run.Exit == 0, run.Errors);
        string[] files = [.. Directory.EnumerateFiles(cards).Select(f => Path.GetFileName(f)!)];

        Assert.Equal(2, files.Count(f => f.EndsWith("_coach.pdf", StringComparison.Ordinal)));
        Assert.Equal(2, files.Count(f => f.EndsWith("-a01.pdf", StringComparison.Ordinal)));
        Assert.Equal(2, files.Count(f => f.EndsWith("-a02.pdf", StringComparison.Ordinal)));
    }

    private static Task<CommandRun> Plan(string squad, params string[] more) =>
        CommandRun.Of(["plan", squad, "--from", "2027-01-04", "--weeks", "1", .. more]);

    private static string WithoutSeconds(string json)
    {
        JsonObject plan = JsonNode.Parse(json)!.AsObject();
        plan.Remove("seconds");
        return plan.ToJsonString();
    }

    private static WorkFolder Squad() => new WorkFolder().With("squad.yaml", Yaml).With("athletes.csv", Athletes);
}
