using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Prescribing.Change;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Tests.Athletes;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Prescribing;

public class ChangeTests
{
    private static History Athlete(
        int number,
        double riseM = 0,
        int sessions = 12,
        Device device = Device.TwoForcePlates
    )
    {
        SeededRandom random = SeededRandom.For(11, (ulong)number);
        double level = 0.30 + (0.01 * number);
        Story story = Story.Untested;
        for (int i = 0; i < sessions; i++)
        {
            double today = level + (i >= sessions - 3 ? riseM : 0) + (0.006 * random.Normal());
            for (int t = 0; t < 3; t++)
            {
                story = story.Counter(today + (0.012 * random.Normal()), daysAgo: 7 * (sessions - i), device: device);
            }
        }

        return story.History with
        {
            Athlete = story.History.Athlete with { Id = $"a{number:00}", Name = $"Athlete {number}" },
        };
    }

    private static ImmutableArray<Trend> Of(params IReadOnlyList<History> squad) =>
        Changes.Of(squad, Story.Today, new ChangeOptions());

    [Fact]
    public void Level_OneAthleteRose_SaysSoAndNotOfTheOthers()
    {
        History[] squad = [.. Enumerable.Range(1, 8).Select(i => Athlete(i, i == 3 ? 0.10 : 0))];
        ImmutableArray<Trend> trends = Of(squad);
        Assert.Equal(8, trends.Length);
        Trend risen = trends.Single(t => t.Series.AthleteId == "a03");
        Assert.True(risen.Change.Rose > 0.9, risen.Sentence);
        Assert.Contains("rose since", risen.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(trends.Where(t => t != risen), t => t.Change.Rose > 0.9 || t.Change.Fell > 0.9);
    }

    [Fact]
    public void Trends_TwoDevices_AreNeverJoined()
    {
        History plates = Athlete(1);
        History both = plates with { Trials = plates.Trials.AddRange(Athlete(1, device: Device.MatOrGate).Trials) };
        ImmutableArray<Trend> trends = Of(both);
        Assert.Equal(2, trends.Length);
        Assert.All(trends, t => Assert.Equal(12, t.Series.Sessions.Length));
    }

    /// <summary>Two ways to one number are two quantities: each has its own line, and neither lends the other its noise.</summary>
    [Fact]
    public void Trends_TwoMethods_AreNeverJoined()
    {
        History history = Athlete(1);
        History both = history with
        {
            Trials =
            [
                .. history.Trials.Select(
                    (t, i) =>
                        i % 2 == 0
                            ? t
                            : t with
                            {
                                Trial = t.Trial with
                                {
                                    Measures = [t.Trial.Measures[0] with { Method = "work-energy" }],
                                },
                            }
                ),
            ],
        };
        ImmutableArray<Trend> trends = Of(both);
        Assert.Equal(2, trends.Length);
        Assert.Equal(2, trends.Select(t => t.Series.Key.Method).Distinct().Count());
        Assert.Equal(2, trends.Select(t => t.Noise).Distinct().Count());
    }

    /// <summary>A session stands on a trend with the mean of its trials; a best, such as the highest touch, is another test and never on it.</summary>
    [Fact]
    public void Trends_AreOfMeans_AndABestIsNeverAmongThem()
    {
        History history = Story
            .Untested.Counter(0.30, daysAgo: 20)
            .Counter(0.36, daysAgo: 20)
            .Counter(0.33, daysAgo: 10)
            .Screened("best-touch", 2.95, daysAgo: 20)
            .Screened("best-touch", 2.97, daysAgo: 10)
            .History;
        Trend trend = Assert.Single(Of(history));
        Assert.Equal([0.33, 0.33], trend.Series.Sessions.Select(s => Math.Round(s.Mean, 9)));
        Assert.Equal([2, 1], trend.Series.Sessions.Select(s => s.Trials));
        Evidence current = Assert.Single(
            Profiling.Of(history, Story.Today).Current,
            e => e.Measure.Name == MeasureNames.JumpHeight
        );
        Assert.Equal(0.33, current.Measure.Value, 9);
    }

    [Fact]
    public void Noise_OfASquad_IsItsOwnTrialsPulledToThePublishedValue()
    {
        Trend trend = Of([.. Enumerable.Range(1, 8).Select(i => Athlete(i))])[0];
        Assert.Equal(8 * 12 * 2, trend.Noise.DegreesOfFreedom);
        Assert.Equal(0.012, trend.Noise.TypicalError, 0.0015);
        Assert.Equal(5.8, trend.Noise.PublishedPct, 6);
        Assert.Equal("hopkins-2000", trend.Noise.SmallestWorthwhileSource.Id);
        Assert.True(trend.Noise.IntraclassCorrelationOneWay is > 0.5 and < 1);
    }

    [Fact]
    public void Noise_TwoAthletes_WorthwhileChangeIsTheHouseRule()
    {
        Trend trend = Of(Athlete(1), Athlete(2))[0];
        Assert.Null(trend.Noise.BetweenSd);
        Assert.Equal("house-rule", trend.Noise.SmallestWorthwhileSource.Id);
    }

    [Fact]
    public void Watched_AtMostThree_ChosenByThePolicy()
    {
        ChangeOptions options = ChangeOptions.From(
            new Dictionary<string, string>
            {
                ["watch"] = "jump_height_m, reactive_strength_index, contact_time_s, flight_time_s",
                ["false-alarms-a-week"] = "0.5",
            }
        );
        Assert.Equal(3, options.Watched.Length);
        Assert.Equal(0.5, options.FalseAlarmsAWeek);
        ImmutableArray<Trend> none = Changes.Of(
            [Athlete(1)],
            Story.Today,
            options with
            {
                Watched = [MeasureNames.PeakForce],
            }
        );
        Assert.All(none, t => Assert.False(t.Watched));
        Assert.All(none, t => Assert.Empty(t.Alarms));
    }

    [Fact]
    public void Alarm_LargeRise_IsRaisedUpward()
    {
        Trend trend = Of([.. Enumerable.Range(1, 8).Select(i => Athlete(i, i == 2 ? 0.10 : 0))])
            .Single(t => t.Series.AthleteId == "a02");
        Assert.Contains(trend.Alarms, a => a.Risen && a.Session >= 9);
    }

    [Fact]
    public void Drops_FromTwoBoxes_AreTwoTests()
    {
        History history = Story
            .Untested.Jumped(JumpTask.DropJump, [(MeasureNames.ReactiveStrengthIndex, 1.5, 0.02)], 20, dropM: 0.3)
            .Jumped(JumpTask.DropJump, [(MeasureNames.ReactiveStrengthIndex, 1.6, 0.02)], 10, dropM: 0.4)
            .History;
        Assert.Equal(2, SeriesList.Of(history, Story.Today).Length);
    }
}
