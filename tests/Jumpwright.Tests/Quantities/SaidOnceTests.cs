using Jumpwright.Quantities;

namespace Jumpwright.Tests.Quantities;

/// <summary>One number reads the same wherever it stands: in a sentence as on the card or in the table.</summary>
public class SaidOnceTests
{
    private sealed class Pounds : SentenceWriter
    {
        protected override UnitSystem Units => UnitSystem.InchPound;
    }

    [Fact]
    public void ABoxToSet_IsSaidAsTheCardSetsIt()
    {
        Sentence sentence = $"Box of {new HeightToSet(0.30)}.";
        Assert.Equal("Box of 30 cm.", sentence);
        Assert.Equal($"Box of {Customary.InchesToWrite(0.30)} in.", new Pounds().Write(sentence));
        Assert.Equal("Box of 11.8 in.", new Pounds().Write(sentence));
    }

    [Fact]
    public void ALoadToTake_IsSaidAsTheCardTakesIt()
    {
        Sentence sentence = $"{new LoadToTake(17.5)}: enough.";
        Assert.Equal("17.5 kg: enough.", sentence);
        Assert.Equal("38 lb: enough.", new Pounds().Write(sentence));
    }

    [Theory]
    [InlineData(0.357, 0.013, "35.7 ± 1.3 cm", "14.1 ± 0.5 in")]
    [InlineData(1.777, 0.029, "178 ± 3 cm", "70.0 ± 1.1 in")]
    public void ALength_IsAsExactAsItsDoubt(double metres, double doubt, string metric, string inches)
    {
        Sentence sentence = $"{new DoubtedLength(metres, doubt)}";
        Assert.Equal(metric, sentence);
        Assert.Equal(inches, new Pounds().Write(sentence));
    }

    [Theory]
    [InlineData(-0.6, 1.5, "−0.6 ± 1.5")]
    [InlineData(-0.04, 2.4, "0 ± 2")]
    [InlineData(29.7, 2.97, "30 ± 3")]
    public void ANumber_IsAsExactAsItsDoubt(double value, double doubt, string said) =>
        Assert.Equal(said, Doubted.Number(value, doubt).ToString());
}
