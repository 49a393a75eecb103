using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Jumpwright.Tests.Outside.House;

/// <summary>Documents are held to what they describe.</summary>
public partial class DocumentsTests
{
    [Fact]
    public void ThirdParty_NamesEveryPackageUsed_AndNoOther()
    {
        string[] used =
        [
            .. XDocument
                .Load(Repository.At("Directory.Packages.props"))
                .Descendants("PackageVersion")
                .Select(p => p.Attribute("Include")!.Value),
            "CSharpier",
            "dotnet-ef",
        ];
        string[] listed =
        [
            .. Repository
                .Read("THIRD-PARTY.md")
                .Split('\n')
                .Select(line => PackageRow().Match(line))
                .Where(m => m.Success)
                .Select(m => m.Groups["name"].Value)
                .Where(name => name is not ("package" or "thing")),
        ];
        Assert.Equal(used.Order(StringComparer.OrdinalIgnoreCase), listed.Order(StringComparer.OrdinalIgnoreCase));
    }

    [Fact]
    public void Packages_InTheCentralList_AreReferencedSomewhere()
    {
        string projects = string.Concat(
            Directory
                .EnumerateFiles(Repository.At("src"), "*.csproj", SearchOption.AllDirectories)
                .Concat(Directory.EnumerateFiles(Repository.At("tests"), "*.csproj", SearchOption.AllDirectories))
                .Append(Repository.At("Directory.Build.props"))
                .Select(File.ReadAllText)
        );
        Assert.All(
            XDocument
                .Load(Repository.At("Directory.Packages.props"))
                .Descendants("PackageVersion")
                .Select(p => p.Attribute("Include")!.Value),
            package => Assert.Contains($"Include=\"{package}\"", projects, StringComparison.Ordinal)
        );
    }

    [Theory]
    [MemberData(nameof(Markdown))]
    public void Links_InDocuments_LeadSomewhere(string document)
    {
        string folder = Path.GetDirectoryName(Repository.At(document))!;
        string[] broken =
        [
            .. Link()
                .Matches(Repository.Read(document))
                .Select(m => m.Groups["target"].Value.Split('#')[0])
                .Where(t => t.Length > 0 && !t.Contains("://", StringComparison.Ordinal))
                .Where(t => !File.Exists(Path.Combine(folder, t)) && !Directory.Exists(Path.Combine(folder, t))),
        ];
        Assert.True(broken.Length == 0, $"{document} links to nothing: {string.Join(", ", broken)}");
    }

    [Fact]
    public void Architecture_NamesEveryProjectAndRoom()
    {
        string page = Repository.Read("docs/architecture.md");
        IEnumerable<string> projects = Directory
            .EnumerateFiles(Repository.At("src"), "*.csproj", SearchOption.AllDirectories)
            .Select(f => Path.GetFileNameWithoutExtension(f)!);
        IEnumerable<string> rooms = Directory
            .EnumerateDirectories(Repository.At("src", "Jumpwright"))
            .Select(d => Path.GetFileName(d)!)
            .Where(d => d is not ("bin" or "obj"));
        Assert.All(projects.Concat(rooms), name => Assert.Contains($"| {name} |", page, StringComparison.Ordinal));
    }

    [Fact]
    public void TrackedText_HoldsNoPathOfAMachine()
    {
        string[] breaches =
        [
            .. Directory
                .EnumerateFiles(Repository.Root, "*", SearchOption.AllDirectories)
                .Where(IsOurText)
                .Where(f => MachinePath().IsMatch(File.ReadAllText(f)))
                .Select(f => Path.GetRelativePath(Repository.Root, f)),
        ];
        Assert.True(breaches.Length == 0, "A path of somebody's machine stands in: " + string.Join(", ", breaches));
    }

    public static TheoryData<string> Markdown() =>
        [
            .. Directory
                .EnumerateFiles(Repository.Root, "*.md")
                .Concat(Directory.EnumerateFiles(Repository.At("docs"), "*.md", SearchOption.AllDirectories))
                .Select(f => Path.GetRelativePath(Repository.Root, f).Replace('\\', '/')),
        ];

    private static bool IsOurText(string file)
    {
        string relative = Path.GetRelativePath(Repository.Root, file).Replace('\\', '/');
        return !relative.StartsWith("artifacts/", StringComparison.Ordinal)
            && !relative.StartsWith(".git/", StringComparison.Ordinal)
            && !relative.StartsWith("jumpwright-demo/", StringComparison.Ordinal)
            && Path.GetExtension(file)
                is ".cs"
                    or ".md"
                    or ".json"
                    or ".yaml"
                    or ".csv"
                    or ".props"
                    or ".csproj"
                    or ".razor"
                    or ".css"
            && !relative.EndsWith("packages.lock.json", StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^\| (?<name>[A-Za-z][A-Za-z0-9.\-]*) \|")]
    private static partial Regex PackageRow();

    [GeneratedRegex(@"\]\((?<target>[^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(
        @"(?:^|[\s""'(=])/(?:work|home|root|Users)/\w",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex MachinePath();
}
