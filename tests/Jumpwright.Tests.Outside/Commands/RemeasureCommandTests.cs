using Microsoft.Data.Sqlite;

namespace Jumpwright.Tests.Outside.Commands;

/// <summary>A store whose measures an older version made is stood in for by one whose rows were altered by hand.</summary>
public class RemeasureCommandTests
{
    [Fact]
    public async Task SameVersion_ChangesNothing_AndEndsWith0()
    {
        using WorkFolder folder = Squad();
        CommandRun run = await CommandRun.Of("remeasure", folder.At("club.db"));
        Assert.Equal(0, run.Exit);
        Assert.Contains("2 of 2 recordings come out the same", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task WhatAnotherVersionMeasured_IsComparedBesideItsDoubt_AndNothingIsWritten()
    {
        using WorkFolder folder = Squad();
        Sql(folder, "UPDATE measure SET value = value + 0.01 WHERE name = 'jump_height_flight_time_m'");
        CommandRun first = await CommandRun.Of("remeasure", folder.At("club.db"), "--list");
        CommandRun second = await CommandRun.Of("remeasure", folder.At("club.db"), "--list");

        Assert.Equal(5, first.Exit);
        Assert.Equal(first.Output, second.Output);
        string line = Assert.Single(
            first.Output.Split('\n'),
            l => l.StartsWith("jump_height_flight_time_m", StringComparison.Ordinal)
        );
        Assert.Contains("1 of 1", line, StringComparison.Ordinal);
        Assert.Contains("-0.01", line, StringComparison.Ordinal);
        Assert.Contains("largest in recordings/hops.csv trial 1", first.Output, StringComparison.Ordinal);
        Assert.Contains("Nothing was written", first.Output, StringComparison.Ordinal);
        Assert.Contains(
            "recordings/hops.csv trial 1: jump_height_flight_time_m",
            first.Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task NewlyRefusedAndNewlyMeasured_AreListedWithTheirSentences()
    {
        using WorkFolder folder = Squad();
        Sql(
            folder,
            "UPDATE measurement SET refusal = CASE WHEN refusal IS NULL THEN 'Line 1: as it was.' ELSE NULL END, device = 'MatOrGate'"
        );
        CommandRun run = await CommandRun.Of("remeasure", folder.At("club.db"));
        Assert.Equal(5, run.Exit);
        Assert.Contains("1 recordings newly refused:", run.Output, StringComparison.Ordinal);
        Assert.Contains("bad.csv: was measured and would be refused: Line", run.Output, StringComparison.Ordinal);
        Assert.Contains(
            "hops.csv: was refused (Line 1: as it was.) and would be measured",
            run.Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Apply_TakesEffect_AndThenNothingChangesAnyMore()
    {
        using WorkFolder folder = Squad();
        Sql(folder, "UPDATE measure SET value = value + 0.01 WHERE name = 'jump_height_flight_time_m'");
        CommandRun applied = await CommandRun.Of("remeasure", folder.At("club.db"), "--apply");
        CommandRun after = await CommandRun.Of("remeasure", folder.At("club.db"));

        Assert.Equal(0, applied.Exit);
        Assert.Contains("It took effect", applied.Output, StringComparison.Ordinal);
        Assert.Equal(0, after.Exit);
        Assert.Contains("2 of 2 recordings come out the same", after.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Apply_OverAnOlderVersion_KeepsWhatThatOneMeasured()
    {
        using WorkFolder folder = Squad();
        long before = Sql(folder, "SELECT COUNT(*) FROM measurement");
        Sql(
            folder,
            "PRAGMA foreign_keys = OFF; UPDATE measurement SET id = 'old' || id, version = '0.0.1'; "
                + "UPDATE trial SET measurement_id = 'old' || measurement_id; UPDATE measure SET measurement_id = 'old' || measurement_id; "
                + "UPDATE contact SET measurement_id = 'old' || measurement_id; UPDATE remark SET measurement_id = 'old' || measurement_id; "
                + "UPDATE recording SET measurement_id = 'old' || measurement_id"
        );
        CommandRun applied = await CommandRun.Of("remeasure", folder.At("club.db"), "--apply");
        Assert.True(applied.Exit == 0, applied.Output + applied.Errors);
        Assert.Equal(2 * before, Sql(folder, "SELECT COUNT(*) FROM measurement"));
        Assert.Equal(0, Sql(folder, "SELECT COUNT(*) FROM recording WHERE measurement_id LIKE 'old%'"));
    }

    [Fact]
    public async Task NoStore_EndsWith2() => Assert.Equal(2, (await CommandRun.Of("remeasure", "no-such.db")).Exit);

    private static WorkFolder Squad()
    {
        WorkFolder folder = new WorkFolder()
            .With("squad.yaml", "name: One\ntime_zone: Europe/Paris\n")
            .With("athletes.csv", "id,name,operation_site\na01,Ada Example,\n")
            .With(
                "recordings/hops.csv",
                "# task: repeated-hops\n# athlete: a01\n# date: 2026-12-01\ncontact_s,flight_s\n"
                    + "0.200,0.380\n0.180,0.400\n0.180,0.410\n"
            )
            .With(
                "recordings/bad.csv",
                "# task: repeated-hops\n# athlete: a01\n# date: 2026-12-01\ncontact_s,flight_s\nsoon,never\n"
            );
        CommandRun import = CommandRun
            .Of("import", folder.Path, "--store", folder.At("club.db"))
            .GetAwaiter()
            .GetResult();
        Assert.Equal(3, import.Exit);
        return folder;
    }

    private static long Sql(WorkFolder folder, string statement)
    {
        using var connection = new SqliteConnection($"Data Source={folder.At("club.db")};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = statement;
        return command.ExecuteScalar() is long count ? count : 0;
    }
}
