using Ical.Net;
using Ical.Net.CalendarComponents;

namespace Jumpwright.Tests.Outside.Commands;

/// <summary>Sessions go out as iCalendar (RFC 5545), with nothing of anybody's health.</summary>
public class CalendarCommandTests
{
    [Fact]
    public async Task Sessions_AtTheirTime_TheSameBytesTwice_AndNoWordOfHealth()
    {
        using WorkFolder folder = Squad();
        CommandRun run = await Make(folder, "sessions.ics");
        Assert.True(run.Exit == 0, run.Errors);
        Assert.Contains("2 sessions in ", run.Output, StringComparison.Ordinal);
        byte[] bytes = await File.ReadAllBytesAsync(folder.At("sessions.ics"), TestContext.Current.CancellationToken);
        Calendar calendar = Calendar.Load(System.Text.Encoding.UTF8.GetString(bytes))!;

        CalendarEvent[] events = [.. calendar.Events.OrderBy(e => e.Start!.AsUtc)];
        // Paris is an hour ahead of UTC in January and two in July: the local hour is what stays.
        Assert.Equal(new DateTime(2027, 1, 4, 16, 0, 0, DateTimeKind.Utc), events[0].Start!.AsUtc);
        Assert.Equal(new DateTime(2027, 1, 4, 16, 45, 0, DateTimeKind.Utc), events[0].End!.AsUtc);
        Assert.Equal(2, events.Select(e => e.Uid).Distinct().Count());
        string text = System.Text.Encoding.UTF8.GetString(bytes);
        foreach (string word in new[] { "Achilles", "pain", "Ada", "a01", "snap-down" })
        {
            Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase);
        }

        await Make(folder, "again.ics");
        Assert.Equal(
            bytes,
            await File.ReadAllBytesAsync(folder.At("again.ics"), TestContext.Current.CancellationToken)
        );
    }

    [Fact]
    public async Task TakenInAgainAsFixtures_TheSessionsAreThoseDays()
    {
        using WorkFolder folder = Squad();
        await Make(folder, "fixtures.ics");
        CommandRun plan = await CommandRun.Of("plan", folder.Path, "--from", "2027-01-04", "--weeks", "1");
        // The file reads as a calendar of our own reader, too: each session is now a fixture, which closes hard work round it.
        Assert.True(plan.Exit == 0, plan.Errors);
        Assert.DoesNotContain("fixtures.ics", plan.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnAthleteNobodyKnows_IsUsage()
    {
        using WorkFolder folder = Squad();
        Assert.Equal(2, (await Make(folder, "x.ics", "--athlete", "a77")).Exit);
        CommandRun one = await Make(folder, "a01.ics", "--athlete", "a01");
        Assert.True(one.Exit == 0, one.Errors);
        Assert.Contains("sessions in ", one.Output, StringComparison.Ordinal);
    }

    private static Task<CommandRun> Make(WorkFolder folder, string file, params string[] more) =>
        CommandRun.Of(["calendar", folder.Path, "--from", "2027-01-04", "--out", folder.At(file), .. more]);

    private static WorkFolder Squad() =>
        new WorkFolder()
            .With(
                "squad.yaml",
                "name: Two of Us\ntime_zone: Europe/Paris\nkit: []\nwindows:\n  - {day: monday, start: \"17:00\", minutes: 45}\n"
                    + "  - {day: thursday, start: \"17:00\", minutes: 45}\n"
            )
            .With(
                "athletes.csv",
                "id,name,birth_date,sex,body_mass_kg,stature_m,sport,level,operation_date,operation_site,operation_side,note\n"
                    + "a01,Ada Example,2000-01-01,female,66,1.75,volleyball,beginner,,,,\n"
            )
            .With(
                "symptoms.csv",
                "athlete,date,site,side,tissue,named_by,kind,when,score_0_10,note\na01,2027-01-03,none,,,,pain,rest,0,\n"
            );
}
