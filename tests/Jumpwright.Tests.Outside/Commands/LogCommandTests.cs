namespace Jumpwright.Tests.Outside.Commands;

/// <summary>What was really done, taken in from a CSV and held against the plan.</summary>
public class LogCommandTests
{
    private const string Header =
        "athlete,date,session,exercise,sets,reps,contacts,landing_faults,pain_during,pain_next_morning,effort_rpe,set,session_minutes\n";

    private const string Yaml =
        "name: Two of Us\ntime_zone: Europe/Paris\nkit:\n  - {id: plyo-box, count: 1}\nwindows:\n"
        + "  - {day: monday, start: \"17:00\", minutes: 45}\n  - {day: thursday, start: \"17:00\", minutes: 45}\n";

    private const string Athletes =
        "id,name,birth_date,sex,body_mass_kg,stature_m,sport,level,operation_date,operation_site,operation_side,note\n"
        + "a01,Ada Example,2000-01-01,female,66,1.75,volleyball,beginner,,,,\n"
        + "a02,Bo Example,2001-01-01,male,80,1.85,volleyball,beginner,,,,\n";

    private const string Symptoms =
        "athlete,date,site,side,tissue,named_by,kind,when,score_0_10,note\n"
        + "a01,2027-01-03,none,,,,pain,rest,0,\na02,2027-01-03,none,,,,pain,rest,0,\n";

    [Fact]
    public async Task Add_ALog_RowsThatCanBeReadGoIn_TheOthersAreNamed_TwiceChangesNothing()
    {
        using WorkFolder folder = Squad()
            .With(
                "monday.csv",
                Header
                    + "a01,2027-01-04,2027-01-04-pm,snap-down,3,4,12,0,0,1,4,,45\n"
                    + "a02,2027-01-04,2027-01-04-pm,snap-down,3,4,12,0,hurts,1,4,,45\n"
                    + "a09,2027-01-04,2027-01-04-pm,snap-down,3,4,12,0,0,1,4,,45\n"
                    + "a02,2027-01-04,2027-01-04-pm,moon-jump,3,4,12,0,0,1,4,,45\n"
            );
        CommandRun first = await CommandRun.Of("log", folder.Path, "--add", folder.At("monday.csv"));

        Assert.Equal(3, first.Exit);
        Assert.Contains("2 rows added to completed.csv, 2 not added", first.Output, StringComparison.Ordinal);
        Assert.Contains("monday.csv line 3", first.Errors, StringComparison.Ordinal);
        Assert.Contains("a09", first.Errors, StringComparison.Ordinal);
        Assert.Contains("'moon-jump' is no exercise", first.Errors, StringComparison.Ordinal);
        string after = await File.ReadAllTextAsync(folder.At("completed.csv"), TestContext.Current.CancellationToken);
        Assert.Equal(3, after.TrimEnd().Split('\n').Length);

        CommandRun second = await CommandRun.Of("log", folder.Path, "--add", folder.At("monday.csv"));
        Assert.Contains("0 rows added to completed.csv, 2 there already", second.Output, StringComparison.Ordinal);
        Assert.Equal(
            after,
            await File.ReadAllTextAsync(folder.At("completed.csv"), TestContext.Current.CancellationToken)
        );
    }

