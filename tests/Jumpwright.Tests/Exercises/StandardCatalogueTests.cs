using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Exercises;

public class StandardCatalogueTests
{
    [Fact]
    public void Standard_AsShipped_HasNothingToSayToTheLinter() =>
        Assert.Empty(CatalogueLint.Check(Catalogue.Standard));

    [Fact]
    public void Standard_AsShipped_CoversEveryStage()
    {
        ILookup<Stage, Exercise> byStage = Catalogue.Standard.Exercises.ToLookup(e => e.Stage);
        Assert.All(Enum.GetValues<Stage>(), stage => Assert.True(byStage[stage].Count() >= 5, stage.ToString()));
        Assert.True(Catalogue.Standard.Exercises.Length >= 70);
    }

    [Theory]
    // The movements of the trade that the ladder is built from.
    [InlineData("snap-down")]
    [InlineData("snap-down-to-one-leg")]
    [InlineData("drop-landing")]
    [InlineData("pogo-hop")]
    [InlineData("forward-pogo")]
    [InlineData("single-leg-pogo")]
    [InlineData("single-leg-forward-pogo")]
    [InlineData("seated-box-jump")]
    [InlineData("foot-on-box-jump")]
    [InlineData("box-jump")]
    [InlineData("box-jump-no-dip")]
    [InlineData("squat-jump")]
    [InlineData("countermovement-jump")]
    [InlineData("single-tuck-jump")]
    [InlineData("continuous-tuck-jumps")]
    [InlineData("band-resisted-jump")]
    [InlineData("band-resisted-jump-crossed")]
    [InlineData("hex-bar-jump")]
    [InlineData("hex-bar-pull")]
    [InlineData("depth-jump")]
    [InlineData("depth-jump-to-box")]
    [InlineData("rear-foot-elevated-jump")]
    [InlineData("rear-foot-elevated-jump-continuous")]
    [InlineData("lateral-bound")]
    [InlineData("rotational-jump")]
    [InlineData("single-leg-forward-hop")]
    [InlineData("approach-rehearsal")]
    [InlineData("approach-jump-two-feet")]
    [InlineData("approach-jump-one-foot")]
    public void Find_AMovementOfTheTrade_IsThere(string id) => Assert.NotNull(Catalogue.Standard.Find(id));

    [Theory]
    // Contacts that take an impact or a rebound: depth jump 2, box jump 1, snap-down 1, drop landing 1, heavy pull 0.
    [InlineData("depth-jump", 2)]
    [InlineData("box-jump", 1)]
    [InlineData("snap-down", 1)]
    [InlineData("drop-landing", 1)]
    [InlineData("hex-bar-pull", 0)]
    public void ContactsPerRep_OfTheContractsExamples_AreAsItSays(string id, int contacts) =>
        Assert.Equal(contacts, Catalogue.Standard.Find(id)!.ContactsPerRep);

    [Theory]
    // Scattone Silva et al. 2024, tiers: double-leg countermovement jump 0.610 and double-leg drop jump 0.563 in the
    // middle, single-leg forward hop 0.666 in the top.
    [InlineData("countermovement-jump", Tissue.Patellar, 2)]
    [InlineData("depth-jump", Tissue.Patellar, 2)]
    [InlineData("single-leg-forward-hop", Tissue.Patellar, 3)]
    // Baxter et al. 2021: the single-leg forward hop tops the Achilles list with 7.3 body weights.
    [InlineData("single-leg-forward-hop", Tissue.Achilles, 3)]
    public void Demand_WhereATierIsPublished_IsThatTier(string id, Tissue tissue, int tier) =>
        Assert.Equal(tier, Catalogue.Standard.Find(id)!.Demand[tissue]);

    [Fact]
    public void Demand_OfThePogoHop_IsHighForTheAnkleAndNoneForTheHip()
    {
        Exercise pogo = Catalogue.Standard.Find("pogo-hop")!;
        Assert.True(pogo.Demand[Tissue.Achilles] > pogo.Demand[Tissue.Patellar]);
        Assert.Equal(0, pogo.Demand[Tissue.Hip]);
    }

