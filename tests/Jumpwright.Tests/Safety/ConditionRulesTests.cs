using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Safety;
using Jumpwright.Safety.Conditions;
using NodaTime;

namespace Jumpwright.Tests.Safety;

/// <summary>Floor and air of the day close for everybody; what nobody wrote down is said.</summary>
public class ConditionRulesTests
{
    private static readonly LocalDate Monday = new(2027, 7, 5);

    [Theory]
    // Vapour pressure at 100 % is that of saturation: 23.4 hPa at 20 °C, 42.4 hPa at 30 °C (any steam table).
    [InlineData(20, 100, (0.567 * 20) + (0.393 * 23.4) + 3.94)]
    [InlineData(30, 100, (0.567 * 30) + (0.393 * 42.4) + 3.94)]
    [InlineData(30, 50, (0.567 * 30) + (0.393 * 21.2) + 3.94)]
    [InlineData(40, 0, (0.567 * 40) + 3.94)]
    public void WetBulbGlobe_FromAirAndHumidity_UsesTheVapourPressureOfTheTables(
        double airC,
        double humidityPct,
        double expectedC
    ) => Assert.Equal(expectedC, HeatStress.WetBulbGlobeC(airC, humidityPct), 0.1);

    [Fact]
    public void WetBulbGlobe_MoreHeatOrMoreHumidity_IsNeverLess()
    {
        for (int air = -10; air < 50; air++)
        {
            for (int humidity = 0; humidity < 100; humidity += 5)
            {
                double here = HeatStress.WetBulbGlobeC(air, humidity);
                Assert.True(HeatStress.WetBulbGlobeC(air + 1, humidity) > here);
                Assert.True(HeatStress.WetBulbGlobeC(air, humidity + 5) >= here);
            }
        }
    }

    [Theory]
    // Rows of the position stand's table for people who are not used to heat: up to 27.8, to 30.0, above.
    [InlineData(20, 50, "")]
    [InlineData(29, 50, "careful")]
    [InlineData(33, 60, "nothing")]
    public void Heat_ByTheStandsTable_LimitsHardWorkOrClosesTheDay(double airC, double humidityPct, string expected)
    {
        ImmutableArray<Ruling> rulings = Of(Club() with { Weather = [new(Monday, airC, humidityPct)] });
        Assert.Equal(
            expected switch
            {
                "careful" => [typeof(NoHighIntensity), typeof(ContactsPerSessionAtMost)],
                "nothing" => [typeof(NothingPlanned)],
                _ => Array.Empty<Type>(),
            },
            rulings.Select(r => r.Effect.GetType())
        );
        Assert.All(rulings, r => Assert.Equal("armstrong-2007", r.Source.Id));
        Assert.All(rulings, r => Assert.Contains("5 Jul 2027", r.Because, StringComparison.Ordinal));
    }

    [Fact]
    public void Heat_OfAnotherDay_ClosesNothing() =>
        Assert.Empty(Of(Club() with { Weather = [new(Monday.PlusDays(1), 40, 90)] }));

    [Theory]
    [InlineData("concrete", true)]
    [InlineData("a trampoline", true)]
    [InlineData("sprung-floor", false)]
    [InlineData("Grass", false)]
    public void Floor_HardOrUnknownByName_HasNoHighIntensityWork(string word, bool closes)
    {
        ImmutableArray<Ruling> rulings = Of(Club(Surfaces.Of(word)));
        Assert.Equal(closes, rulings.Any(r => r.Effect is NoHighIntensity));
        Assert.Empty(ConditionRules.Remarks(Club(Surfaces.Of(word))));
    }

    [Fact]
    public void Floor_OfTwoWindowsOfADay_TheHarderCounts()
    {
        Squad squad = Club(Surface.SprungFloor);
        Assert.Empty(Of(squad));
        Assert.NotEmpty(
            Of(
                squad with
                {
                    Windows = squad.Windows.Add(
                        new(Monday.DayOfWeek, new LocalTime(19, 0), 45) { Surface = Surface.Hard }
                    ),
                }
            )
        );
    }

    [Fact]
    public void Floor_ThatNobodyNamed_ClosesNothingAndIsSaid()
    {
        Assert.Empty(Of(Club()));
        Assert.Contains("does not say", Assert.Single(ConditionRules.Remarks(Club())), StringComparison.Ordinal);
    }

    private static ImmutableArray<Ruling> Of(Squad squad) => ConditionRules.For(squad, Monday, LimitBook.Standard);

    private static Squad Club(Surface? surface = null) =>
        new(
            "Club",
            "UTC",
            [],
            [new(Monday.DayOfWeek, new LocalTime(17, 0), 45) { Surface = surface }],
            [],
            ImmutableDictionary<string, string>.Empty
        );
}
