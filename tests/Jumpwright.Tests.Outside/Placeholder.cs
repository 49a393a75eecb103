namespace Jumpwright.Tests.Outside;

public class PlaceholderTests
{
    [Fact]
    public void Placeholder() => Assert.True(true);
}
