using System.Collections.Immutable;
using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Tests.Outside.Pages;

namespace Jumpwright.Tests.Outside.Wording;

/// <summary>Room is shown only of what is open: a limit that would still hold something opens nothing.</summary>
[Collection("pages")]
public class RoomWordsTests(ServedDemo demo)
{
    private PlannedWeek Week => demo.Desk.Book.PlanOrNull!;

    [Fact]
    public void ClosedOnEveryDay_HasNoRoom_AndTheRulingIsNamed()
    {
        AthleteRequest[] closed =
        [
            .. Week.Request.Athletes.Where(a =>
                Week.Request.Slots.All(s => a.RulingsOn(s.Date).Any(r => r.Effect is NothingPlanned))
            ),
        ];
        Assert.NotEmpty(closed);
        foreach (AthleteRequest who in closed)
        {
            string said = Piece.Plain(RoomWords.Of(Week, who.Athlete.Id));
            Ruling shut = who.RulingsOn(Week.Request.Slots[0].Date).First(r => r.Effect is NothingPlanned);
            Assert.StartsWith("None: ", said, StringComparison.Ordinal);
            Assert.Contains(LimitNames.Of(shut.LimitId), said, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(1, "of the hardest open (tier 1): Achilles")]
    [InlineData(0, "none that load Achilles")]
    public void ATissueHeldToLowWork_IsCountedAtTheTierThatIsOpen(int tier, string says)
    {
        AthleteRequest open = Week.Request.Athletes.First(a =>
            Room(a).Contains("(tier 3): Achilles", StringComparison.Ordinal)
        );
        Ruling some = Week.Request.Athletes.SelectMany(a => a.RulingsByDay.Values).SelectMany(r => r).First();
        Ruling held = new("tendon-pain", new TierAtMost(Tissue.Achilles, tier), $"Held.", some.Source);
        string said = Room(
            open with
            {
                RulingsByDay = Week
                    .Request.Slots.Select(s => s.Date)
                    .Distinct()
                    .ToImmutableDictionary(d => d, d => open.RulingsOn(d).Add(held)),
            }
        );
        Assert.Contains(says, said, StringComparison.Ordinal);
        Assert.DoesNotContain("(tier 3): Achilles", said, StringComparison.Ordinal);
    }

    private string Room(AthleteRequest who) =>
        Piece.Plain(
            RoomWords.Of(
                Week.Request with
                {
                    Athletes = [who],
                },
                who.Athlete.Id,
                Week.Plan.Limits.Where(l => l.AthleteId == who.Athlete.Id)
            )
        );
}