    [Fact]
    public async Task Add_AnotherWordForTheSameWork_IsNotAdded_NothingIsOverwritten()
    {
        using WorkFolder folder = Squad()
            .With("completed.csv", Header + "a01,2027-01-04,2027-01-04-pm,snap-down,3,4,12,0,0,1,4,,45\n")
            .With("again.csv", Header + "a01,2027-01-04,2027-01-04-pm,snap-down,3,4,12,0,0,5,4,,45\n");
        CommandRun run = await CommandRun.Of("log", folder.Path, "--add", folder.At("again.csv"));

        Assert.Equal(3, run.Exit);
        Assert.Contains("something else for the same work", run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain(
            ",5,4,,45",
            await File.ReadAllTextAsync(folder.At("completed.csv"), TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task From_LoadDoneStandsBesideLoadPlanned_StopRuleReachedIsNamed_AndTheWeeksLoad()
    {
        using WorkFolder folder = Squad()
            .With(
                "completed.csv",
                Header
                    // Every exercise that this beginner may do in that session, so that the plan's are among them.
                    + string.Concat(
                        new[]
                        {
                            "snap-down",
                            "ankle-bounce",
                            "seat-rise",
                            "low-box-jump",
                            "low-pogo",
                            "jump-and-stick",
                        }.Select(e =>
                            $"a01,2027-01-04,2027-01-04-pm,{e},1,5,5,2,0,1,6,1,45\n"
                            + $"a01,2027-01-04,2027-01-04-pm,{e},1,5,5,0,0,1,6,2,45\n"
                        )
                    )
            );
        CommandRun run = await CommandRun.Of("log", folder.Path, "--from", "2027-01-04", "--weeks", "1");

        Assert.True(run.Exit == 0, run.Errors);
        Assert.Contains("Ada Example: 60 contacts done, ", run.Output, StringComparison.Ordinal);
        Assert.Contains("Achilles ", run.Output, StringComparison.Ordinal);
        Assert.Contains("Stop rule: ", run.Output, StringComparison.Ordinal);
        Assert.Contains("2 landing faults; 2 are the limit, and it went on", run.Output, StringComparison.Ordinal);
        Assert.Contains("Bo Example: nothing logged", run.Output, StringComparison.Ordinal);
        // 6 of effort × 45 minutes; one day of seven, so monotony is 1 / √7 by the sample's deviation (Foster 2001).
        Assert.Contains("session-RPE load 270, monotony 0.4", run.Output, StringComparison.Ordinal);
        Assert.Contains("sample, n − 1", run.Output, StringComparison.Ordinal);
    }

    /// <summary>
    /// Trials of a proposed test that come by file are held against the rule of the test as it was offered before that day: what was
    /// measured on the day has answered its question since, and what was felt on it may have closed it.
    /// </summary>
    [Fact]
    public async Task From_TrialsOfATestByFile_AreHeldAgainstTheRuleOfTheTestThatWasOffered()
    {
        const string columns =
            "athlete,date,session,exercise,sets,reps,contacts,landing_faults,pain_during,pain_next_morning,effort_rpe,set,session_minutes,height_m,pain_site_new\n";
        string[] earned =
        [
            "snap-down",
            "ankle-bounce",
            "seat-rise",
            "low-box-jump",
            "low-pogo",
            "jump-and-stick",
            "low-drop-landing",
            "countermovement-jump",
            "squat-jump",
            "box-jump",
            "pogo-hop",
            "single-leg-forward-hop",
            "snap-down-to-one-leg",
            "low-hop-and-stick",
        ];
        using WorkFolder folder = Squad()
            .With(
                "completed.csv",
                columns
                    + string.Concat(
                        from day in new[] { "2026-12-22", "2026-12-26", "2026-12-30" }
                        from exercise in earned
                        select $"a01,{day},,{exercise},1,4,4,0,0,0,4,,,,\n"
                    )
            )
            .With(
                "screens.csv",
                "athlete,date,test,side,value,unit,trial,assessor,note\na01,2027-01-02,landing-screen,both,2,faults,1,coach,\n"
                    + "a01,2027-01-04,heel-raises,left,30,reps,1,coach,\na01,2027-01-04,heel-raises,right,30,reps,1,coach,\n"
            )
            .With("symptoms.csv", Symptoms + "a01,2027-01-04,knee,left,,,pain,during,3,\n")
            .With(
                "tests.csv",
                columns
                    + "a01,2027-01-04,2027-01-04-pm,squat-jump,1,1,1,0,0,0,4,1,45,0.30,\n"
                    + "a01,2027-01-04,2027-01-04-pm,squat-jump,1,1,1,0,0,0,4,2,45,0.22,\n"
                    + "a01,2027-01-04,2027-01-04-pm,squat-jump,1,1,1,0,0,0,4,3,45,0.29,\n"
                    + "a01,2027-01-04,2027-01-04-pm,low-pogo,1,1,1,0,0,0,4,1,45,,no\n"
                    + "a01,2027-01-04,2027-01-04-pm,low-pogo,1,1,1,0,1,0,4,2,45,,yes\n"
            );
        CommandRun run = await CommandRun.Of(
            "log",
            folder.Path,
            "--add",
            folder.At("tests.csv"),
            "--from",
            "2027-01-04",
            "--weeks",
            "1"
        );

        Assert.True(run.Exit == 0, run.Errors);
        Assert.Contains("5 rows added", run.Output, StringComparison.Ordinal);
        Assert.Contains(
            "Test, Squat jump, trial 2: the height fell from 30.0 to 26.0 cm, by more than 10 %, and it went on.",
            run.Output,
            StringComparison.Ordinal
        );
        Assert.Contains("Test, Low pogo hop, trial 2: it hurt in a new place.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task NeitherAddNorFrom_IsUsage()
    {
        using WorkFolder folder = Squad();
        Assert.Equal(2, (await CommandRun.Of("log", folder.Path)).Exit);
        Assert.Equal(2, (await CommandRun.Of("log", folder.Path, "--add", folder.At("nothing.csv"))).Exit);
    }

    private static WorkFolder Squad() =>
        new WorkFolder().With("squad.yaml", Yaml).With("athletes.csv", Athletes).With("symptoms.csv", Symptoms);
}
