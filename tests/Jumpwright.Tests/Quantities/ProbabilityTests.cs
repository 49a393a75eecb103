using Jumpwright.Quantities;

namespace Jumpwright.Tests.Quantities;

/// <summary>Nothing that is reckoned is written as certain.</summary>
public class ProbabilityTests
{
    [Theory]
    [InlineData(0, "below 0.01")]
    [InlineData(0.0099, "below 0.01")]
    [InlineData(0.01, "0.01")]
    [InlineData(0.5, "0.50")]
    [InlineData(0.99, "0.99")]
    [InlineData(0.9901, "above 0.99")]
    [InlineData(1, "above 0.99")]
    public void Said_NeverAsCertain(double probability, string said) =>
        Assert.Equal(said, Probability.Said(probability));
}
