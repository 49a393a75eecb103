using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Outside.Wording;

/// <summary>What a sentence has by id is read by its name; files keep the id.</summary>
public sealed class SaidByNameTests : IDisposable
{
    public void Dispose() => Speech.Use(Speech.Standard);

    [Theory]
    [InlineData("en", "easy jump up to a low box")]
    [InlineData("de", "Leichter Sprung auf den niedrigen Kasten")]
    public void AnExercise_IsNamedAsTheCatalogueDoes(string language, string said)
    {
        Sentence sentence = $"{SaidExercise.InWords("low-box-jump"):small}";
        Speech.Use(new Speech(language, UnitSystem.Metric));
        Assert.Equal(said, SpokenSentences.Text(sentence));
        Assert.Equal("low box jump", sentence.ToString());
    }

    /// <summary>Also one that only this squad has.</summary>
    [Fact]
    public void ASquadsOwnExercise_IsNamedAsTheSquadDoes()
    {
        Exercise own = Catalogue.Standard.Find("low-box-jump")! with { Id = "our-jump", Name = "Our own jump" };
        Speech.Use(
            Speech.Standard with
            {
                Catalogue = Catalogue.Standard with { Exercises = Catalogue.Standard.Exercises.Add(own) },
            }
        );
        Assert.Equal("our own jump", SpokenSentences.Text($"{SaidExercise.ById("our-jump"):small}"));
    }

    [Fact]
    public void ALimitAndKit_AreNamedInEnglishToo()
    {
        Speech.Use(new Speech("en", UnitSystem.Metric));
        Assert.Equal(
            "increase from week to week, Achilles tendon",
            SpokenSentences.Text($"{new SaidLimit("weekly-growth-achilles")}")
        );
        Assert.Equal("run-up lane", SpokenSentences.Text($"{new SaidKit("run-up-lane")}"));
        Assert.Equal("run-up lane", SpokenSentences.Text($"{SaidKit.ById("run-up-lane")}"));
    }

    [Theory]
    [InlineData("physiotherapist", "Physiotherapie")]
    [InlineData("Team doctor", "ärztlich")]
    [InlineData("kit manager", "kit manager")]
    public void ARole_HasItsWordFromTheResources(string written, string german)
    {
        Sentence sentence = $"{new SaidRole(written)}";
        Speech.Use(new Speech("de", UnitSystem.Metric));
        Assert.Equal(german, SpokenSentences.Text(sentence));
        Assert.Equal(written, sentence.ToString());
    }

    /// <summary>A quality has one name, in the core's sentences and on the page.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void AQuality_IsCalledTheSameEverywhere(string language)
    {
        Speech.Use(new Speech(language, UnitSystem.Metric));
        foreach (Quality quality in Enum.GetValues<Quality>())
        {
            string said = SpokenSentences.Text($"{QualityNames.Of(quality)}");
            string bare = said.StartsWith("the ", StringComparison.Ordinal) ? said[4..] : said;
            Assert.Equal(Spoken.Of(quality), char.ToUpperInvariant(bare[0]) + bare[1..]);
        }
    }

    /// <summary>At 0.24 nobody knows that it doesn't limit.</summary>
    [Theory]
    [InlineData(FindingVerdict.Sound, 0.24, "unlikely to limit")]
    [InlineData(FindingVerdict.Sound, 0.05, "very unlikely to limit")]
    [InlineData(FindingVerdict.Limits, 0.80, "likely limits")]
    [InlineData(FindingVerdict.Limits, 0.95, "very likely limits")]
    [InlineData(FindingVerdict.Limits, 0.995, "almost certainly limits")]
    [InlineData(FindingVerdict.Unclear, 0.40, "not known well enough")]
    public void AFinding_IsSaidAsSurelyAsItIsKnown(FindingVerdict verdict, double probability, string said) =>
        Assert.Equal(
            said,
            Spoken.Of(
                new Finding(Quality.Push, verdict, probability, $"Said.", null, [], Bibliography.Get("common-practice"))
            )
        );
}
