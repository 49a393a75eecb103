using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Tests.Safety;

public class LimitBookTests
{
    private static readonly LocalDate Monday = new(2027, 1, 4);
    private static readonly LocalDate Sunday = new(2027, 1, 31);

    private static LimitOverride Of(string limit, double value, int days = 28, string who = "Ada Quill, coach") =>
        new(limit, null, value, who, "six weeks of clean sessions", Monday, Monday.PlusDays(days));

    private static LimitBook With(params LimitOverride[] overrides) =>
        LimitBook.Standard.With([.. overrides], Monday, Sunday);

    [Fact]
    public void Standard_EveryLimit_HasUnitSourceAndSentence() =>
        Assert.All(
            LimitBook.Standard.All,
            l =>
            {
                Assert.NotEmpty(l.Unit);
                Assert.NotNull(l.Source);
                Assert.EndsWith(".", l.Says, StringComparison.Ordinal);
            }
        );

    [Theory]
    [InlineData("tendon-pain-top", 6)]
    [InlineData("age-for-depth-jumps", 15)]
    [InlineData("days-after-illness", 3)]
    [InlineData("contacts-per-session-careful", 80)]
    [InlineData("sore-landing-days-before-fixture", 0)]
    public void House_Loosened_StaysAndSaysSo(string limit, double value)
    {
        LimitBook book = With(Of(limit, value));
        Assert.Equal(LimitBook.Standard[limit], book[limit]);
        Assert.Contains("can only be tightened", Assert.Single(book.Remarks), StringComparison.Ordinal);
        Assert.Empty(book.InForce);
    }

    [Theory]
    [InlineData("tendon-pain-top", 4)]
    [InlineData("age-for-depth-jumps", 18)]
    [InlineData("sore-landing-days-before-fixture", 2)]
    public void House_Tightened_Holds(string limit, double value)
    {
        LimitBook book = With(Of(limit, value));
        Assert.Equal(value, book[limit]);
        Assert.Single(book.InForce);
    }

    /// <summary>How far a limit goes stands in the data; a rule about health has no room to be loosened, any other no more than to twice or half (house rule).</summary>
    [Fact]
    public void EveryLimit_SaysHowFarItMayBeSet() =>
        Assert.All(
            LimitBook.Standard.All,
            l =>
            {
                Assert.True(l.Allows(l.Value), l.Id);
                double? loosest = l.Sense == LimitSense.AtMost ? l.Most : l.Least;
                if (l.Kind == LimitKind.House)
                {
                    Assert.Equal(l.Value, loosest);
                }
                else if (l.Kind != LimitKind.Preference)
                {
                    Assert.NotNull(loosest);
                    Assert.InRange(loosest.Value, l.Value / 2, l.Value * 2);
                }
            }
        );

