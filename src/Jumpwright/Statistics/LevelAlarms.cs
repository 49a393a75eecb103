namespace Jumpwright.Statistics;

/// <summary>
/// Alarms over one series: surprises of a level that stays where it is, but for ordinary wander, summed by a
/// <see cref="ControlChart"/>. After an alarm the comparison starts afresh with the next
/// session: the alarming one is extreme by choice, and what follows it would seem to fall back.
/// </summary>
public static class LevelAlarms
{
    /// <summary>Ordinary wander that is no change, % of the level a week (house rule).</summary>
    public const double OrdinaryWanderPct = 0.15;

    /// <summary>All alarms in order.</summary>
    /// <param name="sessions">In order of day.</param>
    /// <param name="prior">The squad's prior.</param>
    /// <param name="chart">The chart that keeps the stated rate.</param>
    /// <param name="spread">How widely the squad's surprises spread (<see cref="ControlChart.SpreadOf"/>).</param>
    /// <param name="wanderPct">What counts as ordinary wander, % a week.</param>
    public static IReadOnlyList<LevelAlarm> Of(
        ReadOnlySpan<SessionMean> sessions,
        LevelPrior prior,
        ControlChart chart,
        double spread,
        double wanderPct = OrdinaryWanderPct
    )
    {
        var alarms = new List<LevelAlarm>();
        int start = 0;
        while (start < sessions.Length)
        {
            double[] scores = [.. SurpriseOf(sessions[start..], prior, wanderPct).Select(z => z / spread)];
            (int Index, int Direction)? first = chart.Alarms(scores).Select(a => ((int, int)?)a).FirstOrDefault();
            if (first is not { } alarm)
            {
                break;
            }

            alarms.Add(new LevelAlarm(start + alarm.Index, start, alarm.Direction > 0));
            start += alarm.Index + 1;
        }

        return alarms;
    }

    /// <summary>Surprise of each session to a level that stays where it is, but for ordinary wander.</summary>
    public static IReadOnlyList<double> SurpriseOf(
        ReadOnlySpan<SessionMean> sessions,
        LevelPrior prior,
        double wanderPct = OrdinaryWanderPct
    )
    {
        ArgumentNullException.ThrowIfNull(prior);
        return LevelBelief.Of(sessions, prior.WalkingNoFasterThan(wanderPct)).Surprise;
    }
}
