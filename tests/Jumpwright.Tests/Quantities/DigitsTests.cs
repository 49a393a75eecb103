using Jumpwright.Quantities;

namespace Jumpwright.Tests.Quantities;

/// <summary>A value is written as exactly as its doubt lets it: a doubt has at most two digits (GUM 7.2.6).</summary>
public class DigitsTests
{
    [Theory]
    [InlineData(0.012, 0.2, 3)]
    // One digit, unless that one is a one: then half of it would be lost in rounding.
    [InlineData(0.10, 1.5, 2)]
    [InlineData(0.19, 1.5, 2)]
    [InlineData(0.20, 1.5, 1)]
    [InlineData(3.1, 77, 0)]
    [InlineData(1.2, 77, 1)]
    // Hundreds of newtons of doubt are still written in whole newtons; nothing is written finer than a thousandth.
    [InlineData(250, 2100, 0)]
    [InlineData(0.00004, 0.3, 3)]
    // Without a doubt: counts stay whole.
    [InlineData(0, 12, 0)]
    [InlineData(0, 0.5, 2)]
    public void Of_LeavesADoubtOneDigitOrTwo(double doubt, double value, int decimals) =>
        Assert.Equal(decimals, Digits.Of(doubt, value));
}
