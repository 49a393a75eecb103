using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Athletes;

/// <summary>One reading of the standing jump, wherever it is said, drawn or reckoned with.</summary>
public class StandingJumpTests
{
    [Fact]
    public void Reading_IsTheMeanOfTheLatestDay_ThatTheSentenceSays()
    {
        Story story = Story.Untested.Counter(0.30).Counter(0.33).Counter(0.36);
        Evidence reading = StandingJump.Of(story.Profile.Current)!;
        Assert.Equal(0.33, reading.Measure.Value, 9);
        Assert.Equal(3, reading.Trials);
        Assert.StartsWith("Jumps 33.0 ± 1.3 cm", story.Profile.Known, StringComparison.Ordinal);
        Assert.Equal(1.3, 100 * reading.Measure.StandardUncertainty, 0.05);
    }

    /// <summary>A mat last week outranks a plate of two months ago: the sentence had called the athlete's height out of date.</summary>
    [Theory]
    [InlineData(17)]
    [InlineData(60)]
    public void Reading_ByImpulseOfLongAgo_GivesWayToWhatIsNew(int daysAgo)
    {
        Story story = Flown(Story.Untested.Counter(0.40, daysAgo: daysAgo + 1), 0.44, daysAgo: 3);
        Assert.Equal(0.44, StandingJump.Of(story.Profile.Current)!.Measure.Value, 9);
        Assert.StartsWith("Jumps 44", story.Profile.Known, StringComparison.Ordinal);
        Assert.DoesNotContain("out of date", story.Profile.Known, StringComparison.Ordinal);
    }

    /// <summary>One session in which only the flight counts does not change the method from one session to the next.</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(17)]
    public void Reading_StaysByImpulse_WhereThatIsNotTwoWeeksOld(int daysAgo)
    {
        Story story = Flown(Story.Untested.Counter(0.40, daysAgo: daysAgo), 0.44, daysAgo: 3);
        Assert.Equal(0.40, StandingJump.Of(story.Profile.Current)!.Measure.Value, 9);
        Assert.StartsWith("Jumps 40", story.Profile.Known, StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_OfOneDayInTwoWays_IsByImpulse() =>
        Assert.Equal(
            MeasureNames.JumpHeight,
            StandingJump.Of(Flown(Story.Untested.Counter(0.40), 0.44).Profile.Current)!.Measure.Name
        );

    /// <summary>What stands on one trend was got in one way; the last of it is the reading itself, ± and all.</summary>
    [Fact]
    public void Days_AreOfOneDeviceAndMethod_AndEndWithTheReading()
    {
        Story story = Flown(
            Story.Untested.Counter(0.36, daysAgo: 20).Counter(0.38, daysAgo: 20).Counter(0.41, daysAgo: 2),
            0.47,
            daysAgo: 10
        );
        ImmutableArray<Evidence> days = StandingJump.Days(story.History, Story.Today);
        Assert.Equal([0.37, 0.41], days.Select(d => Math.Round(d.Measure.Value, 9)));
        Assert.Equal(StandingJump.Of(story.Profile.Current), days[^1]);
        // Two trials leave less doubt than one.
        Assert.True(days[0].Measure.StandardUncertainty < days[1].Measure.StandardUncertainty);
        Assert.Empty(StandingJump.Days(Story.Untested.History, Story.Today));
    }

    /// <summary>A picture of one trial is named with the mean of its own day and test, not with the athlete's latest height.</summary>
    [Fact]
    public void HeightOfATrial_IsTheMeanOfItsOwnDayTaskAndDevice()
    {
        Story story = Story
            .Untested.Counter(0.36, daysAgo: 20)
            .Counter(0.38, daysAgo: 20)
            .Squat(0.30, daysAgo: 20)
            .Counter(0.41, daysAgo: 2);
        Assert.Equal(0.37, StandingJump.OnDayOf(story.History.Trials[0], story.History)!.Measure.Value, 9);
        Assert.Equal(0.30, StandingJump.OnDayOf(story.History.Trials[2], story.History)!.Measure.Value, 9);
        Story doubtful = Story.Untested.Jumped(
            JumpTask.CountermovementJump,
            [(MeasureNames.JumpHeight, 0.4, 0.01)],
            doubtful: [MeasureNames.JumpHeight]
        );
        Assert.Null(StandingJump.OnDayOf(doubtful.History.Trials[0], doubtful.History));
    }

    private static Story Flown(Story story, double heightM, int daysAgo = 3) =>
        story.Jumped(
            JumpTask.CountermovementJump,
            [(MeasureNames.JumpHeightFlightTime, heightM, 0.004)],
            daysAgo,
            Device.MatOrGate,
            "flight-time"
        );
}
