using System.Text.RegularExpressions;

namespace Jumpwright.Tests.Outside.Demo;

[Collection("demo")]
public partial class DemoTests(DemoRun demo)
{
    [Fact]
    public void BadRecordings_AreRefused_EachWithOneSentence()
    {
        string[] refused =
        [
            .. demo.Output.Split('\n').Where(l => l.Contains("refused recordings/", StringComparison.Ordinal)),
        ];
        Assert.Equal(7, refused.Length);
        Assert.All(refused, line => Assert.EndsWith(".", line, StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_IsStatedWithItsBound_AndEveryAthleteWithASentence()
    {
        Assert.Matches(
            @"Every hard limit is kept\. No plan within the limits can be better than this one by more than \d+(\.\d)? %",
            demo.Output
        );
        Assert.Contains("Hanna Lindqvar: Nothing planned. Stop sign", demo.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(demo.Folder, "plan.json")));
    }

    [Fact]
    public async Task SecondRun_SamePlanButForTheSeconds_SamePapersToTheByte()
    {
        string folder = Directory.CreateTempSubdirectory("jumpwright-again-").FullName;
        try
        {
            (int exit, _, string errors) = await DemoRun.Run(folder);
            Assert.True(exit == 0, errors);
            Assert.Equal(WithoutSeconds(demo.Folder), WithoutSeconds(folder));
            string[] papers =
            [
                .. Directory
                    .EnumerateFiles(demo.CardsFolder)
                    .Select(f => Path.GetFileName(f)!)
                    .Order(StringComparer.Ordinal),
            ];
            Assert.Equal(
                papers,
                Directory
                    .EnumerateFiles(Path.Combine(folder, "cards"))
                    .Select(f => Path.GetFileName(f)!)
                    .Order(StringComparer.Ordinal)
            );
            Assert.All(
                papers,
                p =>
                    Assert.True(
                        File.ReadAllBytes(Path.Combine(demo.CardsFolder, p))
                            .AsSpan()
                            .SequenceEqual(File.ReadAllBytes(Path.Combine(folder, "cards", p))),
                        p
                    )
            );
        }
        finally
        {
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string WithoutSeconds(string folder) =>
        Seconds().Replace(File.ReadAllText(Path.Combine(folder, "plan.json")), "\"seconds\": 0,");

    [GeneratedRegex("\"seconds\": [0-9.]+,", RegexOptions.None, 1000)]
    private static partial Regex Seconds();
}
