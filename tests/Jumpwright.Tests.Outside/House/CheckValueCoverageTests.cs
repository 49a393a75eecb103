using System.Text.RegularExpressions;

namespace Jumpwright.Tests.Outside.House;

/// <summary>Every row of the reference table is held by a test.</summary>
public partial class CheckValueCoverageTests
{
    [Fact]
    public void EveryRow_HasATest()
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
        Assert.True(rows.Length >= 120, "the table was not read");
        Assert.DoesNotContain(rows, id => !tested.Contains(id));
    }

    [GeneratedRegex("\"(?<id>[TXN][0-9]+[a-f]?[12]?)\"", RegexOptions.ExplicitCapture)]
    private static partial Regex Id();
}
