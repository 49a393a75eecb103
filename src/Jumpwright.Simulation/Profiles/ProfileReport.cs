using System.Globalization;
using System.Text;

namespace Jumpwright.Simulation.Profiles;

/// <summary>Profiles and prescriptions against athletes whose truth is known.</summary>
/// <param name="Levels">Levels, bands, alarms.</param>
/// <param name="Drops">Drop heights and next tests.</param>
/// <param name="RunUps">Run-up speeds and next tests.</param>
/// <param name="Loads">Next loads of jumps and pulls.</param>
/// <param name="Sensitivity">What hangs on the house's numbers.</param>
public sealed record ProfileReport(
    LevelReport Levels,
    DropCurveReport Drops,
    RunUpReport RunUps,
    LoadReport Loads,
    SensitivityReport Sensitivity
)
{
    /// <summary>Runs all; the variations on fewer athletes, 450 of 2,000.</summary>
    public static ProfileReport Run(int athletes = 2000) =>
        new(
            LevelValidation.Run(athletes),
            DropCurveValidation.Run(athletes),
            RunUpValidation.Run(athletes / 2),
            LoadValidation.Run(athletes),
            SensitivityValidation.Run(Math.Max(75, athletes * 9 / 40 / 75 * 75))
        );

    /// <summary>As a page.</summary>
    public string Markdown()
    {
        CultureInfo c = CultureInfo.InvariantCulture;
        var page = new StringBuilder();
        page.AppendLine("# Profiles against truth");
        page.AppendLine();
        page.AppendLine(
            "Made by `jumpwright validate --profiles --write docs/validation-profiles.md`. Athletes are simulated from even ranges, not from the beliefs"
        );
        page.AppendLine("that are tested on them; the same version gives the same page.");
        page.AppendLine();
        page.AppendLine(c, $"## Levels: {Levels.Athletes} athletes, {Levels.Sessions} sessions each");
        page.AppendLine();
        page.AppendLine(
            "A third stay where they are, a third take a real step of 5 % at a known session, a third walk by 0.2 to 1.2 % a week. Trials"
        );
        page.AppendLine(
            "scatter by 2.5 to 8 %, days by 1 to 4 %; 2 to 4 trials a session; 2 to 10 days between sessions and gaps of weeks."
        );
        page.AppendLine();
        page.AppendLine("| what | seen | wished |");
        page.AppendLine("|---|---|---|");
        page.AppendLine(
            c,
            $"| true level inside the 95 % band drawn that day | {100 * Levels.CoverageNow:0.0} % | 93 to 97 % |"
        );
        page.AppendLine(
            c,
            $"| true level inside the 95 % band drawn at the end | {100 * Levels.CoverageSmooth:0.0} % | 93 to 97 % |"
        );
        page.AppendLine(
            c,
            $"| false alarms, per 75 series and week, of 1.00 stated | {Levels.FalseRate / Levels.StatedRate:0.00} | 0.80 to 1.20 |"
        );
        page.AppendLine(
            c,
            $"| the same by a filter that knows the variances | {Levels.FalseRateKnown / Levels.StatedRate:0.00} | |"
        );
        page.AppendLine(
            c,
            $"| sessions until a real 5 % change is noticed, mean (median) | {Levels.DelayMean:0.0} ({Levels.DelayMedian:0}) | beside the best possible |"
        );
        page.AppendLine(
            c,
            $"| the same by a filter that knows the variances | {Levels.DelayMeanKnown:0.0} ({Levels.DelayMedianKnown:0}) | |"
        );
        page.AppendLine(
            c,
            $"| noticed by the last session | {100 * Levels.Noticed:0} % (best possible {100 * Levels.NoticedKnown:0} %) | |"
        );
        page.AppendLine();
        page.AppendLine(
            "False alarms are counted in those that have not changed: until their step, and over all sessions of those that stay. A change"
        );
        page.AppendLine(
            "never noticed counts with all sessions that were left. What walks has changed, so its alarms are counted nowhere."
        );
        page.AppendLine();
        page.AppendLine(c, $"## Drop height: {Drops.Athletes} athletes, four heights × three trials");
        page.AppendLine();
        page.AppendLine(
            "Known curves of index over height with peaks from 0.25 to 0.65 m, half of them lopsided; trials scatter by 5 to 11 %; limits from"
        );
        page.AppendLine(
            "0.30 to 0.75 m. Begun at 0.20 and 0.30 m, then where the program asks; where it asks for nothing, a step up if limits allow."
        );
        page.AppendLine();
        page.AppendLine("| what | seen | wished |");
        page.AppendLine("|---|---|---|");
        page.AppendLine(
            c,
            $"| chosen height loses less than 3 % of the best index that limits allow | {100 * Drops.WithinThreePct:0.0} % of athletes | 95 % |"
        );
        page.AppendLine(
            c,
            $"| the same against the best up to the highest height jumped | {100 * Drops.WithinThreePctOfJumped:0.0} % | |"
        );
        page.AppendLine(
            c,
            $"| loss, mean; what 95 % stay below | {Drops.MeanLossPct:0.0} %; {Drops.WorstLossPct:0.0} % | |"
        );
        page.AppendLine(c, $"| heights chosen or asked for above the limit | {Drops.AboveLimit} | 0 |");
        page.AppendLine(
            c,
            $"| heights asked for more than 0.10 m above the highest jumped | {Drops.StepsTooHigh} | 0 |"
        );
        page.AppendLine(
            c,
            $"| doubt of the best height after the test asked for, over that after a random one | {Drops.DoubtRatio:0.00} | below 1 |"
        );
        page.AppendLine(c, $"| the same for the real miss | {Drops.MissRatio:0.00} | below 1 |");
        page.AppendLine();
        AppendRunUps(page, c);
        AppendLoads(page, c);
        AppendSensitivity(page, c);
        page.AppendLine("## Proposed tests");
        page.AppendLine();
        page.AppendLine(
            "That no proposed test breaks a limit is held over 1,000 simulated squads by the test `Proposals_OfAThousandSquads_BreakNoLimit`."
        );
        return page.ToString();
    }

    private void AppendRunUps(StringBuilder page, CultureInfo c)
    {
        page.AppendLine(c, $"## Run-up speed: {RunUps.Athletes} athletes, five speeds × three jumps");
        page.AppendLine();
        page.AppendLine(
            "Known curves of height over run-up speed with the best at 2.6 to 5.5 m/s; jumps scatter by 3 to 7 %, speeds by 0.05 m/s. Begun at"
        );
        page.AppendLine(
            "2.5 and 3.0 m/s, then where the program asks; where it asks for nothing, at 110 % of the fastest run."
        );
        page.AppendLine();
        page.AppendLine("| what | seen | wished |");
        page.AppendLine("|---|---|---|");
        page.AppendLine(
            c,
            $"| height that the chosen speed loses against the best within the bound, mean; what 95 % stay below | {RunUps.LossMeanPct:0.0} %; {RunUps.LossWorstPct:0.0} % | |"
        );
        page.AppendLine(c, $"| speeds chosen or asked for above 110 % of the fastest run | {RunUps.AboveBound} | 0 |");
        page.AppendLine(
            c,
            $"| loss still to be expected after the test asked for, over that after a random one | {RunUps.DoubtRatio:0.00} | below 1 |"
        );
        page.AppendLine(c, $"| the same for the real loss | {RunUps.LossRatio:0.00} | below 1 |");
        page.AppendLine();
    }

    private void AppendLoads(StringBuilder page, CultureInfo c)
    {
        page.AppendLine(c, $"## Loads: {Loads.Athletes} athletes, jumps with a bar and heavy pulls");
        page.AppendLine();
        page.AppendLine(
            "Known lines of velocity over load, bent a little as the program's are not. Jumps: two without a bar and two with 15 to 40 kg, scatter 2 to"
        );
        page.AppendLine(
            "5 %, what counts as light 20 to 40 % of body mass. Pulls: two each at about 40 and 60 % of the true maximum, scatter 0.02 to 0.06 m/s, the"
        );
        page.AppendLine(
            "velocity at the maximum 0.32 ± 0.06 m/s. Then three jumps, or two pulls, with the load asked for, or with one drawn from all that would be allowed."
        );
        page.AppendLine();
        page.AppendLine("| what | jumps | pulls | wished |");
        page.AppendLine("|---|---|---|---|");
        page.AppendLine(
            c,
            $"| athletes for whom a further load was asked for | {100 * Loads.JumpsAsked:0} % | {100 * Loads.PullsAsked:0} % | |"
        );
        page.AppendLine(
            c,
            $"| doubt (range of loads; estimated maximum) after the load asked for, over that after a random one | {Loads.JumpDoubtRatio:0.00} | {Loads.PullDoubtRatio:0.00} | below 1 |"
        );
        page.AppendLine(
            c,
            $"| the same for the real miss, root mean square | {Loads.JumpMissRatio:0.00} | {Loads.PullMissRatio:0.00} | below 1 |"
        );
        page.AppendLine(c, $"| estimated maxima whose ± 2u hold the true one | | {100 * Loads.PullCoverage:0} % | |");
        page.AppendLine(
            c,
            $"| loads asked for above 110 % of the heaviest, or above what counts as light | {Loads.AboveBound} (both) | | 0 |"
        );
        page.AppendLine();
    }

    private void AppendSensitivity(StringBuilder page, CultureInfo c)
    {
        page.AppendLine("## What hangs on the house's own numbers");
        page.AppendLine();
        page.AppendLine(
            c,
            $"Nobody has tested these numbers, so each is halved and raised by half, the others kept; {Sensitivity.Athletes} athletes a row, so that a share"
        );
        page.AppendLine(
            "of 95 % is known to about one point and a rate of false alarms to about a tenth of itself (with 75 athletes to a quarter: over 120 other draws"
        );
        page.AppendLine(
            "of 75 it was 0.95 on average with a standard deviation of 0.26, and a filter that knows the variances did no better: 0.96 and 0.23)."
        );
        page.AppendLine();
        page.AppendLine("| belief about drop curves | | within 3 % of the best | mean loss |");
        page.AppendLine("|---|---|---|---|");
        foreach ((string number, string how, double within, double loss) in Sensitivity.Drops)
        {
            page.AppendLine(c, $"| {number} | {how} | {within:0.0} % | {loss:0.00} % |");
        }

        page.AppendLine();
        page.AppendLine(
            "| belief about levels | | 95 % band holds | false alarms of those stated | sessions to notice 5 % |"
        );
        page.AppendLine("|---|---|---|---|---|");
        foreach ((string number, string how, double coverage, double share, double delay) in Sensitivity.Levels)
        {
            page.AppendLine(c, $"| {number} | {how} | {coverage:0.0} % | {share:0.00} | {delay:0.0} |");
        }

        page.AppendLine();
        page.AppendLine("Anchors on floors whose true friction is 0.2 to 0.6:");
        page.AppendLine();
        page.AppendLine("| coefficient counted with | set-ups judged to hold | of those, that would slide |");
        page.AppendLine("|---|---|---|");
        foreach ((double coefficient, double holds, double slides) in Sensitivity.Friction)
        {
            page.AppendLine(c, $"| {coefficient:0.00} | {holds:0.0} % | {slides:0.0} % |");
        }

        page.AppendLine();
        page.AppendLine(
            "Which training typically brings most in the standing jump of a jumper of 36 cm in a squad that differs by 5 cm:"
        );
        page.AppendLine();
        page.AppendLine("| published effect | | first | told from the second |");
        page.AppendLine("|---|---|---|---|");
        foreach ((string effect, string how, string first, bool settled) in Sensitivity.Effects)
        {
            page.AppendLine(c, $"| {effect} | {how} | {first} | {(settled ? "yes" : "no")} |");
        }

        page.AppendLine();
    }
}
