using CsCheck;
using Jumpwright.Prescribing.Change;
using Jumpwright.Statistics;

namespace Jumpwright.Tests.Statistics;

public class LevelTests
{
    /// <summary>Durbin and Koopman 2001, section 2.10.3: noise variance 15099, walk variance 1469.1.</summary>
    [Fact]
    public void Fit_Nile_FindsThePublishedVariances()
    {
        var fit = LocalLevel.Fit([.. Enumerable.Range(0, 100).Select(i => (double)i)], Nile.Flow);
        Assert.Equal(15099, fit.NoiseVariance, 15099 * 0.001);
        Assert.Equal(1469.1, fit.WalkVariancePerDay, 1469.1 * 0.001);
    }

    [Fact]
    public void Filter_LevelThatDoesNotWalk_IsTheMean()
    {
        LevelObservation[] seen = [new(0, 30, 1), new(3, 32, 1), new(10, 31, 1)];
        FilteredLevel last = new LocalLevel(0).Filter(seen)[^1];
        Assert.Equal(31, last.Level, 9);
        Assert.Equal(1.0 / 3, last.Variance, 9);
    }

    /// <summary>The change since a day is the smoothed level now less the smoothed level then.</summary>
    [Fact]
    public void ChangeSince_IsTheDifferenceOfTheSmoothedLevels() =>
        Gen.Select(Gen.Double[20, 40].Array[6, 12], Gen.Double[0.01, 2], Gen.Double[0.2, 5])
            .Sample(
                (values, walk, noise) =>
                {
                    LevelObservation[] seen =
                    [
                        .. values.Select((v, i) => new LevelObservation(i * (1 + (i % 3)), v, noise)),
                    ];
                    Array.Sort(seen, (a, b) => a.Day.CompareTo(b.Day));
                    var model = new LocalLevel(walk);
                    (double Level, double Variance)[] smooth = model.Smooth(seen);
                    (double change, double variance) = model.ChangeSince(seen, seen[2].Day);
                    int from = Array.FindLastIndex(seen, s => s.Day <= seen[2].Day);
                    return Math.Abs(change - (smooth[^1].Level - smooth[from].Level)) < 1e-8 && variance >= 0;
                }
            );

    [Fact]
    public void Belief_MoreSessions_LessDoubt_AndLongAbsenceMoreAgain()
    {
        SessionMean[] sessions = [.. Enumerable.Range(0, 12).Select(i => SessionMean.Of(7 * i, [0.35, 0.36, 0.34]))];
        double few = LevelBelief.Of(sessions.AsSpan(0, 3), Noise.UsualPrior).Now.Sd;
        double many = LevelBelief.Of(sessions, Noise.UsualPrior).Now.Sd;
        Assert.True(many < few);
        Assert.Equal(0.35, LevelBelief.Of(sessions, Noise.UsualPrior).Now.Level, 3);
    }

    [Fact]
    public void Belief_ClearRise_SaysSoAndClearlyNotAFall()
    {
        SessionMean[] sessions =
        [
            .. Enumerable.Range(0, 8).Select(i => SessionMean.Of(7 * i, [0.35, 0.36, 0.34])),
            .. Enumerable.Range(8, 6).Select(i => SessionMean.Of(7 * i, [0.40, 0.41, 0.39])),
        ];
        LevelChange change = LevelBelief.Of(sessions, Noise.UsualPrior).ChangeSince(49, 0.01);
        Assert.True(change.Rose > 0.9, change.ToString());
        Assert.True(change.Fell < 0.01);
    }

    /// <summary>Known run lengths of two-sided sums with k = 0.5: 168 at h = 4, 465 at h = 5 (Montgomery, from memory).</summary>
    [Theory]
    [InlineData(4, 168)]
    [InlineData(5, 465)]
    public void Chart_RunLength_IsThePublishedOne(double threshold, double expected) =>
        Assert.Equal(expected, new ControlChart(0.5, threshold).RunLength(), 0.01 * expected);

    [Fact]
    public void Chart_ForOneAlarmAWeek_KeepsThatRateOnNormalScores()
    {
        ControlChart chart = ControlChart.For(1, 75);
        var random = new Jumpwright.Simulation.Chance.SeededRandom(3);
        int alarms = 0;
        const int series = 4000;
        for (int s = 0; s < series; s++)
        {
            alarms += chart.Alarms([.. Enumerable.Range(0, 40).Select(_ => random.Normal())]).Count();
        }

        Assert.Equal(1.0 / 75, alarms / (series * 40.0), 0.0012);
    }

    [Fact]
    public void Chart_MoreSeries_NeedsAHigherThreshold() =>
        Assert.True(ControlChart.For(1, 200).Threshold > ControlChart.For(1, 50).Threshold);

    [Fact]
    public void Prior_LearnedFromStillLevels_BelievesInLessWalk()
    {
        var random = new Jumpwright.Simulation.Chance.SeededRandom(4);
        SessionMean[][] still =
        [
            .. Enumerable
                .Range(0, 30)
                .Select(_ =>
                    Enumerable
                        .Range(0, 25)
                        .Select(i =>
                        {
                            double today = 0.4 + (0.008 * random.Normal());
                            return SessionMean.Of(
                                7 * i,
                                [today + (0.02 * random.Normal()), today + (0.02 * random.Normal())]
                            );
                        })
                        .ToArray()
                ),
        ];
        LevelPrior learned = Noise.UsualPrior.LearnedFrom(still);
        double Walk(LevelPrior p) =>
            p.Weights.Select((w, i) => w * LevelPrior.WeekPct[i / LevelPrior.DayPct.Length]).Sum();
        Assert.Equal(1, learned.Weights.Sum(), 9);
        Assert.True(Walk(learned) < 0.6 * Walk(Noise.UsualPrior));
    }
}
