using Jumpwright.App.Wording;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Outside.Wording;

/// <summary>Places of the body: English in files, in the reader's words on pages, and read back from them.</summary>
public sealed class PlaceWordsTests : IDisposable
{
    public PlaceWordsTests() => Speech.Use(new Speech("de", UnitSystem.Metric));

    public void Dispose() => Speech.Use(Speech.Standard);

    [Fact]
    public void UsualPlaces_HaveGerman_AndAreReadBackAsFilesNameThem()
    {
        foreach (string place in PlaceWords.Usual)
        {
            Piece said = PlaceWords.Of(place);
            Assert.False(said.IsEnglish, $"{place} has no German");
            string read = PlaceWords.Read(said.Text.ToUpperInvariant());
            // Two places may share a word (the Achilles tendon); what is read back then says the same.
            Assert.Equal(said, PlaceWords.Of(read));
        }

        Assert.Equal("knee", PlaceWords.Read(" Knie "));
        Assert.Equal("knee", PlaceWords.Read("Knee"));
    }

    [Fact]
    public void PlaceThatNobodyKnows_StandsAsItWasWritten_AndSaysThatItIsNotGerman()
    {
        Assert.Equal(new Piece("big toe", IsEnglish: true), PlaceWords.Of("big toe"));
        Assert.Equal("Zehe links", PlaceWords.Read("Zehe links"));
    }
}
