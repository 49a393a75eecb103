using Jumpwright.Prescribing.Change;
using Jumpwright.Statistics;

namespace Jumpwright.Simulation.Profiles;

/// <summary>Levels, bands and alarms against truth.</summary>
public static class LevelValidation
{
    /// <summary>Series of a squad: 25 athletes, three measures each, once a week; one false alarm a week.</summary>
    public const double SeriesOfASquad = 75;

    private const int FirstJudged = 4;

    /// <summary>All athletes, judged.</summary>
    /// <param name="athletes">How many.</param>
    /// <param name="sessions">Sessions of each.</param>
    /// <param name="seed">Of the chance.</param>
    /// <param name="start">Where the belief starts; the house's when null.</param>
    /// <param name="wanderPct">What counts as ordinary wander, % a week.</param>
    public static LevelReport Run(
        int athletes,
        int sessions = 40,
        ulong seed = 20270104,
        LevelPrior? start = null,
        double wanderPct = LevelAlarms.OrdinaryWanderPct
    )
    {
        ControlChart chart = ControlChart.For(1, SeriesOfASquad, sessions);
        var results = new One[athletes];
        var drawn = new LevelAthlete[athletes];
        var beliefs = new LevelBelief[athletes];
        Parallel.For(0, athletes, i => drawn[i] = LevelAthlete.Draw(seed, i, sessions));
        LevelAthlete[][] squads = [.. drawn.Chunk((int)SeriesOfASquad)];
        var priors = new LevelPrior[squads.Length];
        Parallel.For(
            0,
            squads.Length,
            s => priors[s] = (start ?? Noise.UsualPrior).LearnedFrom([.. squads[s].Select(a => a.Sessions)])
        );
        Parallel.For(0, athletes, i => beliefs[i] = LevelBelief.Of(drawn[i].Sessions, priors[i / (int)SeriesOfASquad]));
        double[] spread =
        [
            .. beliefs
                .Chunk((int)SeriesOfASquad)
                .Select(s => ControlChart.SpreadOf(s.SelectMany(b => b.Surprise.Skip(1)))),
        ];
        Parallel.For(
            0,
            athletes,
            i =>
                results[i] = Judge(
                    drawn[i],
                    beliefs[i],
                    priors[i / (int)SeriesOfASquad],
                    spread[i / (int)SeriesOfASquad],
                    chart,
                    wanderPct
                )
        );
        double[] delays = [.. results.Where(r => r.Delay is not null).Select(r => (double)r.Delay!.Value).Order()];
        double[] known = [.. results.Where(r => r.Delay is not null).Select(r => (double)r.DelayKnown!.Value).Order()];
        double quiet = results.Sum(r => (double)r.Quiet);
        return new LevelReport(
            athletes,
            sessions,
            results.Sum(r => (double)r.InNow) / results.Sum(r => (double)r.Judged),
            results.Sum(r => (double)r.InSmooth) / results.Sum(r => (double)r.Judged),
            chart.RateOver(sessions),
            results.Sum(r => r.False) / quiet,
            results.Sum(r => r.FalseKnown) / quiet,
            delays.Average(),
            known.Average(),
            delays[delays.Length / 2],
            known[known.Length / 2],
            results.Count(r => r.Noticed) / (double)delays.Length,
            results.Count(r => r.NoticedKnown) / (double)delays.Length
        );
    }

    private static One Judge(
        LevelAthlete athlete,
        LevelBelief all,
        LevelPrior prior,
        double spread,
        ControlChart chart,
        double wanderPct
    )
    {
        int n = athlete.Sessions.Length;
        (double Level, double Sd)[] smooth = all.Smooth();
        int inNow = 0;
        int inSmooth = 0;
        for (int i = FirstJudged; i < n; i++)
        {
            (double level, double sd) =
                i == n - 1 ? all.Now : LevelBelief.Of(athlete.Sessions.AsSpan(0, i + 1), prior).Now;
            inNow += Math.Abs(level - athlete.Levels[i]) <= 1.96 * sd ? 1 : 0;
            inSmooth += Math.Abs(smooth[i].Level - athlete.Levels[i]) <= 1.96 * smooth[i].Sd ? 1 : 0;
        }

        // What walks all the time has changed: neither its alarms nor its sessions count as quiet.
        int quiet = athlete.WalkVariancePerDay > 0 ? 0 : athlete.StepAt ?? n;
        (int falseAlarms, int? delay) = Count(
            athlete,
            [.. LevelAlarms.Of(athlete.Sessions, prior, chart, spread, wanderPct).Select(a => (a.Session, a.Risen))],
            quiet
        );
        (int falseKnown, int? delayKnown) = Count(
            athlete,
            [.. chart.Alarms(athlete.SurpriseWithKnownVariances()).Select(a => (a.Index, a.Direction > 0))],
            quiet
        );
        return new One(
            n - FirstJudged,
            inNow,
            inSmooth,
            quiet,
            falseAlarms,
            falseKnown,
            athlete.StepAt is { } at ? delay ?? n - at : null,
            athlete.StepAt is { } step ? delayKnown ?? n - step : null,
            delay is not null,
            delayKnown is not null
        );
    }

    private static (int False, int? Delay) Count(LevelAthlete athlete, (int Session, bool Risen)[] alarms, int quiet)
    {
        (int Session, bool Risen)? first = athlete.StepAt is null
            ? null
            : alarms
                .Where(a => a.Session >= quiet && a.Risen == athlete.StepUp)
                .Select(a => ((int, bool)?)a)
                .FirstOrDefault();
        return (alarms.Count(a => a.Session < quiet), first?.Session - quiet + 1);
    }

    private sealed record One(
        int Judged,
        int InNow,
        int InSmooth,
        int Quiet,
        int False,
        int FalseKnown,
        int? Delay,
        int? DelayKnown,
        bool Noticed,
        bool NoticedKnown
    );
}
