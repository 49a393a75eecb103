using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Kit, calendars and limits are changed in the pages, stand in the folder afterwards, and the plan follows.</summary>
public class RulesPageTests
{
    [Fact]
    public async Task Kit_ANewCountStandsForTheOldOne_AndCommentsStay()
    {
        await using SquadSite site = await SquadSite.Open();
        await site.Post("/settings/rules/in", ("section", "kit"), ("id", "plyo-box"), ("count", "7"));
        Assert.Equal(new KitCount("plyo-box", 7), site.Desk.Book.Material.Squad.Kit.Single(k => k.Id == "plyo-box"));
        string yaml = await Yaml(site);
        Assert.StartsWith("# The demo squad.", yaml, StringComparison.Ordinal);
        Assert.Contains("  - {id: drop-box, count: 2}", yaml);

        (_, string said) = await site.Post(
            "/settings/rules/in",
            ("section", "kit"),
            ("id", "plyo-box"),
            ("count", "many")
        );
        Assert.Contains("whole count", said);
        Assert.Equal(yaml, await Yaml(site));
    }

    [Fact]
    public async Task Windows_TakenOut_TheWeekHasNoSuchSession()
    {
        await using SquadSite site = await SquadSite.Open();
        site.Plan();
        Assert.Equal(3, site.Desk.Book.PlanOrNull!.Plan.Sessions.Length);
        await site.Post(
            "/settings/rules/out",
            ("section", "windows"),
            ("entry", "day=wednesday\r\nstart=18:30\r\nminutes=45\r\nsurface=sprung-floor")
        );
        Assert.True(site.Desk.PlanIsOld);
        site.Plan();
        Assert.Equal(
            [IsoDayOfWeek.Monday, IsoDayOfWeek.Friday],
            site.Desk.Book.PlanOrNull!.Plan.Sessions.Select(s => s.Slot.Date.DayOfWeek)
        );

        await site.Post(
            "/settings/rules/in",
            ("section", "windows"),
            ("day", "saturday"),
            ("start", "10:00"),
            ("minutes", "30"),
            ("surface", "rubber")
        );
        TrainingWindow added = site.Desk.Book.Material.Squad.Windows[^1];
        Assert.Equal((IsoDayOfWeek.Saturday, 30, Surface.Rubber), (added.Day, added.Minutes, added.Surface!.Value));
    }

    [Fact]
    public async Task Fixture_WithAHostileName_IsTextAndNothingElse()
    {
        await using SquadSite site = await SquadSite.Open();
        const string name = "A \"home\" #match: {x} \\ <b>";
        (_, string said) = await site.Post(
            "/settings/rules/in",
            ("section", "fixtures"),
            ("date", "2027-01-08"),
            ("start", "15:00"),
            ("name", name)
        );
        Assert.Contains("Kept.", said);
        Assert.Contains(
            site.Desk.Book.Material.Squad.Fixtures,
            f => f.Name == name && f.Date == new LocalDate(2027, 1, 8)
        );
    }

    [Fact]
    public async Task HouseLimit_IsOnlyMadeTighter_ByNameAndWithAReason()
    {
        await using SquadSite site = await SquadSite.Open();
        double shipped = LimitBook.Standard["sessions-worth-per-week"];
        (_, string loosened) = await Limit(site, "sessions-worth-per-week", shipped + 1, "Coach", "wanted");
        Assert.Contains("can only be tightened", loosened);
        (_, string unnamed) = await Limit(site, "sessions-worth-per-week", 1, "", "");
        Assert.Contains("by name", unnamed);
        Assert.False(File.Exists(Path.Combine(site.Folder, "overrides.csv")));

        (_, string kept) = await Limit(site, "sessions-worth-per-week", 1, "Coach Teale", "hard week, long travel");
        Assert.Contains("Kept.", kept);
        site.Plan();
        Override inForce = Assert.Single(site.Desk.Book.PlanOrNull!.Plan.Overrides);
        Assert.Equal(("sessions-worth-per-week", 1.0, "Coach Teale"), (inForce.Limit, inForce.Value, inForce.Who));

        await site.Post("/settings/rules/drop", ("limit", "sessions-worth-per-week"), ("athlete", ""));
        Assert.DoesNotContain(site.Desk.Book.Material.Squad.Overrides, o => o.Limit == "sessions-worth-per-week");
    }

    [Theory]
    [InlineData("Coach", "a reason", "2027-02-15", "within 28 days")]
    [InlineData("", "a reason", "2027-01-20", "no name or no reason")]
    [InlineData("Coach", "", "2027-01-20", "no name or no reason")]
    public async Task OtherLimits_AreLoosenedOnlyWithNameReasonAndAnEnd(
        string who,
        string reason,
        string until,
        string expected
    )
    {
        await using SquadSite site = await SquadSite.Open();
        (_, string said) = await Limit(site, "contacts-per-session-advanced", 130, who, reason, until);
        Assert.Contains(expected, said);
        Assert.False(File.Exists(Path.Combine(site.Folder, "overrides.csv")));
    }

    [Fact]
    public async Task Preference_IsSetFreely()
    {
        await using SquadSite site = await SquadSite.Open();
        (_, string said) = await Limit(site, "light-load", 0.3, "", "");
        Assert.Contains("Kept.", said);
        Assert.Contains(site.Desk.Book.Material.Squad.Overrides, o => o is { Limit: "light-load", Value: 0.3 });
    }

    private static Task<(System.Net.HttpStatusCode Status, string Text)> Limit(
        SquadSite site,
        string limit,
        double value,
        string who,
        string reason,
        string until = "2027-01-31"
    ) =>
        site.Post(
            "/settings/rules/limit",
            ("limit", limit),
            ("athlete", ""),
            ("value", value.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            ("who", who),
            ("reason", reason),
            ("from", "2027-01-04"),
            ("until", until)
        );

    private static Task<string> Yaml(SquadSite site) =>
        File.ReadAllTextAsync(Path.Combine(site.Folder, "squad.yaml"), TestContext.Current.CancellationToken);
}
