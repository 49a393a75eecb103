using Jumpwright.Athletes;
using Jumpwright.Athletes.Growth;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Tests.Safety;

/// <summary>Fast growth is a prompt for care. It closes nothing.</summary>
public class GrowthCareTests
{
    private static readonly History Youth = Patient.Well with
    {
        Athlete = Patient.Well.Athlete with { BirthDate = Patient.Today.PlusYears(-13) },
    };

    [Fact]
    public void EightCentimetresInAYear_AsksForCare_AndSaysHowSureThatIs()
    {
        History grown = Tall(Tall(Youth, 365, 1.50), 0, 1.58);
        string said = GrowthCare.For(grown, Patient.Today)!;
        Assert.Contains("8.0 ± 1.4 cm a year", said, StringComparison.Ordinal);
        Assert.Equal(
            SafetyRules.For(Youth, Patient.Today).Select(r => r.Because),
            SafetyRules.For(grown, Patient.Today).Select(r => r.Because)
        );
    }

    [Fact]
    public void SixCentimetresInAYear_SaysNothing() =>
        Assert.Null(GrowthCare.For(Tall(Tall(Youth, 365, 1.50), 0, 1.56), Patient.Today));

    [Fact]
    public void FourWeeksApart_SaysMoreOfTheTapeThanOfGrowth() =>
        Assert.Null(GrowthCare.For(Tall(Tall(Youth, 28, 1.50), 0, 1.52), Patient.Today));

    [Fact]
    public void OfTwoEarlierHeights_TheOneNearestAYearBeforeCounts()
    {
        History measured = Tall(Tall(Tall(Youth, 360, 1.50), 100, 1.56), 0, 1.575);
        GrowthRate rate = GrowthRate.Of(measured.Screens, Patient.Today, 400)!;
        Assert.Equal(Patient.Today.PlusDays(-360), rate.From);
        Assert.Equal(7.5 * 365.25 / 360, rate.CmPerYear, 6);
    }

    [Fact]
    public void AnAdult_IsNotAskedAfterGrowth() =>
        Assert.Null(GrowthCare.For(Tall(Tall(Patient.Well, 365, 1.50), 0, 1.60), Patient.Today));

    private static History Tall(History history, int daysAgo, double heightM) =>
        history with
        {
            Screens = history.Screens.Add(
                new ScreenResult(
                    "a01",
                    Patient.Today.PlusDays(-daysAgo),
                    GrowthRate.Test,
                    Side.Unknown,
                    heightM,
                    "m",
                    null,
                    null,
                    null
                )
            ),
        };
}
