using System.Text.RegularExpressions;
using Jumpwright.App.Commands;
using Jumpwright.Exercises;
using Jumpwright.Safety;

namespace Jumpwright.Tests.Outside.Commands;

/// <summary>What a command prints is read by a coach: exercises, limits and sessions stand by name. Ids are for files and JSON.</summary>
public sealed class TerminalNamesTests
{
    [Fact]
    public async Task PlanAndLog_NameExercisesLimitsAndSessions_NeverTheirIds()
    {
        using var folder = new WorkFolder();
        DemoCommand.WriteSquad(folder.Path);
        string[] from = ["--from", "2027-01-04", "--weeks", "1", "--seconds", "1"];
        CommandRun plan = await CommandRun.Of(["plan", folder.Path, .. from]);
        Assert.True(plan.Exit == 0, plan.Errors);
        Assert.Contains("Wished and left out:", plan.Output, StringComparison.Ordinal);
        Assert.Equal([], IdsIn(plan.Output));
        Assert.DoesNotContain("2027-01-", plan.Output, StringComparison.Ordinal);
        // The restriction names what it allows as the catalogue does.
        Assert.Contains("ankle bounce on the spot", plan.Output, StringComparison.Ordinal);

        await File.AppendAllTextAsync(
            Path.Combine(folder.Path, "completed.csv"),
            "a01,2026-12-28,2026-12-28-pm,snap-down,1,4,4,3,0,0,5,,\n",
            TestContext.Current.CancellationToken
        );
        CommandRun log = await CommandRun.Of("log", folder.Path, "--from", "2026-12-28", "--weeks", "1");
        Assert.True(log.Exit == 0, log.Errors);
        Assert.Contains("Stop rule: Snap-down: 3 landing faults", log.Output, StringComparison.Ordinal);
        Assert.Equal([], IdsIn(log.Output));
        // What nobody rated is no load of nothing.
        Assert.Contains("session-RPE load not known", log.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("session-RPE load 0", log.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Catalogue_NamesExercises_AndLimitsTellTheirIdOnlyWhereItIsWritten()
    {
        CommandRun catalogue = await CommandRun.Of("catalogue");
        Assert.Equal([], IdsIn(catalogue.Output));
        Assert.All(
            Catalogue.Standard.Exercises,
            e => Assert.Contains($"  {e.Name} ", catalogue.Output, StringComparison.Ordinal)
        );
        CommandRun limits = await CommandRun.Of("limits");
        string told = string.Join(
            '\n',
            limits.Output.Split('\n').Where(l => !l.StartsWith("    In overrides.csv", StringComparison.Ordinal))
        );
        Assert.Equal([], IdsIn(told));
        Assert.Contains("Age for depth jumps: 16 y", told, StringComparison.Ordinal);
        Assert.All(
            LimitBook.Standard.All,
            l =>
                Assert.Contains(
                    $"    In overrides.csv and squad.yaml: {l.Id}\n",
                    limits.Output,
                    StringComparison.Ordinal
                )
        );
    }

    [Fact]
    public async Task Measure_SaysHowInPlainWords()
    {
        using var folder = new WorkFolder();
        DemoCommand.WriteSquad(folder.Path);
        CommandRun run = await CommandRun.Of("measure", folder.At("recordings/a05-2026-12-28-cmj-1.csv"));
        Assert.Contains(
            "start of movement: 30 ms before the force left that of standing by 5 standard deviations",
            run.Output,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("SD", run.Output, StringComparison.Ordinal);
    }

    /// <summary>Ids of exercises and limits that stand there as words of their own; an id that is a plain word says no more than the word.</summary>
    private static string[] IdsIn(string text) =>
        [
            .. Catalogue
                .Standard.Exercises.Select(e => e.Id)
                .Concat(LimitBook.Standard.All.Select(l => l.Id))
                .Where(id => id.Contains('-', StringComparison.Ordinal))
                // "snap-down" is its own name.
                .Where(id => Catalogue.Standard.Find(id)?.Name.ToLowerInvariant() != id)
                .Where(id => Regex.IsMatch(text, $@"(?<![\w-]){Regex.Escape(id)}(?![\w-])")),
        ];
}
