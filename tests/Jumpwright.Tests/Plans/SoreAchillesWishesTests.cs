using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans.Asking;
using Jumpwright.Progression;
using NodaTime;

namespace Jumpwright.Tests.Plans;

public class SoreAchillesWishesTests
{
    private static readonly LocalDate Monday = new(2027, 1, 4);

    private static Wanting Of(bool sore) =>
        new(
            new Profile("a01", Monday, [], $"", []),
            new Ladder("a01", Monday, []),
            new History(
                new Athlete("a01", "A", new LocalDate(2000, 1, 1), 70, 1.8, null, TrainingLevel.Advanced, null, null),
                [],
                [],
                [],
                [],
                []
            ),
            Monday,
            sore
        );

    [Fact]
    public void Wishes_SoreAchilles_PutPushToABoxBeforeLandingAndHops()
    {
        Wanting sore = Of(true);
        int Worth(string id)
        {
            Exercise e = Catalogue.Standard.Find(id)!;
            return sore.ItemPoints(e, 3)[0] + sore.GoalPoints(e.Trains[0])[0];
        }

        Assert.True(Worth("seated-box-jump") > Worth("jump-and-stick") + 5);
        Assert.True(Worth("box-jump-no-dip") > Worth("pogo-hop") + 5);
    }

    /// <summary>A second and a third landing exercise would be worth a bonus each for being another one.</summary>
    [Fact]
    public void Wishes_SoreAchilles_GiveNothingForVarietyInLandingAndHops()
    {
        foreach (string id in (string[])["jump-and-stick", "pogo-hop", "snap-down"])
        {
            Exercise exercise = Catalogue.Standard.Find(id)!;
            Assert.All(Of(true).ItemPoints(exercise, 3), points => Assert.Equal(0, points));
            Assert.True(Of(false).ItemPoints(exercise, 3)[0] > 0);
            Assert.True(Of(true).GoalPoints(exercise.Trains[0])[0] > 0);
        }
    }

    [Fact]
    public void Wishes_SoreAchilles_SayWhy() =>
        Assert.Contains(
            "sore",
            Of(true).Because(Catalogue.Standard.Find("seated-box-jump")!)[0],
            StringComparison.Ordinal
        );

    [Fact]
    public void Wishes_Healthy_DoNotMentionIt() =>
        Assert.DoesNotContain(
            Of(false).Because(Catalogue.Standard.Find("seated-box-jump")!),
            b => b.ToString().Contains("sore", StringComparison.Ordinal)
        );
}
