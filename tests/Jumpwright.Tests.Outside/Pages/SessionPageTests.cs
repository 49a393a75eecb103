using System.Globalization;
using System.Text.RegularExpressions;
using Jumpwright.Plans;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>A session's page as a coach reads it on the day.</summary>
public class SessionPageTests
{
    /// <summary>The stations are told by minute; whoever leads one athlete round needs that athlete's way, in its order.</summary>
    [Fact]
    public async Task WhoGoesWhere_IsToldAthleteByAthlete_AndNobodyIsMissingWithoutAWord()
    {
        await using OwnSquad squad = await OwnSquad.Open(plans: true, few: true);
        PlannedSession session = squad.Desk.Book.PlanOrNull!.Plan.Sessions[0];
        string page = await squad.Get($"/week/sessions/{session.Slot.Id}");
        string turns = page[page.IndexOf("Who goes where, athlete by athlete", StringComparison.Ordinal)..];
        turns = turns[..turns.IndexOf("</table>", StringComparison.Ordinal)];
        foreach (AthleteSession one in session.Athletes.Where(a => a.Items.Length > 0))
        {
            string name = squad.Desk.Book.Find(one.AthleteId)!.Athlete.Name;
            string row = Regex
                .Match(
                    turns,
                    $"<th scope=\"row\">{Regex.Escape(name)}</th>(?<row>.*?)</tr>",
                    RegexOptions.Singleline | RegexOptions.ExplicitCapture,
                    TimeSpan.FromSeconds(5)
                )
                .Groups[1]
                .Value;
            double[] starts =
            [
                .. Regex
                    .Matches(
                        PageText.Of(row),
                        @"(?<start>\d+(\.\d+)?) to ",
                        RegexOptions.ExplicitCapture,
                        TimeSpan.FromSeconds(5)
                    )
                    .Select(m => double.Parse(m.Groups["start"].Value, CultureInfo.InvariantCulture)),
            ];
            Assert.Equal(session.Rotation.Count(r => r.AthleteIds.Contains(one.AthleteId)), starts.Length);
            Assert.Equal(starts.Order(), starts);
        }

        string[] nothing =
        [
            .. squad
                .Desk.Book.Leaves.Where(l =>
                    !session.Athletes.Any(a => a.AthleteId == l.Athlete.Id && a.Items.Length > 0)
                )
                .Select(l => l.Athlete.Name),
        ];
        Assert.Equal(nothing.Length > 0, page.Contains("Nothing is planned here for: ", StringComparison.Ordinal));
        Assert.All(nothing, name => Assert.Contains(name, page, StringComparison.Ordinal));
    }
}
