using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Plans.Asking;
using Jumpwright.Quantities;
using static Jumpwright.Tests.Planning.Gymnasium;

namespace Jumpwright.Tests.Plans;

/// <summary>What a coach gets of a plan, counted: two plans can be compared by it, which their points can't be.</summary>
public class PlanGainsTests
{
    private static readonly ImmutableArray<SessionSlot> Days = Slots(45, 0, 2);

    private static MenuItem Open(SessionSlot slot, string exercise, bool owned) =>
        new(slot.Id, Dose(exercise), [3, 2, 1, 0], owned ? [$"Kept up."] : [Sentence.Of($"Open.").As(new OpenStep())]);

    private static readonly PlanRequest Asked = Request(
        Days,
        Athlete(
            "a01",
            Open(Days[0], "tuck-jump", owned: false),
            Open(Days[1], "tuck-jump", owned: false),
            Open(Days[1], "snap-down", owned: true)
        ) with
        {
            Goals = [new QualityGoal(Quality.StretchShortening, Monday, [5, 4, 3], $"Limits.")],
        },
        Athlete("a02", Open(Days[0], "pogo-hop", owned: false))
    );

    private static Plan With(params (int Day, string Athlete, string Exercise, int Sets)[] items) =>
        new(
            PlanStatus.Feasible,
            12,
            15,
            2,
            0.25,
            1,
            [
                .. Days.Select(
                    (d, n) =>
                        new PlannedSession(
                            d,
                            [
                                .. items
                                    .Where(i => i.Day == n)
                                    .GroupBy(i => i.Athlete)
                                    .Select(g => new AthleteSession(
                                        g.Key,
                                        [
                                            .. g.Select(i => new PlannedItem(
                                                Dose(i.Exercise),
                                                i.Sets,
                                                null,
                                                null,
                                                null,
                                                []
                                            )),
                                        ]
                                    )),
                            ],
                            []
                        )
                ),
            ],
            [],
            [],
            [],
            []
        );

    [Fact]
    public void Of_APlan_CountsWhatItHoldsOfWhatItMightHold()
    {
        var gains = PlanGains.Of(With((0, "a01", "tuck-jump", 2), (1, "a01", "snap-down", 2)), Asked);
        Assert.Equal(new PlanGains(2, 3, 2, 3, 1, 2, 20), gains);
    }

    /// <summary>More sets than are wished for gain nothing, and one exercise on two days is one step.</summary>
    [Fact]
    public void Of_MoreThanIsWished_CountsWhatIsWished()
    {
        var gains = PlanGains.Of(With((0, "a01", "tuck-jump", 3), (1, "a01", "tuck-jump", 3)), Asked);
        Assert.Equal((2, 3, 1), (gains.Sessions, gains.Sets, gains.Steps));
    }

    [Fact]
    public void CouldBeBetterBy_IsAPartOfWhatThePlanIsWorthBeyondItsLocks()
    {
        Assert.Equal(0.3, PlanGains.CouldBeBetterBy(With())!.Value, 1e-12);
        Assert.Null(PlanGains.CouldBeBetterBy(With() with { ObjectiveEmpty = 12 }));
        Assert.Null(PlanGains.CouldBeBetterBy(With() with { BestBound = null }));
        Assert.Equal(0, PlanGains.CouldBeBetterBy(With() with { BestBound = 11.9 }));
    }
}
