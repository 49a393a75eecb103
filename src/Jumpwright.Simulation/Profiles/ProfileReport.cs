using System.Globalization;
using System.Text;

namespace Jumpwright.Simulation.Profiles;

/// <summary>Profiles and prescriptions against athletes whose truth is known.</summary>
/// <param name="Levels">Levels, bands, alarms.</param>
/// <param name="Drops">Drop heights and next tests.</param>
public sealed record ProfileReport(LevelReport Levels, DropCurveReport Drops)
{
    /// <summary>Runs both.</summary>
    public static ProfileReport Run(int athletes = 2000) =>
        new(LevelValidation.Run(athletes), DropCurveValidation.Run(athletes));

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
        page.AppendLine(
            "That no proposed test breaks a limit is held over 1,000 simulated squads by the test `Proposals_OfAThousandSquads_BreakNoLimit`."
        );
        return page.ToString();
    }
}
