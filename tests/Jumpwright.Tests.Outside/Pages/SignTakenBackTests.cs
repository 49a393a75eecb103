using Jumpwright.App.Desk.Journals;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>
/// A stop sign written for the wrong athlete is seen at once. Within a quarter of an hour a person takes it back by name; who thinks it over for
/// longer asks a licensed person, and no coach can choose one away.
/// </summary>
public class SignTakenBackTests
{
    private static readonly Instant Written = Instant.FromUtc(2027, 1, 4, 9, 0);

    [Theory]
    [InlineData(0, "Kim", "Kim")]
    [InlineData(15, "Kim", "Kim")]
    [InlineData(16, "Kim", null)]
    [InlineData(-1, "Kim", null)]
    [InlineData(1, " ", null)]
    public void WithinAQuarterOfAnHour_AndByName_AStopSignIsTakenBack(int minutes, string by, string? counts)
    {
        JournalEntry[] theirs =
        [
            new("s1", EntryKinds.Sign, "a01", "2027-01-04", Written, "health page", "{\"what\":\"locking\"}"),
            new(
                "b1",
                EntryKinds.SignTakenBack,
                "a01",
                "2027-01-04",
                Written + Duration.FromMinutes(minutes),
                "health page",
                $"{{\"entry\":\"s1\",\"by\":\"{by}\"}}"
            ),
        ];
        Assert.Equal(counts, Assert.Single(JournalReading.SignsIn(theirs, DateTimeZone.Utc)).TakenBackBy);
    }
}
