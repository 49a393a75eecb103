namespace Jumpwright.Tests.Outside.Commands;

public class ImportCommandTests
{
    [Fact]
    public async Task Twice_TheSameAnswer_AndNoRecordingIsMeasuredAgain()
    {
        using WorkFolder folder = Squad("0.200,0.380\n0.180,0.400\n0.180,0.410\n");
        string store = folder.At("club.db");
        CommandRun first = await CommandRun.Of("import", folder.Path, "--store", store);
        CommandRun second = await CommandRun.Of("import", folder.Path, "--store", store);

        Assert.True(first.Exit == 0, first.Errors);
        Assert.Equal(0, second.Exit);
        Assert.DoesNotContain("already", first.Output, StringComparison.Ordinal);
        Assert.Contains("1 measured (1 were in the store already)", second.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task BadRecording_IsNamedWithItsSentence_AndItEndsWith3()
    {
        using WorkFolder folder = Squad("soon,never\n");
        CommandRun run = await CommandRun.Of("import", folder.Path, "--store", folder.At("club.db"));

        Assert.Equal(3, run.Exit);
        Assert.Contains("recordings/hops.csv", run.Output + run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task NoSuchFolder_EndsWith2()
    {
        Assert.Equal(2, (await CommandRun.Of("import", "there-is-no-such-folder")).Exit);
    }

    private static WorkFolder Squad(string rows) =>
        new WorkFolder()
            .With("squad.yaml", "name: One\ntime_zone: Europe/Paris\n")
            .With("athletes.csv", "id,name,operation_site\na01,Ada Example,\n")
            .With(
                "recordings/hops.csv",
                "# task: repeated-hops\n# athlete: a01\n# date: 2026-12-01\ncontact_s,flight_s\n" + rows
            );
}
