using System.Text.RegularExpressions;

namespace Jumpwright.Tests.Outside.House;

/// <summary>Every row of the reference table is held by a test, or named here with why it concerns nothing that is built yet.</summary>
public partial class CheckValueCoverageTests
{
    private static readonly Dictionary<string, string> NotBuilt = new(StringComparer.Ordinal)
    {
        ["T31a T31b T31c T31d T31e T32a T32b T32c"] = "tiers are data of the catalogue, not a formula of ours",
        ["T38a T38b"] = "the two-component model of training",
    };

    [Fact]
    public void EveryRow_HasATest_OrSaysWhyNot()
    {
        string[] rows =
        [
            .. File.ReadLines(Repository.At("tests", "Jumpwright.Tests", "Data", "reference", "check-values.csv"))
                .Skip(1)
                .Select(line => line.Split(',')[0]),
        ];
        string tests = string.Concat(
            Directory
                .EnumerateFiles(Repository.At("tests", "Jumpwright.Tests"), "*.cs", SearchOption.AllDirectories)
                .Where(f => !f.EndsWith("CheckValueTableTests.cs", StringComparison.Ordinal))
                .Select(File.ReadAllText)
        );
        HashSet<string> tested = [.. Id().Matches(tests).Select(m => m.Groups["id"].Value)];
        HashSet<string> excused = [.. NotBuilt.Keys.SelectMany(k => k.Split(' '))];
        Assert.True(rows.Length >= 120, "the table was not read");
        Assert.DoesNotContain(rows, id => !tested.Contains(id) && !excused.Contains(id));
        Assert.DoesNotContain(excused, tested.Contains);
        Assert.Empty(excused.Except(rows));
    }

    [GeneratedRegex("\"(?<id>[TXN][0-9]+[a-f]?[12]?)\"", RegexOptions.ExplicitCapture)]
    private static partial Regex Id();
}
