using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Tests.Progression;

/// <summary>Nobody is sent to a test that is a jump they may not do: not by a profile either.</summary>
public class BarredTestsTests
{
    private static readonly Source House = Bibliography.Get("house-rule");

    private static Finding Of(Quality quality, FindingVerdict verdict, Sentence? test) =>
        new(quality, verdict, verdict == FindingVerdict.NotTested ? null : 0.5, $"Said.", test, [], House);

    private static Profile Athlete(Sentence known, Sentence test, params Finding[] findings) =>
        new("a01", new LocalDate(2027, 1, 4), [.. findings], known, [])
        {
            Test = new NamedTest(findings[0].Quality, test),
        };

    [Fact]
    public void ForbiddenDrops_TakeTheTestOfReactiveStrength_AndLeaveThePush()
    {
        Profile profile = Athlete(
            $"Jumps 30 cm. Nothing tested is shown to limit them; reactive strength isn't settled.",
            $"Three drop jumps from 0.30 m or lower.",
            Of(Quality.ReactiveStrength, FindingVerdict.Unclear, $"Three drop jumps from 0.30 m or lower"),
            Of(Quality.Push, FindingVerdict.Unclear, $"Three squat jumps")
        );
        var ruling = new Ruling("tendon-pain", new TierAtMost(Tissue.Achilles, 1), $"Sore: only low work.", House);
        Profile barred = BarredTests.In(profile, [ruling], Catalogue.Standard);
        Assert.Equal("not now: Sore: only low work", barred.Findings[0].NextTest);
        Assert.DoesNotContain("drop jumps", barred.Summary, StringComparison.Ordinal);
        Assert.Equal($"{profile.Known} Its test waits: it is not for now.", barred.Summary);
        Assert.Equal("Three squat jumps", barred.Findings[1].NextTest);
        // What is known is not taken back.
        Assert.Equal(profile.Findings[0].Verdict, barred.Findings[0].Verdict);
    }

    [Fact]
    public void AnAllowListWithoutTheLanding_TakesTheFirstTestOfSomebodyUnknown()
    {
        Profile profile = Athlete(
            $"What limits them is not known: nothing fresh was tested.",
            $"First: the landing screen (a low box).",
            Of(Quality.Landing, FindingVerdict.NotTested, $"The landing screen (a low box)")
        );
        var ruling = new Ruling("restriction", new OnlyExercises(["snap-down"]), $"Only snap-downs.", House);
        Assert.DoesNotContain(
            "landing screen",
            BarredTests.In(profile, [ruling], Catalogue.Standard).Summary,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void WithoutARuling_NothingChanges()
    {
        Profile profile = Athlete(
            $"What limits them is not known: nothing fresh was tested.",
            $"First: ten hops.",
            Of(Quality.AnkleStiffness, FindingVerdict.NotTested, $"Ten hops")
        );
        Profile same = BarredTests.In(profile, [], Catalogue.Standard);
        Assert.Equal(profile.Summary, same.Summary);
        Assert.Equal(profile.Findings[0].NextTest, same.Findings[0].NextTest);
    }
}