    [Fact]
    public void HighIntensity_TopTierOrADropOfThirtyCentimetres_AndNothingElse()
    {
        Assert.All(
            Catalogue.Standard.Exercises,
            e => Assert.Equal(e.Demand.ContainsValue(3) || e.DropRangeM is { MinM: >= 0.30 }, e.IsHighIntensity)
        );
        Assert.True(Catalogue.Standard.Find("drop-landing")!.IsHighIntensity);
        Assert.False(Catalogue.Standard.Find("low-drop-landing")!.IsHighIntensity);
    }

    [Fact]
    public void SeatedStart_ToABox_AsksForPushWithLessLandingThanTheFloorJump()
    {
        Exercise seated = Catalogue.Standard.Find("seated-box-jump")!;
        Exercise floor = Catalogue.Standard.Find("countermovement-jump")!;
        Assert.True(seated.Demand[Tissue.Bone] < floor.Demand[Tissue.Bone]);
        Assert.Contains(Jumpwright.Athletes.Quality.Push, seated.Trains);
    }

    public static TheoryData<Tissue> Tissues => [.. Enum.GetValues<Tissue>()];

    [Theory]
    [MemberData(nameof(Tissues))]
    public void EasierOn_ASoreTissue_OffersSomethingThatAsksLessOfItAndMoreOfNone(Tissue sore)
    {
        Catalogue catalogue = Catalogue.Standard;
        Assert.All(
            catalogue.Exercises.Where(e => e.Demand[sore] >= 2),
            e =>
            {
                Exercise[] instead = [.. catalogue.EasierOn(sore, e)];
                Assert.NotEmpty(instead);
                Assert.All(instead, i => Assert.True(i.Demand[sore] < e.Demand[sore], i.Id));
                Assert.All(instead, i => Assert.All(i.Demand.Keys, t => Assert.True(i.Demand[t] <= e.Demand[t], i.Id)));
            }
        );
    }

    [Fact]
    public void EasierOn_TheAchilles_OffersABoxJumpForADepthJump() =>
        Assert.Contains(
            "box-jump",
            Catalogue.Standard.EasierOn(Tissue.Achilles, Catalogue.Standard.Find("depth-jump")!).Select(e => e.Id)
        );

    [Fact]
    public void Entry_WithoutAnyTest_OpensLandingLowAnkleWorkAndAnEasyPushOnly()
    {
        Exercise[] open = [.. Catalogue.Standard.Exercises.Where(e => e.Entry.IsEmpty)];
        Assert.NotEmpty(open);
        Assert.All(
            open,
            e =>
            {
                Assert.Contains(e.Stage, new[] { Stage.Landing, Stage.AnkleStiffness, Stage.PushToBox });
                Assert.True(e.Demand.Values.All(t => t <= 1), e.Id);
                Assert.Equal("submaximal", e.Intent);
                Assert.False(e.SingleLegLanding);
            }
        );
    }

    [Theory]
    [InlineData(Stage.Resisted)]
    [InlineData(Stage.Shock)]
    [InlineData(Stage.ContinuousSingleLeg)]
    public void Entry_OfLoadedShockAndContinuousSingleLeg_AlwaysAsksForAMeasuredTest(Stage stage) =>
        Assert.All(
            Catalogue.Standard.Exercises.Where(e => e.Stage == stage),
            e => Assert.Contains(e.Entry, c => c.OwnedExercise is null)
        );

    [Fact]
    public void Entry_OfTheDepthJump_AsksForLandingContactAndTheStepsBefore()
    {
        string[] tests = [.. Catalogue.Standard.Find("depth-jump")!.Entry.Select(c => c.Test)];
        Assert.Contains("landing-screen", tests);
        Assert.Contains("contact_time_s", tests);
        Assert.Contains("jump_height_m", tests);
        Assert.Contains("owned:drop-landing", tests);
        Assert.Contains("owned:pogo-hop", tests);
    }
}
