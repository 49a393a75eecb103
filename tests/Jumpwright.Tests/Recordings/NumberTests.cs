using System.Globalization;
using System.Text;
using CsCheck;
using Jumpwright.Recordings;

namespace Jumpwright.Tests.Recordings;

public class NumberTests
{
    [Fact]
    public void Number_OfPlainDecimals_IsTheNearestDoubleBitForBit() =>
        Gen.Select(Gen.Long[-999_999_999_999_999, 999_999_999_999_999], Gen.Int[0, 15])
            .Sample(
                (digits, places) =>
                {
                    string sign = digits < 0 ? "-" : "";
                    string text = Math.Abs((decimal)digits)
                        .ToString(CultureInfo.InvariantCulture)
                        .PadLeft(places + 1, '0');
                    text = sign + text[..^places] + (places > 0 ? "." + text[^places..] : "");
                    Assert.True(
                        Number.TryRead(
                            Encoding.ASCII.GetBytes(text),
                            out double value,
                            out int length,
                            out int decimals
                        )
                    );
                    Assert.Equal(double.Parse(text, CultureInfo.InvariantCulture), value);
                    Assert.Equal((text.Length, places), (length, decimals));
                }
            );

    [Fact]
    public void Number_OfAnyDouble_RoundTrips() =>
        Gen
            .Double.Where(double.IsFinite)
            .Sample(number =>
            {
                byte[] text = Encoding.ASCII.GetBytes(number.ToString("R", CultureInfo.InvariantCulture));
                Assert.True(Number.TryRead(text, out double value, out int length, out _));
                Assert.Equal(number, value);
                Assert.Equal(text.Length, length);
            });

    [Theory]
    [InlineData("")]
    [InlineData("-")]
    [InlineData(".")]
    [InlineData("x")]
    [InlineData(",5")]
    public void Number_OfNone_IsNone(string text) =>
        Assert.False(Number.TryRead(Encoding.ASCII.GetBytes(text), out _, out _, out _));
}
