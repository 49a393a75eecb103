using Jumpwright.Quantities;
using Jumpwright.Statistics;
using NodaTime;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Landing: faults of the screen, and faults logged in sessions, which outrank it.</summary>
internal static class FindLanding
{
    private static readonly Sentence Test = $"the landing screen (a low box, a phone, five minutes)";

    internal static Finding In(Known known)
    {
        IGrouping<LocalDate, CompletedItem>? logged = known
            .History.Completed.Where(c => c.Date <= known.AsOf && c.LandingFaults is not null && known.IsFresh(c.Date))
            .GroupBy(c => c.Date)
            .MaxBy(g => g.Key);
        if (logged?.Sum(c => c.LandingFaults ?? 0) is { } faults && faults >= ProfileLimits.LandingFaultsLogged.Value)
        {
            return new Finding(
                Quality.Landing,
                FindingVerdict.Limits,
                1,
                $"{faults} landing faults were logged on {logged.Key}: landing comes first, whatever the heights say.",
                $"{Sentence.Of($"one session of landings without a fault"):capital}",
                [],
                ProfileLimits.LandingFaultsLogged.Source
            )
            {
                Asks = QualityTest.LandingSession,
            };
        }

        Evidence? screen = known.Screen(
            "landing-screen",
            Side.Both,
            "faults",
            ProfileLimits.LandingFaults.StandardUncertainty!.Value
        );
        if (screen is null)
        {
            return Verdicts.NotTested(Quality.Landing, QualityTest.LandingScreen, Test, ProfileLimits.LandingFaults);
        }

        if (!known.IsFresh(screen.Date))
        {
            return Verdicts.Stale(
                Quality.Landing,
                known,
                QualityTest.LandingScreen,
                Test,
                ProfileLimits.LandingFaults,
                screen
            );
        }

        // Whole numbers get half a fault of grace: "at most 4" means below 4.5.
        double limits = Likelihood.Above(
            screen.Measure.Value,
            screen.Measure.StandardUncertainty,
            ProfileLimits.LandingFaults.Value + 0.5
        );
        return Verdicts.From(
            Quality.Landing,
            limits,
            guardsHealth: true,
            $"Landing screen {Doubted.Number(screen.Measure.Value, screen.Measure.StandardUncertainty)} faults on {screen.Date} (at most {ProfileLimits.LandingFaults.Value:0} wished).",
            QualityTest.LandingScreen,
            Test,
            ProfileLimits.LandingFaults,
            screen
        );
    }
}