    [Theory]
    [InlineData("contacts-per-session-intermediate", 201, "further than the 200 contacts")]
    [InlineData("performance-probability", 0.5, "further than the 0.51")]
    [InlineData("performance-probability", 1.1, "no value such a limit can have")]
    [InlineData("exercises-per-session-most", 0, "no value such a limit can have")]
    public void BeyondItsData_StaysAndSaysSo(string limit, double value, string says)
    {
        LimitBook book = With(Of(limit, value));
        Assert.Equal(LimitBook.Standard[limit], book[limit]);
        Assert.Contains(says, Assert.Single(book.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void ALimitWhoseValueLiesOutsideItsOwnBounds_IsNotRead() =>
        Assert.False(
            LimitBook
                .Read(
                    """[{"id": "x", "value": 3, "least": 0, "most": 2, "unit": "1", "kind": "house", "sense": "at-most", "source": "house-rule", "says": "X."}]"""
                )
                .TryGet(out _, out _)
        );

    [Fact]
    public void Consensus_LoosenedByNameWithReasonAndEnd_Holds() =>
        Assert.Equal(110, With(Of("contacts-per-session-intermediate", 110))["contacts-per-session-intermediate"]);

    [Fact]
    public void Consensus_LoosenedForMoreThan28Days_DoesNotHold()
    {
        LimitBook book = With(Of("contacts-per-session-intermediate", 110, days: 29));
        Assert.Equal(100, book["contacts-per-session-intermediate"]);
        Assert.Contains("within 28 days", Assert.Single(book.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void Consensus_LoosenedWithoutAName_DoesNotHold() =>
        Assert.Equal(
            100,
            With(Of("contacts-per-session-intermediate", 110, who: " "))["contacts-per-session-intermediate"]
        );

    [Fact]
    public void Consensus_LoosenedForPartOfThePlan_DoesNotHoldForIt()
    {
        LimitBook book = With(Of("contacts-per-session-intermediate", 110, days: 14));
        Assert.Equal(100, book["contacts-per-session-intermediate"]);
        Assert.Contains("does not cover all days", Assert.Single(book.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void Anything_TightenedForPartOfThePlan_HoldsForAllOfIt() =>
        Assert.Equal(
            90,
            With(Of("contacts-per-session-intermediate", 90, days: 3))["contacts-per-session-intermediate"]
        );

    [Fact]
    public void Override_Expired_IsForgotten()
    {
        LimitBook book = LimitBook.Standard.With([Of("days-off", 7, days: 3)], Monday.PlusDays(4), Sunday);
        Assert.Equal(14, book["days-off"]);
        Assert.Empty(book.Remarks);
    }

    [Fact]
    public void Policy_OfAPreference_HoldsAndOfALoosenedLimitDoesNot()
    {
        ImmutableArray<LimitOverride> policy =
        [
            new("exercises-per-session-most", null, 8, LimitOverride.Policy, "written there", null, null),
            new("days-off", null, 30, LimitOverride.Policy, "written there", null, null),
            new("day-off", null, 3, LimitOverride.Policy, "written there", null, null),
        ];
        LimitBook book = LimitBook.Standard.With(policy, Monday, Sunday);
        Assert.Equal(8, book["exercises-per-session-most"]);
        Assert.Equal(14, book["days-off"]);
        Assert.Equal(2, book.Remarks.Length);
    }

    [Fact]
    public void HouseLimit_TightenedTwice_TheTighterStays_WhicheverComesLast()
    {
        LimitValue house = LimitBook.Standard.All.First(l =>
            l is { Kind: LimitKind.House, Sense: LimitSense.AtMost, Value: >= 2 }
        );
        LimitOverride tight = Of(house.Id, house.Value / 4);
        LimitOverride less = Of(house.Id, house.Value / 2);
        Assert.Equal(house.Value / 4, LimitBook.Standard.With([less, tight], Monday, Sunday)[house.Id]);
        LimitBook book = LimitBook.Standard.With([tight, less], Monday, Sunday);
        Assert.Equal(house.Value / 4, book[house.Id]);
        Assert.Equal([tight], book.InForce);
        Assert.Contains("stays", Assert.Single(book.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void TendonRule_TightenedForTheSquad_ClosesAtLowerPain()
    {
        var history = new History(
            new Athlete("a01", "A", new LocalDate(2000, 1, 1), 70, 1.8, null, TrainingLevel.Advanced, null, null),
            [],
            [],
            [
                new SymptomReport(
                    "a01",
                    Monday,
                    "achilles",
                    Side.Left,
                    "tendon",
                    "R. Hale, physiotherapist",
                    "pain",
                    "during",
                    2,
                    null
                ),
            ],
            [],
            []
        );
        static bool Closes(History h) => SafetyRules.For(h, Monday).Any(r => r.LimitId == "tendon-pain");
        Assert.False(Closes(history));
        Assert.True(Closes(history with { Overrides = [Of("tendon-pain-free-work", 1)] }));
    }

    [Fact]
    public void OtherJumping_Counted_EntersWithItsSpread()
    {
        Squad squad = Club([
            new Practice(IsoDayOfWeek.Tuesday, null, 90, "volleyball") { Jumps = 60, JumpsSpread = 20 },
        ]);
        Assert.Equal(80, OtherJumping.In(Monday, Somebody(null), squad, LimitBook.Standard).Jumps);
    }

    [Fact]
    public void OtherJumping_Unknown_IsTheCautiousEstimateAndSaysSo()
    {
        Squad squad = Club([new Practice(IsoDayOfWeek.Tuesday, null, null, null)]);
        OtherJumping other = OtherJumping.In(Monday, Somebody(null), squad, LimitBook.Standard);
        Assert.Equal(90, other.Jumps);
        Assert.Contains("unknown", other.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void OtherJumping_LiberoAndMiddleBlocker_DifferByPosition()
    {
        Squad squad = Club([new Practice(IsoDayOfWeek.Tuesday, null, 60, "volleyball")]);
        Assert.Equal(18, OtherJumping.In(Monday, Somebody("libero"), squad, LimitBook.Standard).Jumps);
        Assert.Equal(75, OtherJumping.In(Monday, Somebody("middle blocker"), squad, LimitBook.Standard).Jumps);
    }

    [Fact]
    public void OtherJumping_OfWhoTakesNoPart_IsNone_AndOthersKeepTheirs()
    {
        Squad squad = Club([
            new Practice(IsoDayOfWeek.Tuesday, null, 90, "volleyball")
            {
                Jumps = 60,
                JumpsSpread = 20,
                Without = ["a01"],
            },
        ]) with
        {
            Fixtures = [new(Monday.PlusDays(5), null, "Match") { Without = ["a01"] }],
        };
        OtherJumping none = OtherJumping.In(Monday, Somebody(null), squad, LimitBook.Standard);
        Assert.Equal(0, none.Jumps);
        Assert.Contains("Takes no part", none.Says, StringComparison.Ordinal);
        Assert.True(OtherJumping.In(Monday, Somebody(null) with { Id = "a02" }, squad, LimitBook.Standard).Jumps >= 80);
    }

    private static Squad Club(ImmutableArray<Practice> practices) =>
        new("Club", "UTC", [], [], [], ImmutableDictionary<string, string>.Empty) { Practices = practices };

    private static Athlete Somebody(string? sport) =>
        new("a01", "A", new LocalDate(2000, 1, 1), 70, 1.8, sport, TrainingLevel.Advanced, null, null);
}
