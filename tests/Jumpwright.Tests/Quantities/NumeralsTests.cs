using Jumpwright.Quantities;

namespace Jumpwright.Tests.Quantities;

/// <summary>How a language writes a number, and how people cite a paper in a line.</summary>
public class NumeralsTests
{
    private sealed class German : SentenceWriter
    {
        public override string Language => "de";
    }

    [Fact]
    public void NumbersOfASentence_HaveTheWritersDecimals()
    {
        Sentence said =
            $"{0.25:0.00} s, {new Length(0.357):0.0 cm}, {new DoubtedLength(0.357, 0.013)}, {Doubted.Number(7.3, 0.6)}, v1.2";
        Assert.Equal("0.25 s, 35.7 cm, 35.7 ± 1.3 cm, 7.3 ± 0.6, v1.2", said.ToString());
        Assert.Equal("0,25 s, 35,7 cm, 35,7 ± 1,3 cm, 7,3 ± 0,6, v1.2", new German().Write(said));
    }

    [Theory]
    [InlineData("en", "1234.5")]
    [InlineData("de", "1234,5")]
    [InlineData("xx", "1234.5")]
    public void ANumber_IsWrittenAsTheLanguageDoes(string language, string written) =>
        Assert.Equal(written, Numerals.Write(1234.5, "0.#", language));

    [Theory]
    [InlineData("scattone-silva-2024", "Scattone Silva et al. 2024")]
    [InlineData("ball-zanetti-2012", "Ball & Zanetti 2012")]
    [InlineData("addie-drop-heights", "Addie et al.")]
    [InlineData("everard-less", "Everard et al.")]
    [InlineData("handbook-potach-chu", "Potach & Chu")]
    [InlineData("joint-ranking-2013", "A 2013 study of ten men")]
    public void ASource_IsCitedInALine(string id, string cited) => Assert.Equal(cited, Bibliography.Get(id).Brief);

    [Fact]
    public void EverySource_HasAShortName() =>
        Assert.All(Bibliography.Standard.Sources.Values, s => Assert.InRange(s.Brief.Length, 3, 90));
}
