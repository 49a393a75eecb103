using Jumpwright.App.Desk.Journals;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>
/// A restriction written wrongly is a slip of the finger on the day on which it was written. From the next day on it is somebody's health, and no
/// page loosens it.
/// </summary>
public class RestrictionTakenBackTests
{
    private static readonly Instant Written = Instant.FromUtc(2027, 1, 4, 9, 0);
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/Oslo"];

    private static string? TakenBackBy(Duration later)
    {
        JournalEntry[] theirs =
        [
            new(
                "r1",
                EntryKinds.Restriction,
                "a01",
                "2027-01-04",
                Written,
                "health page",
                "{\"from\":\"2027-01-04\",\"forbidden\":[\"jumps\"]}"
            ),
            new(
                "b1",
                EntryKinds.RestrictionTakenBack,
                "a01",
                "2027-01-04",
                Written + later,
                "health page",
                "{\"entry\":\"r1\",\"by\":\"Kim\"}"
            ),
        ];
        return Assert.Single(JournalReading.RestrictionsIn(theirs, Zone)).TakenBackBy;
    }

    [Fact]
    public void OnItsOwnDay_ItIsTakenBackByName() => Assert.Equal("Kim", TakenBackBy(Duration.FromMinutes(10)));

    /// <summary>Half past midnight in Oslo is the next day there, whatever a clock in London says.</summary>
    [Theory]
    [InlineData(14.5)]
    [InlineData(24)]
    [InlineData(-0.1)]
    public void OnAnotherDayOrBeforeIt_ItStands(double hours) => Assert.Null(TakenBackBy(Duration.FromHours(hours)));
}
